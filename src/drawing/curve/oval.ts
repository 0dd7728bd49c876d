/** What becomes of a circle or an ellipse that was moved, turned, stretched or skewed: an arc if still round, an ellipse if not. */
import { arc, type Point } from '../../geometry/segment.ts';
import type { Curve } from './curve.ts';

/** centre + cos(t) u + sin(t) v for t from `start` to `end`; its ends are given besides so that neighbours meet exactly. */
export interface Oval {
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly u: Point;
  readonly v: Point;
  readonly start: number;
  readonly end: number;
}

/**
 * Files print a full turn with anything from six digits on (6.283185 is 3e-7 short, 6.28318531 a little too much), so that a
 * gap of a millionth of a radian is taken for none.
 */
export const isFullTurn = (sweep: number): boolean => Math.abs(Math.abs(sweep) - 2 * Math.PI) < 1e-6;

/** 'edge on' where the two half axes fall into one line and nothing round is left. */
export const ovalCurve = ({ from, to, centre, u, v, start, end }: Oval): Curve | 'edge on' => {
  const [lengthU, lengthV] = [Math.hypot(u.x, u.y), Math.hypot(v.x, v.y)];
  const area = u.x * v.y - u.y * v.x;
  const size = Math.max(lengthU, lengthV);
  if (!(Math.abs(area) > 1e-9 * size * size)) return 'edge on';
  const round = Math.abs(lengthU - lengthV) <= ROUND * size && Math.abs(u.x * v.x + u.y * v.y) <= ROUND * size * size;
  if (!round) return { kind: 'ellipse', centre, major: u, minor: v, start, end };
  const sweep = Math.sign(area) * (end - start);
  return isFullTurn(sweep) ? arc(from, from, centre, Math.sign(sweep) * 2 * Math.PI) : arc(from, to, centre, sweep);
};

/** Half axes closer than this share of their length make a circle: 0.01 nm on a radius of 100 mm is noise of the file. */
const ROUND = 1e-10;
