/** The order of openings with little travel: nearest next hole first, then shortened by reversing and moving stretches. */
import type { Point } from '../geometry/segment.ts';
import { distanceBetween } from '../geometry/segment.ts';
import { neighboursOf, pointGrid } from './point-grid.ts';
import { shortened } from './shorten.ts';

/**
 * Numbers of the points in the order in which they are visited, each once. With `start` the way begins there, which counts
 * as travel; without it at whichever of a few likely points makes the way shortest.
 */
export const travelOrder = (points: readonly Point[], start?: Point): readonly number[] => {
  if (points.length <= 1) return points.map((_, i) => i);
  const neighbours = neighboursOf(points, NEIGHBOURS);
  if (start !== undefined) {
    const first = nearestTo(points, start);
    return shortened(points, nearestFirst(points, first), neighbours, start);
  }
  let best: { readonly order: readonly number[]; readonly length: number } | undefined;
  for (const first of likelyStarts(points)) {
    const order = shortened(points, nearestFirst(points, first), neighbours);
    const length = wayLength(points, order);
    if (best === undefined || length < best.length - 1e-9) best = { order, length };
  }
  return best!.order;
};

/** More candidates than this for the next point hardly ever shorten the way. */
const NEIGHBOURS = 7;

/** Length of the way through the points in an order, mm. */
export const wayLength = (points: readonly Point[], order: readonly number[]): number => {
  let length = 0;
  for (let i = 1; i < order.length; i += 1) length += distanceBetween(points[order[i - 1]!]!, points[order[i]!]!);
  return length;
};

/** Every point where there are few, two corners where there are some, one corner where there are many. */
const likelyStarts = (points: readonly Point[]): readonly number[] => {
  if (points.length <= 12) return points.map((_, i) => i);
  const most = (measure: (p: Point) => number): number =>
    points.reduce((best, p, i) => (measure(p) > measure(points[best]!) ? i : best), 0);
  const corner = most((p) => -p.x - p.y);
  if (points.length > 100) return [corner];
  return [...new Set([corner, most((p) => p.x - p.y)])];
};

const nearestTo = (points: readonly Point[], from: Point): number =>
  points.reduce((best, p, i) => (distanceBetween(p, from) < distanceBetween(points[best]!, from) ? i : best), 0);

const nearestFirst = (points: readonly Point[], first: number): readonly number[] => {
  const grid = pointGrid(points);
  const order = [first];
  grid.remove(first);
  for (let n = 1; n < points.length; n += 1) {
    const next = grid.nearest(points[order[n - 1]!]!);
    grid.remove(next);
    order.push(next);
  }
  return order;
};
