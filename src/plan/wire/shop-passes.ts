/** Passes out of the shop's own tables: where one fits and does what is asked, it beats the model. */

import type { CutConditions } from '../../physics/cut/conditions.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import { fittingTables, type PassTable, tableRows } from '../../physics/cut/pass-table.ts';
import type { NonEmpty } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { excessOf, finishedRows, type LadderAsked } from './find-ladder.ts';

export interface ShopPasses {
  readonly rows: NonEmpty<LadderRow>;
  /** For one mm of contour, all passes together. */
  readonly minutes: number;
}

export interface ShopPassesFound {
  /** The quickest table that reaches what is asked; none when no table fits or none of them does. */
  readonly best?: ShopPasses;
  /** Of tables that fit but cannot be run as they were entered. */
  readonly findings: readonly Finding[];
}

const SLACK = 1 + 1e-9;

/** @param count only tables with so many passes, where the user sets it. */
export const shopPasses = (
  conditions: CutConditions,
  tables: readonly PassTable[],
  asked: LadderAsked,
  count?: number,
): ShopPassesFound => {
  const read = fittingTables(tables, conditions)
    .filter((t) => count === undefined || t.passes.length === count)
    .map((table) => tableRows(conditions, table));
  const findings = read.flatMap((r) => (r.kind === 'inconsistent' ? [r.finding] : []));
  const able = read
    .flatMap((r) => (r.kind === 'rows' && reaches(conditions, r.rows, asked) ? [r.rows] : []))
    .map((rows) => ({ rows, minutes: rows.reduce((sum, row) => sum + 1 / row.feed.value, 0) }))
    .toSorted((a, b) => a.minutes - b.minutes);
  const best = able[0];
  return best === undefined ? { findings } : { best, findings };
};

const reaches = (conditions: CutConditions, rows: NonEmpty<LadderRow>, asked: LadderAsked): boolean =>
  excessOf(conditions, finishedRows(rows), asked) <= SLACK;
