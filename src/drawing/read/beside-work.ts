/** What is drawn beside the work: each kind is looked for in turn, marked on its loops, and asked about in one question. */
import type { Finding } from '../../text/finding.ts';
import type { Aside, DrawingUnits, Loop } from '../drawing.ts';
import { takenOf } from '../left-out.ts';
import { reportConstruction } from './construction.ts';
import { bordersOf, type Evidence, linesOfBorders, reportBorders } from './report-border.ts';
import { reportTables, tablesOf } from './report-table.ts';
import { reportViews, viewsOf } from './report-view.ts';

export interface BesideWork {
  readonly loops: readonly Loop[];
  /** Ids of open lines that the questions speak of already. */
  readonly lines: ReadonlySet<string>;
  readonly findings: readonly Finding[];
}

export interface Beside extends Omit<Evidence, 'tables'> {
  /** By what loops are known that explain the drawing, by id. */
  readonly known: ReadonlyMap<string, string | undefined>;
  readonly units: DrawingUnits;
}

export const besideWork = (loops: readonly Loop[], { known, units, chains, titled }: Beside): BesideWork => {
  const tables = tablesOf(workOf(loops, units));
  const first = marked(
    loops,
    tables.map(({ id }) => [id, 'table']),
  );
  const borders = bordersOf(workOf(first, units), { tables, chains, titled });
  const second = marked(
    first,
    borders.flatMap(({ loop, kind }) => (kind === 'plate' ? [] : [[loop.id, kind] as const])),
  );
  const views = viewsOf(workOf(second, units));
  const lines = linesOfBorders(borders, chains);
  return {
    loops: second,
    lines,
    findings: [
      ...reportConstruction(loops, known, units),
      ...reportTables(tables, units),
      ...reportBorders(borders, lines.size, units),
      ...reportViews(views, units),
    ],
  };
};

/** What is left of them as work, lying in each other as though nothing else had been drawn. */
const workOf = (loops: readonly Loop[], units: DrawingUnits): readonly Loop[] =>
  takenOf({ loops, units, findings: [] }, {}).loops.filter((l) => !l.hidden && l.aside === undefined);

const marked = (loops: readonly Loop[], asides: readonly (readonly [string, Aside])[]): readonly Loop[] => {
  const by = new Map(asides);
  return by.size === 0 ? loops : loops.map((loop) => (by.has(loop.id) ? { ...loop, aside: by.get(loop.id) } : loop));
};
