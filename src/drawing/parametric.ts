/** A curve as arc fitting wants it: a point and a direction for every parameter. */
import type { Point } from '../geometry/segment.ts';

export interface ParametricCurve {
  readonly start: number;
  readonly end: number;
  readonly pointAt: (t: number) => Point;
  /** Unit vector in the direction of growing t; at a corner the one after it, at the end the one before it. */
  readonly tangentAt: (t: number) => Point;
  /** Parameters between start and end where the curve may bend sharply, rising. */
  readonly breaks: readonly number[];
}

export const unit = (x: number, y: number): Point => {
  const length = Math.hypot(x, y);
  return length > 0 ? { x: x / length, y: y / length } : { x: 0, y: 0 };
};
