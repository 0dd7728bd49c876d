/** Whether all ways onto and off a contour keep the wire clear of metal that stays. */
import type { Lookup } from '../geometry/lookup.ts';
import { nearestIn } from '../geometry/lookup.ts';
import { lengthOf, pointAt } from '../geometry/measure.ts';
import type { Point, Segment } from '../geometry/segment.ts';
import type { DesignStep } from './design-step.ts';

/** Rounding of the places that are compared, mm. */
const ROUNDING = 2e-6;

/**
 * True where every lead keeps its pass's offset from the contours of `lookup`.
 *
 * @param offsets per pass, index = pass number - 1.
 */
export const leadsClear = (steps: readonly DesignStep[], lookup: Lookup, offsets: readonly number[]): boolean =>
  steps.every((step) => {
    if (step.kind !== 'cut' || step.centre === undefined || (step.part !== 'approach' && step.part !== 'leave')) return true;
    const offset = offsets[step.pass - 1]!;
    return samples(step.centre, offset / 2).every((p) => nearestIn(lookup, p).distance >= offset - ROUNDING);
  });

/** Places not further apart than half an offset: between two of them nothing can come nearer by much without being seen. */
const samples = (segment: Segment, apart: number): readonly Point[] => {
  const count = Math.min(200, Math.max(4, Math.ceil(lengthOf(segment) / apart)));
  return Array.from({ length: count + 1 }, (_, n) => pointAt(segment, n / count));
};
