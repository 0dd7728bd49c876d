/** The area that the ray from a fixed point to a curve sweeps, to far more digits than any fit of the curve leaves. */

import type { Point } from '../../geometry/segment.ts';
import { neighbours } from '../../sequence/sequence.ts';
import type { ParametricCurve } from './parametric.ts';

const CHORDS = 24;

/**
 * In mm², positive counter-clockwise. By chords between the seams of the curve, at two finenesses: the error of chords falls
 * with the square of their number, so that four thirds of the finer less one third of the coarser is good to its fourth power
 * (Richardson's extrapolation).
 */
export const sweptArea = (curve: ParametricCurve, origin: Point): number => {
  const stops = [curve.start, ...curve.seams, curve.end];
  // A whole ellipse has no seams and is long: every stretch gets at least its share of four hundred chords.
  const chords = Math.max(CHORDS, Math.ceil(400 / (stops.length - 1)));
  let area = 0;
  for (const [low, high] of neighbours(stops)) {
    area += (4 * byChords(curve, origin, low, high, 2 * chords) - byChords(curve, origin, low, high, chords)) / 3;
  }
  return area;
};

const byChords = (curve: ParametricCurve, origin: Point, low: number, high: number, chords: number): number => {
  let twice = 0;
  let from = curve.pointAt(low);
  for (let i = 1; i <= chords; i += 1) {
    const to = curve.pointAt(i === chords ? high : low + ((high - low) * i) / chords);
    twice += (from.x - origin.x) * (to.y - origin.y) - (from.y - origin.y) * (to.x - origin.x);
    from = to;
  }
  return twice / 2;
};
