/** Distance and nearest place of a contour, by looking at every segment where there are few: quicker than asking an index. */

import { indexOfLeast } from '../../sequence/sequence.ts';
import { distanceToSegment, nearestOn } from '../measure.ts';
import type { Point } from '../segment.ts';
import { type Lookup, type NearestOnChain, nearestIn } from './lookup.ts';

const FEW = 24;

/** mm from a point to the contours of a lookup. */
export const awayFrom = (lookup: Lookup, p: Point): number => {
  if (lookup.segments.length > FEW) return nearestIn(lookup, p).distance;
  let least = Number.POSITIVE_INFINITY;
  for (const s of lookup.segments) {
    const d = distanceToSegment(s, p);
    if (d < least) least = d;
  }
  return least;
};

/** The nearest place. */
export const nearestTo = (lookup: Lookup, p: Point): NearestOnChain => {
  const index = lookup.segments.length > FEW ? -1 : indexOfLeast(lookup.segments, (s) => distanceToSegment(s, p));
  const segment = lookup.segments[index];
  return segment === undefined ? nearestIn(lookup, p) : { ...nearestOn(segment, p), segment: index };
};
