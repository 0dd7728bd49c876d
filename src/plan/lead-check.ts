/** Whether all ways onto and off a contour keep the wire clear of metal that stays. */
import type { Lookup } from '../geometry/lookup.ts';
import { lengthOf, pointAt } from '../geometry/measure.ts';
import type { Segment } from '../geometry/segment.ts';
import { awayFrom } from './away.ts';
import type { DesignStep } from './design-step.ts';

/** Rounding of the places that are compared, mm. */
const ROUNDING = 2e-6;

/** Steps along a lead are never shorter than this share of the offset: between two of them nothing can come nearer by much unseen. */
const SHORTEST_STEP = 0.25;

/**
 * True where every lead keeps its pass's offset from the contours of `lookup`.
 *
 * @param offsets per pass, index = pass number - 1.
 */
export const leadsClear = (steps: readonly DesignStep[], lookup: Lookup, offsets: readonly number[]): boolean =>
  steps.every((step) => {
    if (step.kind !== 'cut' || step.centre === undefined || (step.part !== 'approach' && step.part !== 'leave')) return true;
    return isClear(step.centre, lookup, offsets[step.pass - 1]!);
  });

/** Where a place is further away than the offset, everything within the rest of that distance is clear too and is skipped. */
const isClear = (segment: Segment, lookup: Lookup, offset: number): boolean => {
  const length = lengthOf(segment);
  for (let travelled = 0; ; ) {
    const away = awayFrom(lookup, pointAt(segment, length === 0 ? 0 : travelled / length));
    if (away < offset - ROUNDING) return false;
    if (travelled === length) return true;
    travelled = Math.min(length, travelled + Math.max(away - offset, SHORTEST_STEP * offset));
  }
};
