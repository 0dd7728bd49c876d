/** Looks at a curve in space from above: what the XY plane sees of it, as a flat curve. */

import { line, type Point } from '../../geometry/segment.ts';
import { firstItem } from '../../sequence/sequence.ts';
import type { Curve } from '../curve/curve.ts';
import { ovalCurve } from '../curve/oval.ts';
import type { Point3, SpaceCurve } from './space.ts';

/** `level`: flat and at height 0. `raised`: flat at another height. `tilted`: not parallel to the XY plane. */
export type Lie = 'level' | 'raised' | 'tilted';

/** Heights are compared with this, in drawing units: far below what any wire can tell, above what rounding leaves. */
const LEVEL = 1e-6;

export const lieOf = (curve: SpaceCurve): Lie => {
  const heights = heightsOf(curve);
  let [low, high] = [firstItem(heights), firstItem(heights)];
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
      return ovalCurve({
        from: flat(curve.from),
        to: flat(curve.to),
        centre: flat(curve.centre),
        u: flat(curve.u),
        v: flat(curve.v),
        start: curve.start,
        end: curve.end,
      });
    case 'spline':
      return { ...curve, points: curve.points.map(flat) };
  }
};

const flat = (p: Point3): Point => ({ x: p.x, y: p.y });
