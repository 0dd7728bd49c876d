/** Makes lines of arcs that are almost straight: their centres lie so far away that neither a control nor a parallel curve can use them. */

import { beside, chordCount, riseOf } from '../../geometry/flat-arc.ts';
import { type Arc, isFullCircle, type Line, line } from '../../geometry/segment.ts';

export interface Straightened {
  readonly lines: readonly Line[];
  /** mm: how far the arc lies from them at most. */
  readonly deviation: number;
  /** mm²: how much more the arc sweeps about any place than the lines do. */
  readonly excess: number;
}

/** Whether an arc is laid out as lines: where one line will do, or where its centre is further away than a program can say. */
export const isAlmostStraight = (arc: Arc, within: number): boolean =>
  !isFullCircle(arc) && Math.abs(arc.sweep) < HARDLY_BENT && (arc.radius > FARTHEST || (arc.radius > FAR && chordCount(arc, within) === 1));

/** @param within mm: how far the lines may lie from the arc */
export const straightened = (arc: Arc, within: number): Straightened => {
  const { from, to, radius, sweep } = arc;
  const parts = chordCount(arc, within);
  const lines: Line[] = [];
  let here = from;
  for (let k = 1; k <= parts; k += 1) {
    const next = k === parts ? to : beside(from, to, sweep, k / parts);
    lines.push(line(here, next));
    here = next;
  }
  return { lines, deviation: riseOf(arc) / parts ** 2, excess: (radius * radius * sweep ** 3) / 12 / parts ** 2 };
};

/** mm: at such a radius a line of 6 mm and more lies within half a micrometre. */
const FAR = 10_000;
/** mm: half of what a program may name as a coordinate. */
const FARTHEST = 50_000;
/** rad: the chords of an arc that bends more would not be found by its rise. */
const HARDLY_BENT = 0.02;
