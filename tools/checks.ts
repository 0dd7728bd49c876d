/** Reads every check row of the house, holds it against our code, and says which sources, rows or formulas do not hold together. */
import { readdirSync, readFileSync } from 'node:fs';
import type { CheckRow } from '../src/quantity/check.ts';
import type { Formula } from '../src/quantity/formula.ts';
import { basisOf } from '../src/quantity/source.ts';
import { NOT_MODELLED } from './not-modelled.ts';
import { type Name, productNames } from './product-graph.ts';
import { codeOfRows } from './row-code.ts';
import { isTest, modulesAt, sourceFiles } from './source-files.ts';

/** All that is judged; made by collectChecks, or by hand in the test of the judge itself. */
export interface CheckCollection {
  readonly rows: readonly CheckRow[];
  /** Names of the files in sources/, without ending. */
  readonly sources: readonly string[];
  /** Source ids that the code names: in check rows, formulas and figures. */
  readonly named: readonly { readonly source: string; readonly file: string }[];
  /** Every formula that the core exports, with the name it is exported by. */
  readonly formulas: readonly { readonly identifier: string; readonly file: string; readonly formula: Formula<string> }[];
  /** Text of all check files, to see which formulas they ask. */
  readonly checkTexts: readonly string[];
  /** Sources of which it is written that they are from memory. */
  readonly fromMemory: readonly string[];
  /** What of our code each row runs, by its id, and what of it the product runs too. */
  readonly runs: ReadonlyMap<string, readonly Name[]>;
  readonly product: ReadonlySet<Name>;
}

export interface Verdict {
  readonly row: CheckRow;
  readonly ours: number | string;
  readonly holds: boolean;
}

export interface Problem {
  readonly kind:
    | 'value'
    | 'id twice'
    | 'no such source'
    | 'source unused'
    | 'no reason'
    | 'formula unchecked'
    | 'common practice'
    | 'not of the product'
    | 'limits'
    | 'remembered'
    | 'too few rows';
  readonly sentence: string;
}

/** Folders of the core whose formulas must be held against a source. */
const CALCULATING = /^src\/(quantity|physics|shapes|plan|estimate|learn)\//;

export const collectChecks = async (): Promise<CheckCollection> => {
  const plain = sourceFiles('.', ['src']).filter(({ path }) => path.endsWith('.ts') && !path.endsWith('.test.ts'));
  const checks = plain.filter(({ path }) => path.endsWith('.checks.ts'));
  const rows = await modulesAt<{ readonly checks?: readonly CheckRow[] }>(checks.map(({ path }) => path));
  const core = plain.flatMap(({ path }) => (CALCULATING.test(path) && !isTest(path) ? [path] : []));
  const modules = await modulesAt<Readonly<Record<string, unknown>>>(core);
  const files = sourceFiles('.', ['src', 'test']);
  const sourceTexts = readdirSync('sources').flatMap((file) =>
    file.endsWith('.md') ? [[file.slice(0, -3), readFileSync(`sources/${file}`, 'utf8')] as const] : [],
  );
  return {
    rows: Object.entries(rows).flatMap(([file, module]) => rowsOf(file, module)),
    runs: codeOfRows(
      files,
      Object.entries(rows).map(([file, module]) => ({ file, rows: rowsOf(file, module) })),
    ),
    product: productNames(files.filter(({ path }) => path.startsWith('src/'))),
    sources: sourceTexts.map(([name]) => name),
    fromMemory: sourceTexts.flatMap(([name, text]) => (/How far verified: (all )?from memory/.test(text) ? [name] : [])),
    named: [
      ...plain.flatMap(({ path, text }) => namedSources(text).map((source) => ({ source, file: path }))),
      ...NOT_MODELLED.map(({ source }) => ({ source, file: 'tools/not-modelled.ts' })),
    ],
    formulas: Object.entries(modules).flatMap(([file, module]) => formulasOf(file, module)),
    checkTexts: checks.map(({ text }) => text),
  };
};

