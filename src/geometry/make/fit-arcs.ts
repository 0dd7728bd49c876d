/**
 * Any smooth curve as lines and arcs within a tolerance. The curve is cut at its corners and where its bend is greatest or
 * changes side; from each cut the longest biarc that stays within the tolerance is taken, then the next from its end. The
 * arcs meet tangentially wherever the curve has a direction.
 */

import { lastOf, type NonEmpty, neighbours } from '../../sequence/sequence.ts';
import { heightOverChord } from '../bulge.ts';
import { path } from '../contour.ts';
import { distanceToSegment, lengthOf } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';
import { distanceBetween, samePoint } from '../segment.ts';
import { simplify } from '../simplify.ts';
import { biarc } from './biarc.ts';
import type { CurveBreak } from './fit-breaks.ts';
import { breaksOf } from './fit-breaks.ts';
import type { FitCurve } from './fit-curve.ts';
import { directionAt } from './fit-curve.ts';

export type { FitCurve } from './fit-curve.ts';

/**
 * `fitted`: `deviation` is the greatest distance in mm from at least 47 sampled places per span to the segments, at most the
 * tolerance. `no extent`: the whole curve is one point. `not finite`: the curve gave a place that is no number, near
 * `parameter`. `jumps`: it is not in one piece there. `too many`: more segments would be needed than allowed.
 */
export type Fitted =
  | { readonly kind: 'fitted'; readonly segments: readonly Segment[]; readonly deviation: number }
  | { readonly kind: 'no extent' }
  | { readonly kind: 'not finite'; readonly parameter: number }
  | { readonly kind: 'jumps'; readonly parameter: number }
  | { readonly kind: 'too many'; readonly limit: number };

/**
 * Fits lines and arcs to a curve. The first segment starts at the curve's start exactly and the last ends at its end.
 *
 * @param tolerance mm, the greatest distance from the curve to the segments.
 * @param limit how many segments at most; the work is bounded by about a thousand evaluations for each of them.
 */
export const fitArcs = (curve: FitCurve, tolerance: number, limit = 10_000): Fitted => {
  if (!(tolerance > 0)) throw new RangeError(`a curve is fitted within a tolerance above 0 mm, not ${tolerance}`);
  const breaks = breaksOf(curve);
  if (breaks.kind !== 'broken') return breaks;
  const task: Task = { curve, speed: breaks.speed, tolerance: tolerance * BETWEEN_SAMPLES, start: curve.pointAt(curve.start) };
  const segments: Segment[] = [];
  let deviation = 0;
  for (const [start, end] of neighbours(breaks.at)) {
    const piece = fitPiece(task, start, end, limit - segments.length);
    if (piece.kind !== 'fitted') return piece.kind === 'too many' ? { kind: 'too many', limit } : piece;
    segments.push(...piece.segments);
    deviation = Math.max(deviation, piece.deviation);
  }
  if (segments.length === 0) return { kind: 'no extent' };
  // What is one circle or one line comes out as one segment, which costs a thousandth of the tolerance at most.
  const merged = simplify(path(segments), tolerance * MERGING).segments.map((s) => (isFlat(s, tolerance * MERGING) ? chordOf(s) : s));
  const exact = merged.length === segments.length && merged.every((s, i) => s === segments[i]);
  return { kind: 'fitted', segments: merged, deviation: deviation + (exact ? 0 : 2 * MERGING * tolerance) };
};

/** Rounding of so large a circle shows in the ends of the arc, and its chord cannot be told from it. */
const isFlat = (s: Segment, within: number): boolean => s.kind === 'arc' && Math.abs(s.sweep) < FLAT && heightOverChord(s) <= within;

const chordOf = (s: Segment): Segment => ({ kind: 'line', from: s.from, to: s.to });

/** Rad: the kink that a line makes in place of such an arc is half of it at either end. */
const FLAT = 4e-7;

/** Samples may miss the top of a deviation by one or two in a hundred, four at worst seen; that much of the tolerance is kept back. */
const BETWEEN_SAMPLES = 0.96;
const MERGING = 0.001;

