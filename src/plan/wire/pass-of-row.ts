/** The rows of a ladder as the passes of a plan. */
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Pass } from '../plan.ts';

/** Condition and register of a pass bear its number: one setting, one offset, nothing to mix up. */
export const passOf = (row: LadderRow): Pass => ({
  number: row.number,
  condition: row.number,
  register: row.number,
  energy: row.energy,
  gap: row.gap,
  stock: row.stock,
  offset: row.offset,
  feed: row.feed,
  areaRate: row.areaRate,
  ra: row.ra,
  damage: row.damage,
  formError: row.formError,
});