/** A check file without rows would be a check that cannot fail. */
const rowsOf = (file: string, module: { checks?: readonly CheckRow[] }): readonly CheckRow[] => {
  if (module.checks === undefined || module.checks.length === 0) throw new Error(`${file} exports no check rows`);
  return module.checks;
};

/** Ids as the code writes them: source: 'iso-1', const source = 'iso-1', or source: { file: 'iso-1' }. A sentence ('the drawing') is no id. */
const namedSources = (text: string): readonly string[] =>
  [...text.matchAll(/\bsource(?:\s*:|\s*=)\s*(?:\{ file: )?'([^']+)'/g)].map(([, id]) => id ?? '').filter((id) => /^[a-z0-9-]+$/.test(id));

const formulasOf = (file: string, module: Readonly<Record<string, unknown>>): CheckCollection['formulas'] =>
  Object.entries(module).flatMap(([identifier, value]) =>
    [value, ...(Array.isArray(value) ? value : typeof value === 'object' && value !== null ? Object.values(value) : [])]
      .filter(isFormula)
      .map((formula) => ({ identifier, file, formula })),
  );

const isFormula = (value: unknown): value is Formula<string> =>
  typeof value === 'object' &&
  value !== null &&
  'compute' in value &&
  typeof value.compute === 'function' &&
  'inputs' in value &&
  'text' in value &&
  'source' in value;

/** One row against our code. A throw counts as a value that does not hold. */
export const judgeRow = (row: CheckRow): Verdict => {
  const ours = oursOf(row);
  if (row.limits !== undefined) return { row, ours, holds: typeof ours === 'number' && ours >= row.limits.low && ours <= row.limits.high };
  const value = numberIn(row.value);
  if (typeof ours === 'string' || value === undefined) return { row, ours, holds: String(ours) === row.value };
  const tolerance = row.wider?.tolerance ?? value.half;
  // A value that lies exactly on the rounding border must not fail by the last bit.
  return { row, ours, holds: Math.abs(ours - value.value) <= tolerance * (1 + 1e-9) };
};

const oursOf = (row: CheckRow): number | string => {
  try {
    return row.ours();
  } catch (error) {
    return `throws: ${error instanceof Error ? error.message : String(error)}`;
  }
};

/** The number as it stands and half of its last digit. */
export const numberIn = (text: string): { readonly value: number; readonly half: number } | undefined => {
  const parts = /^[-−+]?(?:\d+)(?:\.(\d+))?(?:[eE]([-+]?\d+))?$/.exec(text);
  if (parts === null) return undefined;
  const last = 10 ** (Number(parts[2] ?? 0) - (parts[1]?.length ?? 0));
  return { value: Number(text.replace('−', '-')), half: last / 2 };
};

/** Sources whose formulas are remembered, defined or plain practice: there is no printed value to hold them against. */
const withoutPrint = new Set(['starting-model', 'definition', 'common-practice']);

/** All that is wrong; empty when the house holds together. `leastRows` is the recorded floor. */
export const judgeChecks = (collection: CheckCollection, leastRows: number): readonly Problem[] => [
  ...badValues(collection),
  ...doubledIds(collection),
  ...unresolvedSources(collection),
  ...unusedSources(collection),
  ...missingReasons(collection),
  ...uncheckedFormulas(collection),
  ...misplacedPractice(collection),
  ...foreignRows(collection),
  ...openLimits(collection),
  ...calledPublished(collection),
  ...(collection.rows.length < leastRows
    ? [{ kind: 'too few rows' as const, sentence: `there are ${collection.rows.length} check rows; there have been ${leastRows}` }]
    : []),
];

const badValues = ({ rows }: CheckCollection): readonly Problem[] =>
  rows
    .map(judgeRow)
    .filter((v) => !v.holds)
    .map((v) => ({
      kind: 'value',
      sentence: `${v.row.id} ${v.row.question}: ${v.row.how} ${asked(v.row)}, ours ${v.ours} (${v.row.source}, ${v.row.place})`,
    }));

const asked = ({ value, limits, wider }: CheckRow): string =>
  limits !== undefined ? `${value}, ${limits.low} to ${limits.high}` : wider !== undefined ? `${value} ± ${wider.tolerance}` : value;

const doubledIds = ({ rows }: CheckCollection): readonly Problem[] => {
  const seen = new Set<string>();
  return rows.flatMap(({ id }) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    return [{ kind: 'id twice' as const, sentence: `two check rows are called ${id}` }];
  });
};

