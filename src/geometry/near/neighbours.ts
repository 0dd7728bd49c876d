/** The nearest of many points to one of them. */
import type { Point } from '../segment.ts';
import { type BoxIndex, boxIndexOf } from './box-index.ts';

/** For each point the numbers of the nearest others, the nearest first. */
export const neighboursOf = (points: readonly Point[], count: number): readonly (readonly number[])[] => {
  const index = pointIndexOf(points.map((at, number) => ({ at, number })));
  return points.map((p, i) => index.nearest(p, count + 1).flatMap(({ number }) => (number === i ? [] : [number])));
};

/** A point with its number in the list it comes from. */
export interface NumberedPoint {
  readonly at: Point;
  readonly number: number;
}

export const pointIndexOf = (points: readonly NumberedPoint[]): BoxIndex<NumberedPoint> =>
  boxIndexOf(points, ({ at }) => ({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y }));
