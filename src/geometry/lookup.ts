/** A chain made ready for many questions: a spatial index over its segments, for nearest places and for boxes. */
import Flatbush from 'flatbush';
import type { Chain } from './contour.ts';
import type { Bounds, Nearest } from './measure.ts';
import { boundsOf, distanceToSegment, nearestOn } from './measure.ts';
import type { Point, Segment } from './segment.ts';

/** Built once per chain by `lookupOf`; holds no state that changes. */
export interface Lookup {
  readonly segments: readonly Segment[];
  readonly index: Flatbush;
  /** Of the whole chain. */
  readonly bounds: Bounds;
}

/** The place of a chain nearest to a point. */
export interface NearestOnChain extends Nearest {
  readonly segment: number;
}

export const lookupOf = (chain: Chain): Lookup => lookupOfSegments(chain.segments);

/** The same over any bag of segments, at least one. */
export const lookupOfSegments = (segments: readonly Segment[]): Lookup => {
  const index = new Flatbush(segments.length);
  for (const s of segments) {
    const b = boundsOf(s);
    index.add(b.minX, b.minY, b.maxX, b.maxY);
  }
  index.finish();
  return { segments, index, bounds: { minX: index.minX, minY: index.minY, maxX: index.maxX, maxY: index.maxY } };
};

/** Numbers of the segments whose boxes come within `margin` mm of a box, in no order. */
export const segmentsNear = (lookup: Lookup, box: Bounds, margin: number): number[] =>
  lookup.index.search(box.minX - margin, box.minY - margin, box.maxX + margin, box.maxY + margin);

/**
 * The nearest place of the chain. The segment with the nearest box gives a first distance; only segments whose boxes are
 * nearer than that can beat it.
 */
export const nearestIn = (lookup: Lookup, p: Point): NearestOnChain => {
  const first = lookup.index.neighbors(p.x, p.y, 1)[0]!;
  let segment = first;
  let distance = distanceToSegment(lookup.segments[first]!, p);
  for (const i of lookup.index.search(p.x - distance, p.y - distance, p.x + distance, p.y + distance)) {
    const d = distanceToSegment(lookup.segments[i]!, p);
    if (d < distance || (d === distance && i < segment)) {
      distance = d;
      segment = i;
    }
  }
  return { ...nearestOn(lookup.segments[segment]!, p), segment };
};
