/** A chain made ready for many questions: indexes over its segments, for boxes and for nearest places. */

import { mergedBounds, widened } from '../area.ts';
import type { Chain } from '../contour.ts';
import type { Bounds, Nearest } from '../measure.ts';
import { boundsOf, nearestOn } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';
import { type BoxIndex, boxIndexOf } from './box-index.ts';
import type { BoxTree } from './box-tree.ts';
import { boxTreeOf, nearestSegment } from './box-tree.ts';

/** A segment with its number in the chain. */
export interface Numbered {
  readonly index: number;
  readonly segment: Segment;
}

/** Built once per chain by `lookupOf`; holds no state that changes. */
export interface Lookup {
  readonly segments: readonly Segment[];
  readonly index: BoxIndex<Numbered>;
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
  const numbered = segments.map((segment, index): Numbered => ({ segment, index }));
  const index = boxIndexOf(numbered, ({ segment }) => boundsOf(segment));
  return { segments, index, tree: boxTreeOf(numbered), bounds: mergedBounds(segments.map(boundsOf)) };
};

/** Segments whose boxes come within `margin` mm of a box, in no order. */
export const segmentsNear = (lookup: Lookup, box: Bounds, margin: number, accepts?: (one: Numbered) => boolean): Numbered[] =>
  lookup.index.search(widened(box, margin), accepts);

/** The place of the chain nearest to a point; of several, the first in the chain. */
export const nearestIn = (lookup: Lookup, p: Point): NearestOnChain => {
  const { on } = nearestSegment(lookup.tree, p);
  return { ...nearestOn(on.segment, p), segment: on.index };
};

/** Distance in mm to the nearest place, without the place. */
export const distanceIn = (lookup: Lookup, p: Point): number => nearestSegment(lookup.tree, p).distance;
