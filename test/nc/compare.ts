/** Holds what was read against what was planned, in last digits. */
import { distanceToSegment, lengthOf, pointAt } from '../../src/geometry/measure.ts';
import type { Point, Segment } from '../../src/geometry/segment.ts';
import type { Dialect } from '../../src/nc/dialect/dialect.ts';
import type { Action } from '../../src/nc/read/program.ts';
import { there } from '../there.ts';
import type { Lap } from './plans.ts';

export type ReadMove = Extract<Action, { kind: 'move' }>;

/** One last digit in mm. */
export const digitOf = (dialect: Dialect): number => 10 ** -dialect.decimals * (dialect.units === 'inch' ? 25.4 : 1);

/** The cuts of a program lap by lap: a lap ends where the wire is back at the place from which it set out. */
export const lapsRead = (moves: readonly ReadMove[], laps: readonly Lap[], digit: number): readonly (readonly ReadMove[])[] => {
  const cuts = moves.filter((move) => !move.rapid);
  const found: ReadMove[][] = [];
  for (const move of cuts) {
    const last = found.at(-1);
    const lap = laps[found.length - 1];
    const home =
      lap !== undefined &&
      last !== undefined &&
      last.length > 1 &&
      apart(there(last.at(-1)).centre.to, there(lap.centre[0]).from) <= 0.51 * digit;
    if (last === undefined || home) found.push([move]);
    else last.push(move);
  }
  return found;
};

/** Moves below this many last digits may be run through by the writer. */
const SHORT = 8;

/**
 * Greatest distance by which ends of planned segments, each rounded by at most half a last digit in x and in y, are missing
 * from the ends of the read ones, taken in order; infinite when one has no counterpart.
 */
export const endsApart = (planned: readonly Segment[], read: readonly Segment[], digit: number): number => {
  let worst = 0;
  let next = 0;
  for (const segment of planned) {
    if (lengthOf(segment) < SHORT * digit) continue;
    while (next < read.length && apart(there(read[next]).to, segment.to) > 0.51 * digit) next += 1;
    if (next === read.length) return Number.POSITIVE_INFINITY;
    worst = Math.max(worst, apart(there(read[next]).to, segment.to));
  }
  return worst / digit;
};

const apart = (a: Point, b: Point): number => Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y));

/** Greatest distance, in last digits, from places along one path to the other, and the other way round. */
export const pathsApart = (a: readonly Segment[], b: readonly Segment[], digit: number): number =>
  Math.max(strays(a, b), strays(b, a)) / digit;

const shares = [0, 0.31, 0.5, 0.77, 1];

const strays = (from: readonly Segment[], to: readonly Segment[]): number => {
  let worst = 0;
  for (const [index, segment] of from.entries()) {
    for (const share of shares) {
      const place = pointAt(segment, share);
      // The counterpart is near the same place of the list; the whole list is searched only when it is not.
      let least = Number.POSITIVE_INFINITY;
      const low = Math.max(0, index - 3);
      for (let k = low; k < Math.min(to.length, index + 4) && least > 0; k += 1)
        least = Math.min(least, distanceToSegment(there(to[k]), place));
      if (least > worst) for (const segmentTo of to) least = Math.min(least, distanceToSegment(segmentTo, place));
      worst = Math.max(worst, least);
    }
  }
  return worst;
};

/** Every arc agrees with its own numbers, and every centre move begins where the one before ended. */
export const unsound = (moves: readonly ReadMove[]): readonly string[] => {
  const found: string[] = [];
  for (const [index, move] of moves.entries()) {
    for (const segment of [move.programmed, move.centre]) {
      if (segment.kind === 'arc') {
        const start = Math.hypot(segment.from.x - segment.centre.x, segment.from.y - segment.centre.y);
        const end = Math.hypot(segment.to.x - segment.centre.x, segment.to.y - segment.centre.y);
        if (Math.max(Math.abs(start - segment.radius), Math.abs(end - segment.radius)) > 1e-9 * (1 + segment.radius))
          found.push(`block ${move.block}: radius`);
        const to = pointAt({ ...segment, sweep: segment.sweep }, 1 - 1e-12);
        if (Math.hypot(to.x - segment.to.x, to.y - segment.to.y) > 1e-8 * (1 + segment.radius)) found.push(`block ${move.block}: sweep`);
      }
    }
    const before = moves[index - 1];
    if (before !== undefined && (before.centre.to.x !== move.centre.from.x || before.centre.to.y !== move.centre.from.y)) {
      if (Math.hypot(before.centre.to.x - move.centre.from.x, before.centre.to.y - move.centre.from.y) > 1e-9)
        found.push(`block ${move.block}: not joined`);
    }
  }
  return found;
};
