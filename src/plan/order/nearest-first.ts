/** The plainest way through points: always on to the nearest one left. Every better way starts from this one. */

import { pointGrid } from '../../geometry/near/point-grid.ts';
import { distanceBetween, type Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';

export const nearestFirst = (points: readonly Point[], first: number): readonly number[] => {
  const grid = pointGrid(points);
  const order = [first];
  grid.remove(first);
  for (let n = 1; n < points.length; n += 1) {
    const next = grid.nearest(itemAt(points, itemAt(order, n - 1)));
    grid.remove(next);
    order.push(next);
  }
  return order;
};

/** Number of the point nearest to a place. */
export const nearestTo = (points: readonly Point[], from: Point): number =>
  points.reduce((best, p, i) => (distanceBetween(p, from) < distanceBetween(itemAt(points, best), from) ? i : best), 0);
