/** What a curve must offer to be fitted with arcs, and its direction even where its derivative vanishes. */

import type { Point } from '../segment.ts';
import { distanceBetween } from '../segment.ts';

/** A curve over the parameters from `start` to `end`; `end` may be the lower one. All lengths in mm. */
export interface FitCurve {
  readonly start: number;
  readonly end: number;
  readonly pointAt: (t: number) => Point;
  /** The derivative or any positive multiple of it; may vanish at single parameters, and need not be finite there. */
  readonly tangentAt: (t: number) => Point;
  /** Parameters of corners, where the direction jumps; others are looked for. In any order. */
  readonly breaks?: readonly number[];
  /** How many polynomial pieces the curve is made of: it is looked over in proportion. 1 when not given. */
  readonly pieces?: number;
  /** The end is to be the very point of the start, which rounding may have moved apart. */
  readonly closed?: boolean;
}

export const isFinitePoint = (p: Point): boolean => Number.isFinite(p.x) && Number.isFinite(p.y);

/**
 * Unit direction of travel on one side of a parameter: 1 for the side towards the end, -1 for the side towards the start.
 * Where the derivative vanishes, the chord over a ten-thousandth of the curve stands in for it.
 */
export const directionAt = (curve: FitCurve, t: number, side: 1 | -1, speed: number): Point => {
  const way = curve.end < curve.start ? -1 : 1;
  const d = curve.tangentAt(t);
  const size = Math.hypot(d.x, d.y);
  if (size > speed * 1e-7 && Number.isFinite(size)) return { x: (way * d.x) / size, y: (way * d.y) / size };
  return chordDirection(curve, t, side, way);
};

const chordDirection = (curve: FitCurve, t: number, side: 1 | -1, way: number): Point => {
  const at = curve.pointAt(t);
  const range = Math.abs(curve.end - curve.start);
  for (let step = range * 1e-4; step <= range; step *= 4) {
    const there = curve.pointAt(withinRange(curve, t + side * way * step));
    const size = distanceBetween(at, there);
    if (size > 0 && Number.isFinite(size)) return { x: (side * (there.x - at.x)) / size, y: (side * (there.y - at.y)) / size };
  }
  return { x: 1, y: 0 };
};

const withinRange = (curve: FitCurve, t: number): number =>
  Math.min(Math.max(t, Math.min(curve.start, curve.end)), Math.max(curve.start, curve.end));
