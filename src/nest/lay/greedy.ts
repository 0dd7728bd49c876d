/**
 * One piece after the other, each laid where it reaches least far along the plate: the quick layout that everything else starts from.
 * Rows are numbers in long arrays: `!` stands where one of those is read.
 */

import { itemAt, sideBySide } from '../../sequence/sequence.ts';
import type { CountedWork } from '../counted-work.ts';
import type { Spans } from '../spans.ts';
import type { CellPlace, Item } from './crowd.ts';
import { copyOf, type Floor, firstFree, lay } from './floor.ts';

/** A piece that was laid: which kind, and where. */
export interface Laid extends CellPlace {
  readonly kind: number;
}

export interface GreedyLayout {
  readonly laid: readonly Laid[];
  /** Kinds for which there was no place, once for each piece. */
  readonly left: readonly number[];
}

/** @param order kinds by number, one entry for each piece, in the order in which they are laid */
export const layGreedily = (floor: Floor, kinds: readonly Item[], order: readonly number[], work: CountedWork): GreedyLayout => {
  const on = copyOf(floor);
  // What was blocked once stays blocked: the next search in a row for the same shape goes on where the last one ended.
  const starts = kinds.map(({ ways }) => ways.map((spans) => new Int16Array(Math.max(0, floor.grid.high - spans.high + 1))));
  const full = new Set<number>();
  const laid: Laid[] = [];
  const left: number[] = [];
  for (const kind of order) {
    const place = full.has(kind) ? undefined : leastReach(on, itemAt(kinds, kind), itemAt(starts, kind), work);
    if (place === undefined) {
      full.add(kind);
      left.push(kind);
      continue;
    }
    lay(on, itemAt(itemAt(kinds, kind).ways, place.way), place.x, place.y);
    laid.push({ kind, ...place });
  }
  return { laid, left };
};

const leastReach = (floor: Floor, { ways }: Item, starts: readonly Int16Array[], work: CountedWork): CellPlace | undefined => {
  let best: { readonly spot: CellPlace; readonly reach: number } | undefined;
  sideBySide(ways, starts).forEach(([spans, start], way) => {
    const spot = leastReachOf(floor, spans, way, start, best?.reach ?? Infinity, work);
    if (spot !== undefined) best = { spot, reach: spot.x + spans.wide };
  });
  return best?.spot;
};

/** The lowest of the places with the least reach, if that is less than `than`. */
const leastReachOf = (
  floor: Floor,
  spans: Spans,
  way: number,
  start: Int16Array,
  than: number,
  work: CountedWork,
): CellPlace | undefined => {
  let most = Math.min(floor.grid.wide, than - 1) - spans.wide;
  let spot: CellPlace | undefined;
  for (let y = 0; y < start.length; y += 1) {
    const from = start[y]!;
    if (from > most) continue;
    const x = firstFree(floor, spans, from, y, most, work);
    start[y] = Math.min(x, floor.grid.wide);
    if (x > most) continue;
    spot = { way, x, y };
    most = x - 1;
  }
  return spot;
};
