/** The plainest way through points: always on to the nearest one left. Every better way starts from this one. */

import { type NumberedPoint, pointIndexOf } from '../../geometry/near/neighbours.ts';
import { distanceBetween, type Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';

export const nearestFirst = (points: readonly Point[], first: number): readonly number[] => {
  const left = pointsLeft(points);
  const order = [first];
  left.remove(first);
  for (let n = 1; n < points.length; n += 1) {
    const next = left.nearest(itemAt(points, itemAt(order, n - 1)));
    left.remove(next);
    order.push(next);
  }
  return order;
};

/** Two places this much apart, as a share of their distance, are equally near: where holes stand in rows, the first of them counts. */
const EQUALLY_NEAR = 1e-12;

/** Points that are taken out one by one; the index is made anew whenever half of what it holds is gone. */
const pointsLeft = (points: readonly Point[]): { readonly remove: (point: number) => void; readonly nearest: (from: Point) => number } => {
  const gone = new Set<number>();
  const isLeft = ({ number }: NumberedPoint): boolean => !gone.has(number);
  let held: readonly NumberedPoint[] = points.map((at, number) => ({ at, number }));
  let index = pointIndexOf(held);
  return {
    remove: (point) => {
      gone.add(point);
      const left = points.length - gone.size;
      if (left === 0 || 2 * left > held.length) return;
      held = held.filter(isLeft);
      index = pointIndexOf(held);
    },
    nearest: (from) => {
      const [near] = index.nearest(from, 1, Infinity, isLeft);
      if (near === undefined) throw new Error('A nearest point was asked for where none is left.');
      const reach = distanceBetween(near.at, from) * (1 + EQUALLY_NEAR);
      return index.nearest(from, Infinity, reach, isLeft).reduce((a, b) => (isBefore(b, a, from) ? b : a), near).number;
    },
  };
};

const isBefore = (a: NumberedPoint, b: NumberedPoint, from: Point): boolean => {
  const [far, near] = [distanceBetween(a.at, from), distanceBetween(b.at, from)];
  return far < near || (far === near && a.number < b.number);
};

/** Number of the point nearest to a place. */
export const nearestTo = (points: readonly Point[], from: Point): number =>
  points.reduce((best, p, i) => (distanceBetween(p, from) < distanceBetween(itemAt(points, best), from) ? i : best), 0);
