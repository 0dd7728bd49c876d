/** Distance and nearest place of a contour, by looking at every segment where there are few: quicker than asking an index. */
import { type Lookup, nearestIn } from '../geometry/lookup.ts';
import { distanceToSegment, type Nearest, nearestOn } from '../geometry/measure.ts';
import type { Point } from '../geometry/segment.ts';

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
export const nearestTo = (lookup: Lookup, p: Point): Nearest => {
  if (lookup.segments.length > FEW) return nearestIn(lookup, p);
  let nearest = lookup.segments[0]!;
  let least = Number.POSITIVE_INFINITY;
  for (const s of lookup.segments) {
    const d = distanceToSegment(s, p);
    if (d < least) [least, nearest] = [d, s];
  }
  return nearestOn(nearest, p);
};
