/** Basis functions of a B-spline as a textbook prints them, got out of our evaluation by control points that are 0 but one. */
import type { CheckRow } from '../../quantity/check.ts';
import { splineCurve } from './spline.ts';

/** Value at 5/2 of the basis function with this number, degree 2, on the knots of the example. */
const basis = (number: number): number => {
  const knots = [0, 0, 0, 1, 2, 3, 4, 4, 5, 5, 5];
  const points = Array.from({ length: 8 }, (_, i) => ({ x: i === number ? 1 : 0, y: 0 }));
  return splineCurve({ kind: 'spline', degree: 2, points, weights: points.map(() => 1), knots }).pointAt(2.5).x;
};

const row = (id: string, number: number, value: string): CheckRow => ({
  id,
  source: 'nurbs-book',
  place: 'example 2.3',
  how: 'recomputed',
  question: `eighths of basis function ${number} of degree 2 at 5/2`,
  value,
  // In exact fractions, so held as text.
  ours: () => String(8 * basis(number)),
});

export const checks: readonly CheckRow[] = [row('K-06a', 2, '1'), row('K-06b', 3, '6'), row('K-06c', 4, '1'), row('K-06d', 5, '0')];
