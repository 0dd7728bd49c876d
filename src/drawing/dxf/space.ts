/** The little geometry in three dimensions that DXF needs: entities on tilted planes, and blocks placed on them. */
import { sineCosine } from '../../geometry/angle.ts';
import type { Curve } from '../curve/curve.ts';
import { isFullTurn } from '../curve/oval.ts';

export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** An affine map: the images of the three axes as columns `x`, `y`, `z`, and where the origin goes. */
export interface Placement {
  readonly x: Point3;
  readonly y: Point3;
  readonly z: Point3;
  readonly origin: Point3;
}

/** A curve in space. An oval runs centre + cos(t) u + sin(t) v from `start` to `end`, its ends given besides so that neighbours meet exactly. */
export type SpaceCurve =
  | { readonly kind: 'line'; readonly from: Point3; readonly to: Point3 }
  | {
      readonly kind: 'oval';
      readonly from: Point3;
      readonly to: Point3;
      readonly centre: Point3;
      readonly u: Point3;
      readonly v: Point3;
      readonly start: number;
      readonly end: number;
    }
  | {
      readonly kind: 'spline';
      readonly degree: number;
      readonly points: readonly Point3[];
      readonly weights: readonly number[];
      readonly knots: readonly number[];
    };

export const point3 = (x: number, y: number, z: number): Point3 => ({ x, y, z });

export const IN_PLACE: Placement = { x: point3(1, 0, 0), y: point3(0, 1, 0), z: point3(0, 0, 1), origin: point3(0, 0, 0) };

export const placed = (m: Placement, p: Point3): Point3 => point3Sum(turned(m, p), m.origin);

/** A direction has no origin. */
export const turned = (m: Placement, p: Point3): Point3 => ({
  x: m.x.x * p.x + m.y.x * p.y + m.z.x * p.z,
  y: m.x.y * p.x + m.y.y * p.y + m.z.y * p.z,
  z: m.x.z * p.x + m.y.z * p.y + m.z.z * p.z,
});

/** First `inner`, then `outer`. */
export const within = (outer: Placement, inner: Placement): Placement => ({
  x: turned(outer, inner.x),
  y: turned(outer, inner.y),
  z: turned(outer, inner.z),
  origin: placed(outer, inner.origin),
});

/**
 * The plane an entity was drawn on, from its extrusion direction alone (the 'arbitrary axis' rule of the DXF reference): x
 * lies square to the world's z axis, or to its y axis where the extrusion is within 1/64 of the z axis. None where the
 * extrusion has no length.
 */
export const planeOf = (extrusion: Point3): Placement | undefined => {
  const length = Math.hypot(extrusion.x, extrusion.y, extrusion.z);
  if (!(length > 0) || length === Number.POSITIVE_INFINITY) return undefined;
  const z = point3(extrusion.x / length, extrusion.y / length, extrusion.z / length);
  const nearZ = Math.abs(z.x) < 1 / 64 && Math.abs(z.y) < 1 / 64;
  const across = nearZ ? point3(z.z, 0, -z.x) : point3(-z.y, z.x, 0);
  const size = Math.hypot(across.x, across.y, across.z);
  const x = point3(across.x / size, across.y / size, across.z / size);
  return { x, y: crossProduct(z, x), z, origin: point3(0, 0, 0) };
};

/** A flat curve put into space at a height. */
export const lifted = (curve: Curve, z: number): SpaceCurve => {
  const up = (p: { readonly x: number; readonly y: number }): Point3 => point3(p.x, p.y, z);
  switch (curve.kind) {
    case 'line':
      return { kind: 'line', from: up(curve.from), to: up(curve.to) };
    case 'arc': {
      const u = point3(curve.from.x - curve.centre.x, curve.from.y - curve.centre.y, 0);
      const v = point3(-u.y, u.x, 0);
      return { kind: 'oval', from: up(curve.from), to: up(curve.to), centre: up(curve.centre), u, v, start: 0, end: curve.sweep };
    }
    case 'ellipse': {
      const { centre, major, minor, start, end } = curve;
      return ovalOf(up(centre), point3(major.x, major.y, 0), point3(minor.x, minor.y, 0), start, end);
    }
    case 'spline':
      return { ...curve, points: curve.points.map(up) };
  }
};

export const ovalOf = (centre: Point3, u: Point3, v: Point3, start: number, end: number): SpaceCurve => {
  const at = (t: number): Point3 => {
    const { sine, cosine } = sineCosine(t);
    return point3Sum(centre, point3Sum(times(u, cosine), times(v, sine)));
  };
  const from = at(start);
  return { kind: 'oval', from, to: isFullTurn(end - start) ? from : at(end), centre, u, v, start, end };
};

export const movedInSpace = (curve: SpaceCurve, m: Placement): SpaceCurve => {
  switch (curve.kind) {
    case 'line':
      return { kind: 'line', from: placed(m, curve.from), to: placed(m, curve.to) };
    case 'oval': {
      const [u, v] = [turned(m, curve.u), turned(m, curve.v)];
      return { ...curve, from: placed(m, curve.from), to: placed(m, curve.to), centre: placed(m, curve.centre), u, v };
    }
    case 'spline':
      return { ...curve, points: curve.points.map((p) => placed(m, p)) };
  }
};

const point3Sum = (a: Point3, b: Point3): Point3 => point3(a.x + b.x, a.y + b.y, a.z + b.z);
const times = (a: Point3, f: number): Point3 => point3(a.x * f, a.y * f, a.z * f);
const crossProduct = (a: Point3, b: Point3): Point3 => point3(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);
