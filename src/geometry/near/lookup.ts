/** A chain made ready for many questions: indexes over its segments, for boxes and for nearest places. */
import Flatbush from 'flatbush';
import type { Chain } from '../contour.ts';
import type { Bounds, Nearest } from '../measure.ts';
import { nearestOn } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';
import type { BoxTree } from './box-tree.ts';
import { boxTreeOf, nearestSegment } from './box-tree.ts';

/** Built once per chain by `lookupOf`; holds no state that changes. */
export interface Lookup {
  readonly segments: readonly Segment[];
  readonly index: Flatbush;
  readonly tree: BoxTree;
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
  const tree = boxTreeOf(segments);
  const boxes = tree.levels[0]!;
  const index = new Flatbush(segments.length);
  for (let k = 0; k < boxes.length; k += 4) index.add(boxes[k]!, boxes[k + 1]!, boxes[k + 2]!, boxes[k + 3]!);
  index.finish();
  return { segments, index, tree, bounds: { minX: index.minX, minY: index.minY, maxX: index.maxX, maxY: index.maxY } };
};

/** Numbers of the segments whose boxes come within `margin` mm of a box, in no order. */
export const segmentsNear = (lookup: Lookup, box: Bounds, margin: number): number[] =>
  lookup.index.search(box.minX - margin, box.minY - margin, box.maxX + margin, box.maxY + margin);

/** The place of the chain nearest to a point; of several, the first in the chain. */
export const nearestIn = (lookup: Lookup, p: Point): NearestOnChain => {
  const { segment } = nearestSegment(lookup.tree, lookup.segments, p);
  return { ...nearestOn(lookup.segments[segment]!, p), segment };
};

/** Distance in mm to the nearest place, without the place. */
export const distanceIn = (lookup: Lookup, p: Point): number => nearestSegment(lookup.tree, lookup.segments, p).distance;