interface Task {
  readonly curve: FitCurve;
  /** Greatest size of the derivative, against which it vanishes. */
  readonly speed: number;
  readonly tolerance: number;
  readonly start: Point;
}

/** A place on the curve with the direction that belongs to the span on one side of it. */
interface Station {
  readonly t: number;
  readonly at: Point;
  readonly direction: Point;
}

interface Span {
  readonly segments: readonly Segment[];
  readonly deviation: number;
  readonly end: Station;
}

const fitPiece = (task: Task, start: CurveBreak, end: CurveBreak, limit: number): Fitted => {
  const segments: Segment[] = [];
  let deviation = 0;
  let here = stationAt(task, start.t, 1, start.corner);
  const last = stationAt(task, end.t, -1, end.corner);
  let step = (end.t - start.t) / Math.max(2, task.curve.pieces ?? 1);
  while (here.t !== last.t) {
    if (segments.length >= limit) return { kind: 'too many', limit };
    const span = longestSpan(task, here, last, step);
    if (Number.isNaN(span.deviation)) return { kind: 'not finite', parameter: here.t };
    if (span.deviation > task.tolerance) return { kind: 'jumps', parameter: here.t };
    step = span.end.t - here.t;
    segments.push(...span.segments);
    deviation = Math.max(deviation, span.deviation);
    here = span.end.t === last.t ? last : stationAt(task, span.end.t, 1);
  }
  return { kind: 'fitted', segments, deviation };
};

/** At a corner the direction is taken a billionth of the curve inside the span: on the corner itself it could be either. */
const stationAt = ({ curve, speed, start }: Task, t: number, side: 1 | -1, corner = false): Station => ({
  t,
  at: curve.closed && t === curve.end ? start : curve.pointAt(t),
  direction: directionAt(curve, corner ? t + side * 1e-9 * (curve.end - curve.start) : t, side, speed),
});

const TRIES = 100;

/**
 * The span from `here` that goes as far as the tolerance lets it: doubled while it fits, halved until it does, then closed
 * in on. A span no longer than a part of the tolerance always fits, so only a curve that jumps or is no number fails.
 */
const longestSpan = (task: Task, here: Station, last: Station, guess: number): Span => {
  const whole = last.t - here.t;
  let step = shorter(guess, whole);
  let good: Span | undefined;
  let failed: Span | undefined;
  let span = spanTo(task, here, stationTo(task, here, last, step));
  for (let tries = 1; tries < TRIES; tries += 1) {
    if (span.deviation <= task.tolerance) good = span;
    else failed = span;
    if (good?.end.t === last.t) return good;
    if (good === undefined) {
      if (here.t + step / 2 === here.t) return span;
      step /= 2;
    } else {
      const reached = good.end.t - here.t;
      if (failed !== undefined && Math.abs((failed.end.t - here.t) / reached) < CLOSE) break;
      step = failed === undefined ? shorter(2 * reached, whole) : (reached + failed.end.t - here.t) / 2;
    }
    span = spanTo(task, here, stationTo(task, here, last, step));
  }
  return evenedOut(task, here, last, good ?? span);
};

/** The longest span is not looked for more closely than this ratio: four per cent of a span is not worth a try. */
const CLOSE = 1.04;

const shorter = (a: number, b: number): number => (Math.abs(a) < Math.abs(b) ? a : b);

const stationTo = (task: Task, here: Station, last: Station, step: number): Station =>
  Math.abs(step) >= Math.abs(last.t - here.t) ? last : stationAt(task, here.t + step, -1);

/** A short rest after the longest span is shared between the two: they come out alike, and no sliver is left. */
const evenedOut = (task: Task, here: Station, last: Station, good: Span): Span => {
  const whole = last.t - here.t;
  if (Math.abs(whole) > 2 * Math.abs(good.end.t - here.t)) return good;
  const half = spanTo(task, here, stationTo(task, here, last, whole / 2));
  return half.deviation <= task.tolerance ? half : good;
};

