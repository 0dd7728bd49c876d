/** Two arcs through two places with given directions, meeting tangentially between them. */
import { arcFromTangent } from '../bulge.ts';
import { reverse } from '../cut.ts';
import type { Point, Segment } from '../segment.ts';

export type Biarc = { readonly kind: 'biarc'; readonly segments: readonly [Segment, Segment] } | { readonly kind: 'too curved' };

/**
 * The biarc whose two arcs have tangent legs of equal length, from `p` along the unit vector `u` to `q` along `v`.
 *
 * The joint lies midway between p + d u and q - d v, d chosen so that these two are 2 d apart:
 * d = w² / (w·(u+v) + sqrt((w·(u+v))² + |u-v|² w²)) with w = q - p, a form that loses no digits where u is nearly v.
 * `too curved` where the directions point away from each other so far that an arc would run round the back.
 */
export const biarc = (p: Point, u: Point, q: Point, v: Point): Biarc => {
  const wx = q.x - p.x;
  const wy = q.y - p.y;
  const square = wx * wx + wy * wy;
  const ahead = wx * (u.x + v.x) + wy * (u.y + v.y);
  const spread = (u.x - v.x) * (u.x - v.x) + (u.y - v.y) * (u.y - v.y);
  const facing = wx * u.x + wy * u.y > 0 && wx * v.x + wy * v.y > 0;
  if (!(square > 0) || !facing) return { kind: 'too curved' };
  const leg = square / (ahead + Math.sqrt(ahead * ahead + spread * square));
  const joint = { x: (p.x + q.x + leg * (u.x - v.x)) / 2, y: (p.y + q.y + leg * (u.y - v.y)) / 2 };
  if ((joint.x === p.x && joint.y === p.y) || (joint.x === q.x && joint.y === q.y)) return { kind: 'too curved' };
  const first = arcFromTangent(p, u, joint);
  const second = reverse(arcFromTangent(q, { x: -v.x, y: -v.y }, joint));
  return { kind: 'biarc', segments: [first, second] };
};
