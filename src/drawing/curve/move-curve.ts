/** Moves flat curves by any affine map: what stays a circle stays an arc, what does not becomes an ellipse. */
import { line, type Point } from '../../geometry/segment.ts';
import type { Curve } from './curve.ts';
import { ovalCurve } from './oval.ts';

/** x' = a x + c y + e, y' = b x + d y + f: the six numbers in the order in which SVG writes them. */
export interface Matrix {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const UNMOVED: Matrix = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** First `inner`, then `outer`. */
export const composed = (outer: Matrix, inner: Matrix): Matrix => ({
  a: outer.a * inner.a + outer.c * inner.b,
  b: outer.b * inner.a + outer.d * inner.b,
  c: outer.a * inner.c + outer.c * inner.d,
  d: outer.b * inner.c + outer.d * inner.d,
  e: outer.a * inner.e + outer.c * inner.f + outer.e,
  f: outer.b * inner.e + outer.d * inner.f + outer.f,
});

export const movedPoint = (m: Matrix, p: Point): Point => ({ x: m.a * p.x + m.c * p.y + m.e, y: m.b * p.x + m.d * p.y + m.f });

const turned = (m: Matrix, p: Point): Point => ({ x: m.a * p.x + m.c * p.y, y: m.b * p.x + m.d * p.y });

/** 'edge on' where the map leaves no area and the curve would be a line run there and back. */
export const movedCurve = (m: Matrix, curve: Curve): Curve | 'edge on' => {
  switch (curve.kind) {
    case 'line':
      return line(movedPoint(m, curve.from), movedPoint(m, curve.to));
    case 'arc': {
      const [from, to, centre] = [movedPoint(m, curve.from), movedPoint(m, curve.to), movedPoint(m, curve.centre)];
      const spoke = { x: curve.from.x - curve.centre.x, y: curve.from.y - curve.centre.y };
      const [u, v] = [turned(m, spoke), turned(m, { x: -spoke.y, y: spoke.x })];
      return ovalCurve({ from, to, centre, u, v, start: 0, end: curve.sweep });
    }
    case 'ellipse': {
      const { start, end } = curve;
      const [centre, u, v] = [movedPoint(m, curve.centre), turned(m, curve.major), turned(m, curve.minor)];
      return ovalCurve({ from: onOval(centre, u, v, start), to: onOval(centre, u, v, end), centre, u, v, start, end });
    }
    case 'spline':
      return { ...curve, points: curve.points.map((p) => movedPoint(m, p)) };
  }
};

const onOval = (centre: Point, u: Point, v: Point, t: number): Point => ({
  x: centre.x + Math.cos(t) * u.x + Math.sin(t) * v.x,
  y: centre.y + Math.cos(t) * u.y + Math.sin(t) * v.y,
});
