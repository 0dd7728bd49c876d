/** Points and directions on a B-spline, rational or not, by de Boor's scheme. Its rows are plain numbers: `!` stands where one is read. */
import type { Point } from '../../geometry/segment.ts';
import type { Spline } from './curve.ts';
import type { ParametricCurve } from './parametric.ts';

/**
 * The spline on the part of its knots where it is whole: from knots[degree] to knots[points.length]. Its breaks are the
 * knots at which its direction really jumps; a knot repeated as often as the degree may still be passed smoothly.
 */
export const splineCurve = (spline: Spline): ParametricCurve => {
  const { degree, points, knots } = spline;
  const [start, end] = [knots[degree]!, knots[points.length]!];
  const at = evaluator(spline);
  const inner = [...new Set(knots.slice(degree + 1, points.length))].filter((t) => t > start && t < end);
  return {
    start,
    end,
    pointAt: (t) => {
      const { x, y } = at(t, spanOf(spline, t));
      return { x, y };
    },
    tangentAt: (t) => {
      const { dx, dy } = at(t, spanOf(spline, t));
      return { x: dx, y: dy };
    },
    seams: inner,
    breaks: inner.filter((t) => isCorner(spline, at, t)),
    pieces: inner.length + 1,
  };
};

const isCorner = ({ degree, knots }: Spline, at: Evaluator, t: number): boolean => {
  const first = knots.indexOf(t);
  if (knots[first + degree - 1] !== t) return false;
  const before = at(t, first - 1);
  const after = at(t, knots.lastIndexOf(t));
  const turn = Math.atan2(before.dx * after.dy - before.dy * after.dx, before.dx * after.dx + before.dy * after.dy);
  return Math.abs(turn) > SMOOTH || !Number.isFinite(turn);
};

/** rad: a smaller turn between neighbouring pieces is rounding of their control points. */
const SMOOTH = 1e-6;

type Evaluator = (t: number, span: number) => Evaluated;

interface Evaluated extends Point {
  readonly dx: number;
  readonly dy: number;
}

/**
 * De Boor's corner cutting on homogeneous coordinates (x w, y w, w); the last but one stage also gives the derivative. The
 * working rows are made once for a spline, because arc fitting asks for thousands of points. Source: nurbs-book.
 */
const evaluator = ({ degree, points, weights, knots }: Spline): Evaluator => {
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
  return (t, span) => {
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
