/** Points and directions on a B-spline, rational or not, by de Boor's scheme. */
import type { Point } from '../geometry/segment.ts';
import type { Spline } from './curve.ts';
import { type ParametricCurve, unit } from './parametric.ts';

/** The spline on the part of its knots where it is whole: from knots[degree] to knots[points.length]. */
export const splineCurve = (spline: Spline): ParametricCurve => {
  const { degree, points, knots } = spline;
  const [start, end] = [knots[degree]!, knots[points.length]!];
  return {
    start,
    end,
    pointAt: (t) => evaluated(spline, t).point,
    tangentAt: (t) => {
      const { point, derivative } = evaluated(spline, t);
      const direction = unit(derivative.x, derivative.y);
      return direction.x !== 0 || direction.y !== 0 ? direction : directionByChord(spline, t, point);
    },
    breaks: [...new Set(knots.slice(degree + 1, points.length))].filter((t) => t > start && t < end),
  };
};

interface Evaluated {
  readonly point: Point;
  readonly derivative: Point;
}

/**
 * De Boor's corner cutting on homogeneous coordinates (x w, y w, w); the last but one stage also gives the derivative.
 * Source: nurbs-book.
 */
const evaluated = (spline: Spline, parameter: number): Evaluated => {
  const { degree, points, weights, knots } = spline;
  const t = Math.min(Math.max(parameter, knots[degree]!), knots[points.length]!);
  const span = spanOf(spline, t);
  const x = new Float64Array(degree + 1);
  const y = new Float64Array(degree + 1);
  const w = new Float64Array(degree + 1);
  for (let j = 0; j <= degree; j++) {
    const i = span - degree + j;
    w[j] = weights[i]!;
    x[j] = points[i]!.x * weights[i]!;
    y[j] = points[i]!.y * weights[i]!;
  }
  let [dx, dy, dw] = [0, 0, 0];
  for (let stage = 1; stage <= degree; stage++) {
    if (stage === degree) {
      const speed = degree / (knots[span + 1]! - knots[span]!);
      dx = speed * (x[degree]! - x[degree - 1]!);
      dy = speed * (y[degree]! - y[degree - 1]!);
      dw = speed * (w[degree]! - w[degree - 1]!);
    }
    for (let j = degree; j >= stage; j--) {
      const low = knots[span - degree + j]!;
      const share = (t - low) / (knots[span + 1 + j - stage]! - low);
      x[j] = (1 - share) * x[j - 1]! + share * x[j]!;
      y[j] = (1 - share) * y[j - 1]! + share * y[j]!;
      w[j] = (1 - share) * w[j - 1]! + share * w[j]!;
    }
  }
  const point = { x: x[degree]! / w[degree]!, y: y[degree]! / w[degree]! };
  return { point, derivative: { x: (dx - dw * point.x) / w[degree]!, y: (dy - dw * point.y) / w[degree]! } };
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
const directionByChord = (spline: Spline, t: number, from: Point): Point => {
  const [start, end] = [spline.knots[spline.degree]!, spline.knots[spline.points.length]!];
  const step = (end - start) * 1e-5;
  const ahead = t + step <= end;
  const near = evaluated(spline, ahead ? t + step : t - step).point;
  return ahead ? unit(near.x - from.x, near.y - from.y) : unit(from.x - near.x, from.y - near.y);
};
