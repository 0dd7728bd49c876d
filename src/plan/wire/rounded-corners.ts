/** Inside corners that the wire rounds: found by holding the opened contour against the wanted one. */

import { turnBetween } from '../../geometry/angle.ts';
import type { Contour } from '../../geometry/contour.ts';
import { endDirection, pointAt, startDirection } from '../../geometry/measure.ts';
import { distanceIn, type Lookup, lookupOf, nearestIn } from '../../geometry/near/lookup.ts';
import type { Arc, Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { Kept } from '../plan.ts';
import { type Nook, nookOf } from './nook.ts';

/** One place where what comes out is rounder than the drawing. */
export interface RoundedCorner {
  readonly at: Point;
  /** Smallest radius drawn there, 0 for a sharp corner. */
  readonly wanted: number;
  readonly radius: number;
  /** Metal left there, measured from the corner to the arc. */
  readonly left: number;
  /** More than one corner: a nook, slit or bay that the wire cannot enter at all, a step or a nick among them. */
  readonly nook?: Nook | undefined;
}

/** Turns smaller than this (rad) are the noise of fitted curves and no corners. */
const NOISE = 0.02;

/**
 * @param opened the wanted contour opened by `radius`; both counter-clockwise.
 */
export const roundedCorners = (wanted: Contour, opened: Contour, radius: number, kept: Kept): readonly RoundedCorner[] => {
  const sense = kept === 'die' ? 1 : -1;
  const fillets = opened.segments.map((s) => isFillet(s, radius, sense));
  if (!fillets.includes(true)) return [];
  const [lookup, comesOut] = [lookupOf(wanted), lookupOf(opened)];
  const home = opened.segments.map((s, i) => (fillets[i] ? -1 : nearestIn(lookup, pointAt(s, 0.5)).segment));
  const corners: RoundedCorner[] = [];
  opened.segments.forEach((segment, i) => {
    if (!fillets[i]) return;
    const before = neighbour(home, i, -1);
    const after = neighbour(home, i, 1);
    if (before === undefined || after === undefined) return;
    const corner = cornerOf(wanted, { before, after }, segment as Arc, sense, comesOut);
    if (corner !== undefined) corners.push(corner);
  });
  return corners;
};

const isFillet = (segment: Segment, radius: number, sense: number): boolean =>
  segment.kind === 'arc' && Math.sign(segment.sweep) === sense && Math.abs(segment.radius - radius) < 1e-6;

/** Wanted segment on which the next opened segment lies that is no fillet. */
const neighbour = (home: readonly number[], i: number, step: 1 | -1): number | undefined => {
  for (let n = 1; n < home.length; n += 1) {
    const h = itemAt(home, (i + step * n + home.length * n) % home.length);
    if (h >= 0) return h;
  }
  return undefined;
};

interface CornerRun {
  readonly before: number;
  readonly after: number;
}

/** What of the wanted contour lies between two of its segments, against the fillet that stands there instead. */
const cornerOf = (
  wanted: Contour,
  { before, after }: CornerRun,
  fillet: Arc,
  sense: number,
  comesOut: Lookup,
): RoundedCorner | undefined => {
  const count = wanted.segments.length;
  const steps = (after - before + count) % count || count;
  let at: Point | undefined;
  let left = -1;
  let sharpest = Infinity;
  let away = 0;
  const seen = (p: Point): void => {
    const beyond = distanceBetween(p, fillet.centre) - fillet.radius;
    if (beyond > left) [left, at] = [beyond, p];
  };
  for (let n = 0; n < steps; n += 1) {
    const here = itemAt(wanted.segments, (before + n) % count);
    const next = itemAt(wanted.segments, (before + n + 1) % count);
    const turn = turnOf(here, next) * sense;
    seen(here.to);
    if (turn > NOISE) sharpest = 0;
    if (turn < -NOISE) away -= turn;
    if (n === 0 || here.kind === 'line') continue;
    seen(pointAt(here, 0.5));
    if (here.sweep * sense > 0) sharpest = Math.min(sharpest, here.radius);
    else if (-here.sweep * sense > NOISE) away -= here.sweep * sense;
  }
  if (at === undefined || sharpest >= fillet.radius) return undefined;
  // Beside a sharp corner a wall may well bend away a little: that alone is no nook, as long as no more is left than a corner leaves.
  const plain = fillet.radius * (1 / Math.cos(Math.min(Math.abs(fillet.sweep), HARDLY_OPEN) / 2) - 1);
  const swallowed = away > BENT_AWAY || (away > 0 && left > 1.5 * plain + 0.005);
  if (!swallowed) return { at, wanted: sharpest, radius: fillet.radius, left: Math.max(0, left) };
  // Another fillet may stand in the same nook: what is left is measured to all that comes out.
  const run = Array.from({ length: steps + 1 }, (_, n) => itemAt(wanted.segments, (before + n) % count));
  const nook = nookOf(run, sense, (p) => distanceIn(comesOut, p));
  const deepest = nook.places.reduce((a, b) => (b.left > a.left ? b : a));
  return { at: deepest.at, wanted: sharpest, radius: fillet.radius, left: deepest.left, nook };
};

/** rad: a contour that turns away by more than this before it comes back has a nook, 20 degrees. */
const BENT_AWAY = Math.PI / 9;
/** rad: corners more acute leave no more, 150 degrees of turn. */
const HARDLY_OPEN = (Math.PI * 5) / 6;

const turnOf = (before: Segment, after: Segment): number => {
  const u = endDirection(before);
  const v = startDirection(after);
  return turnBetween(u.x, u.y, v.x, v.y);
};
