/** Whether all ways onto and off a contour keep the wire clear of metal that stays. */

import { boundsOf, lengthOf } from '../../geometry/measure.ts';
import { closestBetween } from '../../geometry/near/closest.ts';
import { type Lookup, segmentsNear } from '../../geometry/near/lookup.ts';
import type { Segment } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { DesignStep } from './design-step.ts';

/** Rounding of the places that are compared, mm. */
const ROUNDING = 1e-7;

/**
 * True where every lead keeps its pass's offset from the contours of `lookup`.
 *
 * @param offsets per pass, index = pass number - 1.
 */
export const leadsClear = (steps: readonly DesignStep[], lookup: Lookup, offsets: readonly number[]): boolean =>
  steps.every((step) => {
    if (step.kind !== 'cut' || step.centre === undefined || (step.part !== 'approach' && step.part !== 'leave')) return true;
    return isClear(step.centre, lookup, itemAt(offsets, step.pass - 1));
  });

/** Straight moves shorter than this, mm, are too short to be written or to switch compensation on. */
const SHORTEST = 0.02;

/** True where every straight move that switches compensation on is longer than the offset, and none is hardly there. */
export const leadsLongEnough = (steps: readonly DesignStep[], offsets: readonly number[]): boolean =>
  steps.every((step, i) => {
    if (step.kind !== 'compensate' && step.kind !== 'cancel compensation') return true;
    const move = steps[i + 1];
    if (move?.kind !== 'cut' || move.programmed === undefined || move.centre === undefined) return false;
    const least = step.kind === 'compensate' ? itemAt(offsets, move.pass - 1) + SHORTEST : SHORTEST;
    return lengthOf(move.programmed) >= least && lengthOf(move.centre) >= Math.min(SHORTEST, least);
  });

const isClear = (lead: Segment, lookup: Lookup, offset: number): boolean =>
  segmentsNear(lookup, boundsOf(lead), offset).every(({ segment }) => closestBetween(lead, segment, 0).distance >= offset - ROUNDING);
