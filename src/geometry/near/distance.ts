/** Distance from a point to a whole chain, exact to arcs. */
import { aroundAt, indexOfLeast } from '../../sequence/sequence.ts';
import type { Chain } from '../contour.ts';
import { distanceToSegment, nearestOn } from '../measure.ts';
import type { Point } from '../segment.ts';
import type { NearestOnChain } from './lookup.ts';

/** Distance in mm; for many points on one chain use `lookupOf` and `nearestIn`. */
export const distanceTo = (chain: Chain, p: Point): number => {
  let least = Infinity;
  for (const s of chain.segments) {
    const d = distanceToSegment(s, p);
    if (d < least) least = d;
  }
  return least;
};

/** The place of the chain nearest to a point; the first one where several are. */
export const nearestOnChain = (chain: Chain, p: Point): NearestOnChain => {
  const segment = indexOfLeast(chain.segments, (s) => distanceToSegment(s, p));
  return { ...nearestOn(aroundAt(chain.segments, segment), p), segment };
};
