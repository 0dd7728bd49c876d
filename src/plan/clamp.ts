/** A clamp or another forbidden zone over the block, as it is asked for. */

import { line, type Point, point, type Segment } from '../geometry/segment.ts';
import { roundPairs } from '../sequence/sequence.ts';

/** A rectangle by its low and its high corner, mm. */
export interface Clamp {
  readonly low: Point;
  readonly high: Point;
}

/** The edge of a clamp, for leads to keep clear of. */
export const edgesOfClamp = ({ low, high }: Clamp): readonly Segment[] => {
  const corners = [low, point(high.x, low.y), high, point(low.x, high.y)];
  return roundPairs(corners).map(([p, q]) => line(p, q));
};
