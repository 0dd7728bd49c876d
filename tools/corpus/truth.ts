/** Reads a truth.json: what another program found in each drawing. Odd or missing fields are left out, never a crash. */

export interface Truth {
  readonly path: string;
  /** Loops and areas must agree. */
  readonly clean: boolean;
  readonly flags: readonly string[];
  readonly units?: string;
  readonly loops?: number;
  readonly areas?: readonly number[];
  readonly perimeters?: readonly number[];
  readonly openChains?: number;
  readonly hiddenEntities?: number;
  readonly maxGapClosed?: number;
  readonly duplicateEdges?: number;
  readonly duplicateLoops?: number;
  readonly degenerateLoops?: number;
  readonly selfIntersecting?: number;
  readonly depths?: readonly number[];
}

/** The drawings of a truth.json: an array, or an object that holds one. */
export const readTruths = (text: string): Truth[] => {
  const read: unknown = JSON.parse(text);
  const rows = Array.isArray(read) ? read : isRecord(read) ? (Object.values(read).find(Array.isArray) ?? []) : [];
  return rows.flatMap((row: unknown) => (isRecord(row) && typeof row['path'] === 'string' ? [truthOf(row, row['path'])] : []));
};

type Row = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Row => typeof value === 'object' && value !== null && !Array.isArray(value);

const truthOf = (row: Row, path: string): Truth => {
  const numbers = {
    loops: row['loops'],
    openChains: row['open_chains'],
    hiddenEntities: row['hidden_entities'],
    maxGapClosed: row['max_gap_closed'],
    duplicateEdges: row['duplicate_edges'],
    duplicateLoops: row['duplicate_loops'],
    degenerateLoops: row['degenerate_loops'],
    selfIntersecting: row['self_intersecting'],
  };
  return {
    path,
    clean: row['clean'] === true,
    flags: Array.isArray(row['flags']) ? row['flags'].filter((f): f is string => typeof f === 'string') : [],
    ...(typeof row['units'] === 'string' ? { units: row['units'] } : {}),
    ...Object.fromEntries(Object.entries(numbers).filter(([, v]) => typeof v === 'number' && Number.isFinite(v))),
    ...listOf('areas', row['areas']),
    ...listOf('perimeters', row['perimeters']),
    ...depthsOf(row['depth_histogram']),
  };
};

const listOf = (name: string, value: unknown): Record<string, number[]> =>
  Array.isArray(value) && value.every((v) => typeof v === 'number' && Number.isFinite(v)) ? { [name]: value } : {};

/** How many loops at each depth. */
const depthsOf = (value: unknown): { depths?: number[] } => {
  if (!isRecord(value)) return {};
  const depths: number[] = [];
  for (const [depth, n] of Object.entries(value)) if (/^\d{1,6}$/.test(depth) && typeof n === 'number') depths[Number(depth)] = n;
  return { depths: Array.from(depths, (n) => n ?? 0) };
};
