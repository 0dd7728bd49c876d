/** How a replay goes on: how far in how many seconds, and at which speeds. */
import { nextStep, standingAt, type Timeline } from './timeline.ts';

/** Minutes of the run in a second. */
export const SPEEDS = [0.1, 0.5, 1, 5, 15, 60] as const;

/** A run is over in about so many seconds at the speed it begins with. */
const LASTS = 60;

/** A stop or wait is passed over in no more than so many seconds: what is looked at is the cut. */
const STANDS = 0.7;

export const usualSpeed = ({ length }: Timeline): number =>
  SPEEDS.reduce((best, s) => (Math.abs(Math.log((s * LASTS) / length)) < Math.abs(Math.log((best * LASTS) / length)) ? s : best));

/** The moment so many seconds on; each stretch takes its own time. */
export const goneOn = (timeline: Timeline, moment: number, seconds: number, speed: number): number => {
  let [at, left] = [moment, seconds];
  while (left > 0 && at < timeline.length) {
    const here = standingAt(timeline, at);
    if (here === undefined) return timeline.length;
    const { from, to, moving } = here.stretch;
    const rate = moving ? speed : Math.max(speed, (to - from) / STANDS);
    const needed = (to - at) / rate;
    if (needed > left) return at + rate * left;
    left -= Math.max(0, needed);
    // The end of a stretch is the beginning of the next; one that lasts no time must not hold the replay up.
    at = here.next?.from ?? timeline.length;
  }
  return Math.min(at, timeline.length);
};

/** Where a replay goes on in steps, for whoever asked for less motion: one block in so many seconds. */
export const STEP_SECONDS = 0.5;
export const steppedOn = (timeline: Timeline, moment: number): number => nextStep(timeline, moment);
