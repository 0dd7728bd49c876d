/** Angles in rad: sine and cosine that are exact on the quarter turns, and signed turns between directions. */
import { aroundAt, type NonEmpty } from '../sequence/sequence.ts';

export const FULL_TURN = 2 * Math.PI;
const QUARTER_TURN = Math.PI / 2;

export interface SineCosine {
  readonly sine: number;
  readonly cosine: number;
}

const QUARTERS: NonEmpty<SineCosine> = [
  { sine: 0, cosine: 1 },
  { sine: 1, cosine: 0 },
  { sine: 0, cosine: -1 },
  { sine: -1, cosine: 0 },
];

/** Sine and cosine of an angle in rad; exactly 0 or plus or minus 1 where the angle is a quarter turn to rounding. */
export const sineCosine = (angle: number): SineCosine => {
  const quarters = angle / QUARTER_TURN;
  const whole = Math.round(quarters);
  if (Math.abs(quarters - whole) <= 2.5e-16 * Math.max(1, Math.abs(whole))) return aroundAt(QUARTERS, whole);
  return { sine: Math.sin(angle), cosine: Math.cos(angle) };
};

/** The same for degrees, where quarter turns have no rounding at all. */
export const sineCosineOfDegrees = (degrees: number): SineCosine =>
  degrees % 90 === 0 ? aroundAt(QUARTERS, degrees / 90) : sineCosine((degrees * Math.PI) / 180);

/** Signed turn from direction u to direction v, in (-pi, pi], positive counter-clockwise. */
export const turnBetween = (ux: number, uy: number, vx: number, vy: number): number => Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);

/** Angle travelled from direction u to direction v in the given sense, in [0, 2 pi). */
export const travelled = (ux: number, uy: number, vx: number, vy: number, counterClockwise: boolean): number => {
  const turn = counterClockwise ? turnBetween(ux, uy, vx, vy) : turnBetween(vx, vy, ux, uy);
  return turn < 0 ? turn + FULL_TURN : turn;
};
