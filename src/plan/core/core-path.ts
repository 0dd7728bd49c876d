/**
 * The way of the wire over the rings of an opening that is cut without a core: from the start hole outward, in such an order that metal
 * not yet taken always hangs on the block.
 *
 * A ring is run only in one direction, and at the first place beside a ring inside that is still to be cleared the wire goes
 * in, clears it, and comes back. What lies between the wire's way and rings already cleared is then always within half a kerf of
 * one of the two, so nothing is ever cut off; and what lies outside hangs on the wall of the opening by the shortest way.
 */

import { perimeterOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { intersect } from '../../geometry/intersect.ts';
import { pointAt } from '../../geometry/measure.ts';
import { windingOf } from '../../geometry/near/inside.ts';
import { lookupOf, nearestIn } from '../../geometry/near/lookup.ts';
import { distanceBetween, type Point, type Segment } from '../../geometry/segment.ts';
import { lastItem } from '../../sequence/sequence.ts';
import { type CorePen, corePen, type Lap, lapFrom } from './core-pen.ts';
import type { Ring } from './core-rings.ts';

export interface CorePath {
  /** What the wire runs before the rough cut, joined end to end, from the hole. */
  readonly segments: readonly Segment[];
  /** Where it stands then: square in front of the entry, or on the rough cut's own path over the entry. */
  readonly end: Point;
  readonly ends: 'square to the entry' | 'over the entry';
}

export interface CoreWayAsked {
  readonly outermost: Ring;
  readonly hole: Point;
  /** No metal stands so near to the hole's middle, mm: its rim, less what a drill may wander. */
  readonly drilled: number;
  /** Half the width of the cut, mm. */
  readonly half: number;
  /** Where the wire's centre stands at the entry, and the direction from there into the opening. */
  readonly over: Point;
  readonly aside: Point;
}

/** Places that are nearer to each other, mm, are one. */
const SAME = 1e-6;

/** The whole way up to the rough cut; none where the hole is not inside the rough cut's path. */
export const corePath = (asked: CoreWayAsked): CorePath | undefined => {
  const { outermost, hole } = asked;
  const round = ringsRound(outermost, hole);
  if (round.length === 0) return undefined;
  const pen = corePen(hole);
  let cleared: Ring | undefined;
  while (round.length > 1 && isDrilled(lastItem(round), asked)) cleared = round.pop();
  for (const ring of round.reverse()) {
    if (ring === outermost) break;
    pen.to(
      cleared === undefined || pen.segments().length === 0 ? firstMeeting(ring.contour, pen.at(), asked.over) : nearestOn(ring, pen.at()),
    );
    clear(ring, pen, cleared);
    cleared = ring;
  }
  return lastWay(asked, pen, cleared);
};

/** Rings that have a place inside, the outermost first. */
const ringsRound = (ring: Ring, at: Point): Ring[] => {
  if (windingOf(ring.contour, at) === 0) return [];
  for (const inner of ring.inside) {
    const found = ringsRound(inner, at);
    if (found.length > 0) return [ring, ...found];
  }
  return [ring];
};

/** All that a ring and those inside it would take is gone with the hole. */
const isDrilled = ({ contour }: Ring, { hole, drilled, half }: CoreWayAsked): boolean =>
  contour.segments.every((s) => [0, 0.25, 0.5, 0.75].every((share) => distanceBetween(pointAt(s, share), hole) + half <= drilled)) &&
  perimeterOf(contour) < 2 * Math.PI * drilled;

/** Clears a ring on which the wire stands: those inside it as it comes by, `done` being clear already, then back where it began. */
const clear = (ring: Ring, pen: CorePen, done?: Ring): void => {
  const start = pen.at();
  const todo = ring.inside.filter((inner) => inner !== done);
  const lap = lapFrom(ring.contour, start);
  let run = 0;
  for (const { inner, at } of inTurn(lap, ring, todo)) {
    pen.along(lap, run, at);
    run = at;
    visit(inner, pen);
  }
  pen.along(lap, run, lap.length);
};

/** In to a ring, clear it, and back to where the wire was. */
const visit = (inner: Ring, pen: CorePen): void => {
  const from = pen.at();
  pen.to(nearestOn(inner, from));
  clear(inner, pen);
  pen.to(from);
};

interface Turn {
  readonly inner: Ring;
  /** Length along the lap at which the wire goes in. */
  readonly at: number;
}

/** Rings inside in the order in which a lap first comes beside them. */
const inTurn = (lap: Lap, ring: Ring, inside: readonly Ring[]): readonly Turn[] =>
  inside.map((inner) => ({ inner, at: firstBeside(lap, ring, inner) })).sort((a, b) => a.at - b.at);

/** Every place of a ring inside is one bite from the ring: the feet of its ends and middles tell where the lap comes by. */
const firstBeside = (lap: Lap, { bite }: Ring, inner: Ring): number => {
  const start = lap.contour.segments[0].from;
  if (distanceBetween(start, nearestOn(inner, start)) <= bite + 1e-4) return 0;
  const feet = inner.contour.segments.flatMap((s) => [0.02, 0.5, 0.98].map((share) => lap.lengthAt(pointAt(s, share))));
  return Math.min(...feet);
};

/** What is left outside the last ring but one, and the way to the entry. */
const lastWay = (asked: CoreWayAsked, pen: CorePen, cleared: Ring | undefined): CorePath => {
  const { outermost, over, aside } = asked;
  const todo = outermost.inside.filter((inner) => inner !== cleared);
  if (todo.length === 0) {
    if (cleared !== undefined && pen.segments().length > 0) {
      const near = nearestOn(cleared, over);
      pen.alongShorter(lapFrom(cleared.contour, pen.at()), near);
    }
    if (isSquare(pen.at(), over, aside)) return { segments: pen.segments(), end: pen.at(), ends: 'square to the entry' };
  }
  pen.to(cleared === undefined ? firstMeeting(outermost.contour, pen.at(), over) : nearestOn(outermost, pen.at()));
  const lap = lapFrom(outermost.contour, pen.at());
  let run = 0;
  for (const { inner, at } of inTurn(lap, outermost, todo)) {
    pen.along(lap, run, at);
    run = at;
    visit(inner, pen);
  }
  pen.alongShorter(lapFrom(outermost.contour, pen.at()), over);
  return { segments: pen.segments(), end: over, ends: 'over the entry' };
};

/** In front of the entry, so that a straight move from there ends at right angles to the contour. */
const isSquare = (at: Point, over: Point, aside: Point): boolean => {
  const [x, y] = [at.x - over.x, at.y - over.y];
  return Math.abs(x * aside.y - y * aside.x) < 1e-6 && x * aside.x + y * aside.y > 0.03;
};

const nearestOn = ({ contour }: Ring, p: Point): Point => {
  const { at } = nearestIn(lookupOf(contour), p);
  return at;
};

/** Where the straight way from a place inside a ring towards one outside or on it first comes to it. */
const firstMeeting = (contour: Contour, from: Point, towards: Point): Point => {
  const way: Segment = { kind: 'line', from, to: towards };
  const met = contour.segments.flatMap((s) => intersect(way, s, SAME)).flatMap((c) => (c.kind === 'overlap' ? [c.from] : [c.at]));
  if (met.length === 0) return nearestOn({ contour, bite: 0, inside: [] }, from);
  return met.reduce((a, b) => (distanceBetween(from, b) < distanceBetween(from, a) ? b : a));
};
