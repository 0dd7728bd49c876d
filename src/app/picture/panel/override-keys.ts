/** What is set by hand as keys of the job file: the same words the command line reads, so that either can do what the other did. */
import type { Point } from '../../../geometry/segment.ts';
import { parseLength } from '../../../quantity/typed-length.ts';
import { valueAt } from '../../state/input.ts';
import type { Words } from '../../words/words-for.ts';
import type { ContourView } from '../../work/views.ts';
import type { Lengths } from '../lengths.ts';

/** Dotted paths into the job file with their new values; undefined gives a choice back to the planner. */
export type HandChange = Readonly<Record<string, unknown>>;

export interface Hole {
  readonly at: Point;
  readonly diameter: number;
}

export interface Clamp {
  readonly low: Point;
  readonly high: Point;
}

/** An open line has no inside. */
export const isOpenLine = ({ area }: Pick<ContourView, 'area'>): boolean => area === 0;

export const keptKey = (c: ContourView): string => `${isOpenLine(c) ? 'open' : 'kept'}.${c.id}`;
export const startKey = (id: string): string => `start.${id}`;
export const coreKey = (id: string): string => `core.${id}`;
export const tabKey = (id: string): string => `overrides.${id}.tab`;
export const entryKey = (id: string): string => `overrides.${id}.entry`;
export const holeKey = (id: string): string => `overrides.${id}.hole`;
export const ORDER_KEY = 'order';
export const DATUM_KEY = 'datum';
export const CORNER_KEY = 'stock.corner';

/** A place of the picture, mm, as the job file gives it: in units of the drawing of so many mm, to a tenth of a nanometre. */
export const inDrawing = ({ x, y }: Point, millimetres: number): Point => ({ x: tidy(x / millimetres), y: tidy(y / millimetres) });

export const inMm = ({ x, y }: Point, millimetres: number): Point => ({ x: x * millimetres, y: y * millimetres });

/** Digits beyond these come of arithmetic, not of anybody's wish. */
export const tidy = (n: number): number => Math.round(n * 1e7) / 1e7 || 0;

/** Contours whose turn can be chosen, in the order in which they are cut. */
export const turns = (contours: readonly ContourView[]): readonly string[] =>
  contours
    .filter((c) => c.number > 0 && !isOpenLine(c))
    .toSorted((a, b) => a.number - b.number)
    .map((c) => c.id);

/** The whole order with one contour a turn earlier or later; as it was where there is no such turn. */
export const withTurn = (order: readonly string[], id: string, by: -1 | 1): readonly string[] => {
  const from = order.indexOf(id);
  const to = from + by;
  const other = to < 0 ? undefined : order[to];
  if (from < 0 || other === undefined) return order;
  return order.toSpliced(from, 1, other).toSpliced(to, 1, id);
};

export type HandWhat = 'kept' | 'start' | 'core' | 'tab' | 'entry' | 'hole' | 'order';

export interface HandSetting {
  readonly path: string;
  /** Of the contour or line; none for the order of all. */
  readonly id?: string | undefined;
  readonly what: HandWhat;
}

/** What stands in the inputs by hand, contour by contour, those that are in no drawing any more included. */
export const handSettings = (input: Readonly<Record<string, unknown>>): readonly HandSetting[] => {
  const ids = [...new Set(['open', 'kept', 'start', 'core', 'overrides'].flatMap((group) => Object.keys(groupIn(input, group))))];
  const paths = (id: string): readonly HandSetting[] => [
    { path: `open.${id}`, id, what: 'kept' },
    { path: `kept.${id}`, id, what: 'kept' },
    { path: startKey(id), id, what: 'start' },
    { path: coreKey(id), id, what: 'core' },
    { path: tabKey(id), id, what: 'tab' },
    { path: entryKey(id), id, what: 'entry' },
    { path: holeKey(id), id, what: 'hole' },
  ];
  const order = Array.isArray(input[ORDER_KEY]) && input[ORDER_KEY].length > 0;
  return [
    ...ids
      .toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true }))
      .flatMap(paths)
      .filter(({ path }) => valueAt(input, path) !== undefined),
    ...(order ? [{ path: ORDER_KEY, what: 'order' } as const] : []),
  ];
};

const groupIn = (input: Readonly<Record<string, unknown>>, group: string): object => {
  const value = input[group];
  return typeof value === 'object' && value !== null ? value : {};
};

export type Sign = 'any' | 'positive' | 'not negative';

export type Typed = { readonly kind: 'length'; readonly mm: number } | { readonly kind: 'wrong'; readonly sentence: string };

/** A typed length; a number without unit is in the user's, and who writes a decimal comma means one by '1,250'. */
export const typedLength = (
  text: string,
  { unit, comma }: Pick<Lengths, 'unit' | 'comma'>,
  words: Words['picture']['typed'],
  sign: Sign = 'any',
): Typed => {
  // Only a comma before three digits can be read in two ways for its mark; '5 mil' stays unclear in every language.
  const read = parseLength(comma ? text.replace(/^(\s*[-−+]?\d+),(\d{3})(?!\d)/, '$1.$2') : text, unit);
  if (read.kind === 'ambiguous') return { kind: 'wrong', sentence: words.ambiguous(read.readings.map((r) => r.words).join(' / ')) };
  if (read.kind === 'not a length') return { kind: 'wrong', sentence: words.wrong(read.reason) };
  if (comma && /^\D*[1-9]\d{0,2}\.\d{3}(?!\d)/.test(text)) return { kind: 'wrong', sentence: words.ambiguous(bothReadings(text)) };
  if (sign === 'positive' && !(read.mm > 0)) return { kind: 'wrong', sentence: words.positive };
  if (sign === 'not negative' && read.mm < 0) return { kind: 'wrong', sentence: words.notNegative };
  return { kind: 'length', mm: tidy(read.mm) };
};

/** Where decimals are written with a comma, a point before three digits may group thousands. */
const bothReadings = (text: string): string => `${text.trim().replace('.', ',')} / ${text.trim().replace('.', '')}`;
