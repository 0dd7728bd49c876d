/** Looks at a curve in space from above: what the XY plane sees of it, as a flat curve. */
import { type Arc, arc, line, type Point } from '../../geometry/segment.ts';
import type { Curve } from '../curve.ts';
import { isFullTurn, type Point3, type SpaceCurve } from './space.ts';

/** `level`: flat and at height 0. `raised`: flat at another height. `tilted`: not parallel to the XY plane. */
export type Lie = 'level' | 'raised' | 'tilted';

/** Heights are compared with this, in drawing units: far below what any wire can tell, above what rounding leaves. */
const LEVEL = 1e-6;

export const lieOf = (curve: SpaceCurve): Lie => {
  const heights = heightsOf(curve);
  let [low, high] = [heights[0]!, heights[0]!];
  for (const z of heights) {
    if (z < low) low = z;
    if (z > high) high = z;
  }
  if (high - low > LEVEL) return 'tilted';
  return Math.abs(high) > LEVEL ? 'raised' : 'level';
};

const heightsOf = (curve: SpaceCurve): readonly number[] => {
  switch (curve.kind) {
    case 'line':
      return [curve.from.z, curve.to.z];
    case 'oval':
      return [curve.centre.z, curve.centre.z + curve.u.z, curve.centre.z + curve.v.z];
    case 'spline':
      return curve.points.map((p) => p.z);
  }
};

/** The curve as seen along the z axis; 'edge on' where an oval is seen as a mere line. */
export const flattened = (curve: SpaceCurve): Curve | 'edge on' => {
  switch (curve.kind) {
    case 'line':
      return line(flat(curve.from), flat(curve.to));
    case 'oval':
      return flattenedOval(curve);
    case 'spline':
      return { ...curve, points: curve.points.map(flat) };
  }
};

/** An oval is a circular arc where its two half axes are equally long and square to each other, and an ellipse otherwise. */
const flattenedOval = (oval: SpaceCurve & { readonly kind: 'oval' }): Curve | 'edge on' => {
  const { u, v, start, end } = oval;
  const [lengthU, lengthV] = [Math.hypot(u.x, u.y), Math.hypot(v.x, v.y)];
  const area = u.x * v.y - u.y * v.x;
  const size = Math.max(lengthU, lengthV);
  if (!(Math.abs(area) > 1e-9 * size * size)) return 'edge on';
  const round = Math.abs(lengthU - lengthV) <= ROUND * size && Math.abs(u.x * v.x + u.y * v.y) <= ROUND * size * size;
  if (round) return roundArc(oval, Math.sign(area) * (end - start));
  return { kind: 'ellipse', centre: flat(oval.centre), major: flat(u), minor: flat(v), start, end };
};

const roundArc = (oval: SpaceCurve & { readonly kind: 'oval' }, sweep: number): Arc => {
  const from = flat(oval.from);
  return arc(from, isFullTurn(sweep) ? from : flat(oval.to), flat(oval.centre), isFullTurn(sweep) ? Math.sign(sweep) * 2 * Math.PI : sweep);
};

/** Half axes closer than this share of their length make a circle: 0.1 nm on a radius of 100 mm is noise of the file. */
const ROUND = 1e-10;

const flat = (p: Point3): Point => ({ x: p.x, y: p.y });
