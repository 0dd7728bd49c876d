/** The cut faces of several processes side by side: the height to scale, everything sideways larger by one factor, the same for all. */

import { roundBelow } from '../../picture/round-length.ts';
import type { FaceView } from '../work/views.ts';

/** How many times larger sideways, so that nothing strays by more than `most` px; `scale` is px in a mm of height. */
export const sidewaysFactor = (faces: readonly FaceView[], scale: number, most: number): number => {
  const widest = Math.max(...faces.map((f) => f.off + f.rough), 1e-6);
  return Math.max(1, roundBelow(most / (widest * scale)));
};

const STEPS = 120;

export interface FacePoint {
  /** Share of the height, from the upper edge. */
  readonly down: number;
  /** mm off the straight. */
  readonly off: number;
}

/** A face from its upper to its lower edge, with a waviness as high as its roughness. */
export const faceLine = ({ off, shape, rough, tires }: FaceView): readonly FacePoint[] =>
  Array.from({ length: STEPS + 1 }, (_, i) => {
    const down = i / STEPS;
    const form = shape === 'barrel' ? off * 4 * down * (1 - down) : off * down;
    // What tires is smoother at its upper edge: how much is invented, the roughness at its lower edge is not.
    return { down, off: form + rough * (tires ? 0.4 + 0.6 * down : 1) * (ripple(i) - 0.5) };
  });

/** The same every time: two tones that never fall in step, 0 to 1. */
const ripple = (i: number): number => 0.5 + 0.3 * Math.sin(i * 2.4) + 0.2 * Math.sin(i * 1.07 + 1);
