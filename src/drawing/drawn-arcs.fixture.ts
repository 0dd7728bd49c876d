/** Arcs for hand-made drawings. */
import { FULL_TURN, sineCosineOfDegrees } from '../geometry/angle.ts';
import type { Arc } from '../geometry/segment.ts';

/** By centre, radius and angles in degrees; 0 to 360 is a full circle. */
export const arcOf = ([x, y]: readonly [number, number], radius: number, from: number, to: number): Arc => {
  const at = (degrees: number): { x: number; y: number } => {
    const { sine, cosine } = sineCosineOfDegrees(degrees);
    return { x: x + radius * cosine, y: y + radius * sine };
  };
  const full = Math.abs(to - from) === 360;
  return { kind: 'arc', from: at(from), to: full ? at(from) : at(to), centre: { x, y }, radius, sweep: ((to - from) / 360) * FULL_TURN };
};
