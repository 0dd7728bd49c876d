/**
 * Boxes over boxes over the segments of a chain, in the order of travel. Neighbours in a chain are neighbours in place, so
 * the tree needs no sorting; a nearest place is found by going down the nearest box first and leaving out what is farther.
 */
import { boundsOf, distanceToSegment } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';

/** Level 0 has the box of each segment, each level above one box for every `WIDTH` below; four numbers per box. */
export interface BoxTree {
  readonly levels: readonly Float64Array[];
}

const WIDTH = 6;

export const boxTreeOf = (segments: readonly Segment[]): BoxTree => {
  const boxes = new Float64Array(4 * segments.length);
  segments.forEach((s, i) => {
    const b = boundsOf(s);
    boxes.set([b.minX, b.minY, b.maxX, b.maxY], 4 * i);
  });
  const levels: Float64Array[] = [boxes];
  while (levels.at(-1)!.length > 4) levels.push(levelAbove(levels.at(-1)!));
  return { levels };
};

const levelAbove = (below: Float64Array): Float64Array => {
  const count = Math.ceil(below.length / 4 / WIDTH);
  const boxes = new Float64Array(4 * count);
  for (let i = 0; i < count; i += 1) {
    const end = Math.min(below.length, 4 * WIDTH * (i + 1));
    let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let k = 4 * WIDTH * i; k < end; k += 4) {
      minX = Math.min(minX, below[k]!);
      minY = Math.min(minY, below[k + 1]!);
      maxX = Math.max(maxX, below[k + 2]!);
      maxY = Math.max(maxY, below[k + 3]!);
    }
    boxes.set([minX, minY, maxX, maxY], 4 * i);
  }
  return boxes;
};

/** The number of the segment nearest to a point, the lowest of several, and its distance in mm. */
export const nearestSegment = (
  tree: BoxTree,
  segments: readonly Segment[],
  p: Point,
): { readonly segment: number; readonly distance: number } => {
  const best = { segment: -1, distance: Infinity };
  visit(tree, segments, p, tree.levels.length - 1, 0, best);
  return best;
};

const visit = (
  tree: BoxTree,
  segments: readonly Segment[],
  p: Point,
  level: number,
  node: number,
  best: { segment: number; distance: number },
): void => {
  if (level === 0) {
    const distance = distanceToSegment(segments[node]!, p);
    if (distance > best.distance || (distance === best.distance && node > best.segment)) return;
    best.distance = distance;
    best.segment = node;
    return;
  }
  const below = tree.levels[level - 1]!;
  const start = WIDTH * node;
  const end = Math.min(below.length / 4, start + WIDTH);
  const first = nearestBox(below, start, end, p);
  if (squareTo(below, first, p) > best.distance * best.distance) return;
  visit(tree, segments, p, level - 1, first, best);
  for (let i = start; i < end; i += 1) {
    if (i !== first && squareTo(below, i, p) <= best.distance * best.distance) visit(tree, segments, p, level - 1, i, best);
  }
};

const nearestBox = (boxes: Float64Array, start: number, end: number, p: Point): number => {
  let nearest = start;
  let least = Infinity;
  for (let i = start; i < end; i += 1) {
    const square = squareTo(boxes, i, p);
    if (square < least) {
      least = square;
      nearest = i;
    }
  }
  return nearest;
};

/** Square of the distance from a point to a box, 0 inside it. */
const squareTo = (boxes: Float64Array, i: number, p: Point): number => {
  const k = 4 * i;
  const x = Math.max(boxes[k]! - p.x, 0, p.x - boxes[k + 2]!);
  const y = Math.max(boxes[k + 1]! - p.y, 0, p.y - boxes[k + 3]!);
  return x * x + y * y;
};