const unresolvedSources = ({ rows, named, formulas, sources }: CheckCollection): readonly Problem[] => {
  const known = new Set(sources);
  const asked = [
    ...rows.map((r) => ({ source: r.source, by: `check ${r.id}` })),
    ...formulas.map((f) => ({ source: f.formula.source, by: `formula ${f.identifier}` })),
    ...named.map((n) => ({ source: n.source, by: n.file })),
  ];
  return asked
    .filter((a) => !known.has(a.source))
    .map((a) => ({ kind: 'no such source', sentence: `${a.by} names sources/${a.source}.md, which is not there` }));
};

const unusedSources = ({ rows, named, formulas, sources }: CheckCollection): readonly Problem[] => {
  const used = new Set([...rows, ...named, ...formulas.map((f) => f.formula)].map((user) => user.source));
  return sources
    .filter((s) => !used.has(s))
    .map((s) => ({ kind: 'source unused', sentence: `sources/${s}.md is named by no check, formula or figure` }));
};

const missingReasons = ({ rows }: CheckCollection): readonly Problem[] =>
  rows
    .filter((r) => [r.wider, r.limits].some((given) => given?.reason.trim() === ''))
    .map((r) => ({ kind: 'no reason', sentence: `${r.id} has a tolerance or limits of its own without a reason` }));

const uncheckedFormulas = ({ formulas, checkTexts }: CheckCollection): readonly Problem[] =>
  formulas
    .filter(({ formula }) => !withoutPrint.has(formula.source) && formula.unchecked === undefined)
    .filter(({ identifier }) => !checkTexts.some((text) => new RegExp(`\\b${identifier}\\b`).test(text)))
    .map(({ identifier, file }) => ({
      kind: 'formula unchecked',
      sentence: `${identifier} in ${file} has no check row and states no reason`,
    }));

const misplacedPractice = ({ rows }: CheckCollection): readonly Problem[] =>
  rows
    .filter((r) => (r.source === 'common-practice') !== r.id.startsWith('CP-'))
    .map((r) => ({ kind: 'common practice', sentence: `${r.id} must have both the mark CP- and the source common-practice, or neither` }));

/** A row is worth something when what it runs is what the product runs: a formula that nobody calls may agree with every book. */
const foreignRows = ({ rows, runs, product }: CheckCollection): readonly Problem[] =>
  rows.flatMap(({ id }) => {
    const ran = runs.get(id) ?? [];
    const foreign = ran.filter((name) => !product.has(name));
    if (ran.length > 0 && foreign.length === 0) return [];
    const why = ran.length === 0 ? 'names no code of ours' : `runs ${foreign.join(', ')}, which the product does not`;
    return [{ kind: 'not of the product' as const, sentence: `${id} ${why}` }];
  });

/** Limits that leave out the value itself, or that are told beside a tolerance. */
const openLimits = ({ rows }: CheckCollection): readonly Problem[] =>
  rows.flatMap(({ id, limits, value, wider }) => {
    if (limits === undefined) return [];
    const number = numberIn(value)?.value ?? Number.NaN;
    const sound = wider === undefined && number >= limits.low && number <= limits.high;
    return sound ? [] : [{ kind: 'limits' as const, sentence: `${id} has the value ${value} and limits ${limits.low} to ${limits.high}` }];
  });

/** What is from memory is published nowhere, whoever cites it. */
const calledPublished = ({ fromMemory }: CheckCollection): readonly Problem[] =>
  fromMemory
    .filter((file) => basisOf({ file }) === 'published')
    .map((file) => ({ kind: 'remembered', sentence: `sources/${file}.md is from memory, and figures that cite it would say 'published'` }));
