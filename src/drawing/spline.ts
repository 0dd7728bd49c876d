/** Points and directions on a B-spline, rational or not, by de Boor's scheme. */
import type { Point } from '../geometry/segment.ts';
import type { Spline } from './curve.ts';
import { type ParametricCurve, unit } from './parametric.ts';

/** The spline on the part of its knots where it is whole: from knots[degree] to knots[points.length]. */
export const splineCurve = (spline: Spline): ParametricCurve => {
  const { degree, points, knots } = spline;
  const [start, end] = [knots[degree]!, knots[points.length]!];
  const at = evaluator(spline);
  return {
    start,
    end,
    pointAt: (t) => {
      const { x, y } = at(t);
      return { x, y };
    },
    tangentAt: (t) => {
      const { x, y, dx, dy } = at(t);
      return dx !== 0 || dy !== 0 ? unit(dx, dy) : directionByChord(at, { start, end }, t, { x, y });
    },
    breaks: [...new Set(knots.slice(degree + 1, points.length))].filter((t) => t > start && t < end),
  };
};

interface Evaluated extends Point {
  readonly dx: number;
  readonly dy: number;
}

/**
 * De Boor's corner cutting on homogeneous coordinates (x w, y w, w); the last but one stage also gives the derivative. The
 * working rows are made once for a spline, because arc fitting asks for thousands of points. Source: nurbs-book.
 */
const evaluator = (spline: Spline): ((parameter: number) => Evaluated) => {
  const { degree, points, weights, knots } = spline;
  const [start, end] = [knots[degree]!, knots[points.length]!];
  const x = new Float64Array(degree + 1);
  const y = new Float64Array(degree + 1);
  const w = new Float64Array(degree + 1);
  const cut = (t: number, span: number, stage: number): void => {
    for (let j = degree; j >= stage; j--) {
      const low = knots[span - degree + j]!;
      const share = (t - low) / (knots[span + 1 + j - stage]! - low);
      x[j] = (1 - share) * x[j - 1]! + share * x[j]!;
      y[j] = (1 - share) * y[j - 1]! + share * y[j]!;
      w[j] = (1 - share) * w[j - 1]! + share * w[j]!;
    }
  };
  return (parameter) => {
    const t = Math.min(Math.max(parameter, start), end);
    const span = spanOf(spline, t);
    for (let j = 0; j <= degree; j++) {
      const [point, weight] = [points[span - degree + j]!, weights[span - degree + j]!];
      w[j] = weight;
      x[j] = point.x * weight;
      y[j] = point.y * weight;
    }
    for (let stage = 1; stage < degree; stage++) cut(t, span, stage);
    const speed = degree / (knots[span + 1]! - knots[span]!);
    const dx = speed * (x[degree]! - x[degree - 1]!);
    const dy = speed * (y[degree]! - y[degree - 1]!);
    const dw = speed * (w[degree]! - w[degree - 1]!);
    cut(t, span, degree);
    const weight = w[degree]!;
    const [px, py] = [x[degree]! / weight, y[degree]! / weight];
    return { x: px, y: py, dx: (dx - dw * px) / weight, dy: (dy - dw * py) / weight };
  };
};

/** The knot span that holds t: the last one with a length at the end, and the one after t at a knot. */
const spanOf = ({ degree, points, knots }: Spline, t: number): number => {
  let low = degree;
  let high = points.length;
  if (t >= knots[high]!) {
    while (high > degree && knots[high - 1]! >= knots[points.length]!) high--;
    return high - 1;
  }
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (t < knots[middle]!) high = middle;
    else low = middle;
  }
  return low;
};

/** Where the curve stands still for a moment (control points upon each other) the chord to a near point shows its direction. */
const directionByChord = (
  at: (t: number) => Evaluated,
  { start, end }: { readonly start: number; readonly end: number },
  t: number,
  from: Point,
): Point => {
  const step = (end - start) * 1e-5;
  const ahead = t + step <= end;
  const near = at(ahead ? t + step : t - step);
  return ahead ? unit(near.x - from.x, near.y - from.y) : unit(from.x - near.x, from.y - near.y);
};
