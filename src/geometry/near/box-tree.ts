/**
 * Boxes over boxes over the segments of a chain, in the order of travel. Neighbours in a chain are neighbours in place, so
 * the tree needs no sorting; a nearest place is found by going down the nearest box first and leaving out what is farther.
 * It is asked millions of times for one plan, so boxes are plain numbers: `!` stands where one of those is read.
 */
import { boundsOf, distanceToSegment } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';

/** Level 0 has the box of each segment, each level above one box for every `WIDTH` below; four numbers per box. */
export interface BoxTree {
  readonly levels: readonly Float64Array[];
  readonly segments: readonly NumberedSegment[];
}

interface NumberedSegment {
  readonly index: number;
  readonly segment: Segment;
}

const WIDTH = 6;

export const boxTreeOf = (segments: readonly NumberedSegment[]): BoxTree => {
  const boxes = new Float64Array(4 * segments.length);
  segments.forEach(({ segment }, i) => {
    const b = boundsOf(segment);
    boxes.set([b.minX, b.minY, b.maxX, b.maxY], 4 * i);
  });
  const levels: Float64Array[] = [boxes];
  while (levels.at(-1)!.length > 4) levels.push(levelAbove(levels.at(-1)!));
  return { levels, segments };
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

interface Best {
  on: NumberedSegment;
  /** mm */
  distance: number;
}

/** The segment nearest to a point, the first of several. */
export const nearestSegment = (tree: BoxTree, p: Point): Readonly<Best> => {
  const best = { on: tree.segments[0]!, distance: Infinity };
  visit(tree, p, tree.levels.length - 1, 0, best);
  return best;
};

const visit = (tree: BoxTree, p: Point, level: number, node: number, best: Best): void => {
  if (level === 0) {
    const on = tree.segments[node]!;
    const distance = distanceToSegment(on.segment, p);
    if (distance > best.distance || (distance === best.distance && node > best.on.index)) return;
    best.distance = distance;
    best.on = on;
    return;
  }
  const below = tree.levels[level - 1]!;
  const start = WIDTH * node;
  const end = Math.min(below.length / 4, start + WIDTH);
  const first = nearestBox(below, start, end, p);
  if (squareTo(below, first, p) > best.distance * best.distance) return;
  visit(tree, p, level - 1, first, best);
  for (let i = start; i < end; i += 1) {
    if (i !== first && squareTo(below, i, p) <= best.distance * best.distance) visit(tree, p, level - 1, i, best);
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