/** Directions this close to the chord, rad, make a line of a span without a kink that anybody could see or measure. */
const IN_LINE = 1e-7;

/** Places are taken at the golden section's multiples, so that no wave of the curve can hide between even steps. */
const SHARES = Array.from({ length: 47 }, (_, i) => ((i + 1) * 0.618_033_988_749_895) % 1);

/** The best that can be done from one station to the other: a line, else a biarc; infinitely far off when there is neither. */
const spanTo = ({ curve, tolerance }: Task, here: Station, end: Station): Span => {
  const size = distanceBetween(here.at, end.at);
  const place = (share: number): Point => curve.pointAt(here.t + (end.t - here.t) * share);
  if (size <= tolerance / 8) {
    const reach = SHARES.reduce((most, share) => Math.max(most, distanceBetween(place(share), here.at)), size);
    if (reach <= tolerance / 2) return { segments: samePoint(here.at, end.at) ? [] : [lineTo(here, end)], deviation: reach, end };
  }
  if (isInLine(here, end, size)) {
    const straight = deviationOf([lineTo(here, end)], place, tolerance);
    if (straight <= tolerance) return { segments: [lineTo(here, end)], deviation: straight, end };
  }
  const pair = biarc(here.at, here.direction, end.at, end.direction);
  if (pair.kind === 'too curved') return { segments: [], deviation: Number.isFinite(size) ? Infinity : Number.NaN, end };
  return { segments: pair.segments, deviation: deviationOf(pair.segments, place, tolerance), end };
};

const lineTo = (here: Station, end: Station): Segment => ({ kind: 'line', from: here.at, to: end.at });

const isInLine = (here: Station, end: Station, size: number): boolean => {
  const x = (end.at.x - here.at.x) / size;
  const y = (end.at.y - here.at.y) / size;
  return [here, end].every((s) => Math.abs(x * s.direction.y - y * s.direction.x) < IN_LINE && x * s.direction.x + y * s.direction.y > 0);
};

/**
 * Greatest distance of the sampled places from the segments; infinite as soon as one is beyond the tolerance. Where a curve
 * is fast, places come far apart: more are taken there, and what stays apart all the same is taken for a jump.
 */
const deviationOf = (segments: NonEmpty<Segment>, place: (share: number) => Point, tolerance: number): number => {
  const length = segments.reduce((sum, s) => sum + lengthOf(s), 0);
  let most = 0;
  const look = (share: number): Point => {
    const p = place(share);
    let least = Infinity;
    for (const s of segments) least = Math.min(least, distanceToSegment(s, p));
    most = least <= tolerance ? Math.max(most, least) : Number.isNaN(least) ? Number.NaN : Infinity;
    return p;
  };
  const inner: Stop[] = [];
  for (const share of SHARES) {
    inner.push({ share, at: look(share) });
    if (!(most <= tolerance)) return most;
  }
  inner.sort((a, b) => a.share - b.share);
  const stops = [{ share: 0, at: segments[0].from }, ...inner, { share: 1, at: lastOf(segments).to }];
  const gap = Math.max(length / SPARSE, tolerance / 8);
  const isDense = neighbours(stops).every(([from, to]) => fill(from, to, gap, look, HALVINGS));
  return isDense || !(most <= tolerance) ? most : Infinity;
};

/** Places are at most this part of the span apart, reached by halving the parameter this many times at most. */
const SPARSE = 24;
const HALVINGS = 8;

interface Stop {
  readonly share: number;
  readonly at: Point;
}

/** Looks at places between two stops until they are near enough to each other; false when halving does not get there. */
const fill = (from: Stop, to: Stop, gap: number, look: (share: number) => Point, halvings: number): boolean => {
  if (!(distanceBetween(from.at, to.at) > gap)) return true;
  if (halvings === 0) return false;
  const share = (from.share + to.share) / 2;
  const middle = { share, at: look(share) };
  return fill(from, middle, gap, look, halvings - 1) && fill(middle, to, gap, look, halvings - 1);
};
