/**
 * How far the metal that is left lies from an open line of the drawing: one side of it stays, or it is a slit with the middle of the
 * cut along it and metal on both sides.
 */

import { turnBetween } from '../../geometry/angle.ts';
import { boundsOfChain } from '../../geometry/area.ts';
import type { Path } from '../../geometry/contour.ts';
import { endDirection, lengthOf, pointAt, startDirection, tangentAt } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { firstItem, itemAt } from '../../sequence/sequence.ts';
import { type DrawnLine, distanceFrom, drawnLine, nearestPlace, turnsRound } from '../drawn-line.ts';
import type { Deviation, WantedOpen } from '../proof.ts';
import type { Edges } from './edges.ts';
import type { GroupWork } from './group-alone.ts';
import { halfOf } from './inside-corners.ts';
import { RESOLUTION } from './sweep.ts';

export type OpenLine = Pick<WantedOpen, 'path' | 'kept'>;

export interface OpenMeasure {
  /** Beyond the round that an inside corner may have. */
  readonly leftMost: Deviation;
  readonly gougeMost: Deviation;
  /** mm of the line along which metal stands that was never cut through, and a place in the midst of it. */
  readonly standing: { readonly length: number; readonly at: Point };
  /** mm of the line that lie in the block at all. */
  readonly length: number;
}

/** Places along a line stand no further apart than this, mm: narrower than any wire. */
const SPACING = 0.05;

/** A vertex of the metal's edge for which this line is the nearest wanted one. */
export interface Vertex {
  readonly at: Point;
  /** A kerf meets the edge of the block there: how wide the mouth is counts, not how far it lies behind the end of the line. */
  readonly isMouth: boolean;
}

/**
 * @param vertices of the metal's edge that are nearer to this line than to anything else wanted.
 * @param excused places in the mouth of another slit.
 */
export const measureOpen = (
  work: GroupWork,
  edges: Edges,
  line: OpenLine,
  vertices: readonly Vertex[],
  excused: (at: Point) => boolean,
): OpenMeasure => {
  const halfKerf = halfKerfOf(work);
  const allowed = roundAllowed(line, work.insideCorner);
  let leftMost: Deviation = { at: firstItem(line.path.segments).from, amount: 0 };
  let gougeMost: Deviation = leftMost;
  let [length, standing, run] = [0, 0, 0];
  let middle: Point = leftMost.at;
  let longest = 0;
  const block = work.block && drawnLine(work.block);
  for (const { at, step } of placesAlong(line.path)) {
    if (block !== undefined && turnsRound(block, at) === 0) continue;
    length += step;
    const into = edges.distance(at.x, at.y);
    const amount = line.kept === 'slit' ? Math.max(0, into + halfKerf) : into;
    const stands = line.kept === 'slit' ? into > -RESOLUTION : into > halfKerf && allowed(at, into) > halfKerf;
    standing += stands ? step : 0;
    run = stands ? run + step : 0;
    if (run > longest) [longest, middle] = [run, at];
    const left = amount > RESOLUTION ? allowed(at, amount) : amount;
    if (left > leftMost.amount) leftMost = { at, amount: Math.min(left, FAR) };
    if (amount < gougeMost.amount && !excused(at)) gougeMost = { at, amount: Math.max(amount, -FAR) };
  }
  for (const { at, amount } of gougesBeside(line, vertices, halfKerf))
    if (amount < gougeMost.amount && !excused(at)) gougeMost = { at, amount };
  return { leftMost, gougeMost, standing: { length: standing, at: middle }, length };
};

/** mm: stands for the distance to a cut that is not there. */
const FAR = 1e3;

/** Half the widest cut of the work, mm. */
export const halfKerfOf = (work: GroupWork): number => Math.max(...work.cuts.map((c) => c.radius), work.wireRadius);

const placesAlong = function* (path: Path): Iterable<{ readonly at: Point; readonly step: number }> {
  for (const s of path.segments) {
    const length = lengthOf(s);
    const steps = Math.max(2, Math.ceil(length / SPACING));
    for (let i = 0; i < steps; i += 1) yield { at: pointAt(s, (i + 0.5) / steps), step: length / steps };
  }
};

/** Metal's edges that lie where metal must stay: beside the kept side, or further from a slit than its kerf reaches. */
const gougesBeside = ({ path, kept }: OpenLine, vertices: readonly Vertex[], halfKerf: number): readonly Deviation[] => {
  const drawn = drawnLine(path);
  return vertices.flatMap(({ at, isMouth }) => {
    const off = isMouth ? offCourse(path, drawn, at) : distanceFrom(drawn, at);
    const depth = kept === 'slit' ? off - halfKerf : beyondKept(path, drawn, at, kept);
    return depth > RESOLUTION ? [{ at, amount: -depth }] : [];
  });
};

/**
 * mm by which a place lies on the kept side; before the line's start and behind its end that is told from its tangent there, along
 * which the wire comes and goes.
 */
const beyondKept = (path: Path, drawn: DrawnLine, p: Point, kept: 'left' | 'right'): number => {
  const { segment, share, at, distance } = nearestPlace(drawn, p);
  const side = kept === 'left' ? 1 : -1;
  const along = tangentAt(itemAt(path.segments, segment), share);
  const across = (along.x * (p.y - at.y) - along.y * (p.x - at.x)) * side;
  const before = path.segments[share <= AT_JOINT ? segment - 1 : segment];
  const after = path.segments[share >= 1 - AT_JOINT ? segment + 1 : segment];
  if (before === undefined || after === undefined) return Math.max(0, across);
  if (before === after) return across > 0 ? distance : 0;
  // What is nearest to a corner lies outside the turn, whatever the tangents say.
  const turn = turnAt(before, after) * side;
  const isKept = Math.abs(turn) > LEAST_TURN ? turn < 0 : across > 0;
  return isKept ? distance : 0;
};

/** mm from the line; before its start and behind its end from its tangent there. */
const offCourse = (path: Path, drawn: DrawnLine, p: Point): number => {
  const { segment, share, at, distance } = nearestPlace(drawn, p);
  const atEnd = (segment === 0 && share <= AT_JOINT) || (segment === path.segments.length - 1 && share >= 1 - AT_JOINT);
  if (!atEnd) return distance;
  const along = tangentAt(itemAt(path.segments, segment), share);
  return Math.abs(along.x * (p.y - at.y) - along.y * (p.x - at.x));
};

/** Shares so near to 0 or 1 are the joint itself. */
const AT_JOINT = 1e-9;

const turnAt = (before: Segment, after: Segment): number => {
  const [u, v] = [endDirection(before), startDirection(after)];
  return turnBetween(u.x, u.y, v.x, v.y);
};

/** What is left beyond the round that an inside corner of the line may have, for places near one. */
const roundAllowed = ({ path, kept }: OpenLine, radius: number): ((at: Point, left: number) => number) => {
  if (kept === 'slit' || radius <= 0) return (_, left) => left;
  const rounds = insideRounds(path, kept, radius);
  return (at, left) => {
    const round = rounds.find((r) => Math.hypot(r.corner.x - at.x, r.corner.y - at.y) <= r.reach);
    if (round === undefined) return left;
    return Math.max(0, left - Math.max(0, Math.hypot(round.centre.x - at.x, round.centre.y - at.y) - radius));
  };
};

interface Round {
  /** Where both sides would meet. */
  readonly corner: Point;
  /** Of the round that may be there instead. */
  readonly centre: Point;
  /** From the corner to where the round touches the sides. */
  readonly reach: number;
}

/** Turns smaller than this, rad, leave less than 0.1 µm. */
const LEAST_TURN = 0.05;

/** Sharp corners, and arcs tighter than the round, that hollow the kept metal. */
const insideRounds = (path: Path, kept: 'left' | 'right', radius: number): readonly Round[] => {
  // The wire runs on the other side than the kept one; a corner is hollow where the line turns towards the wire.
  const wire = kept === 'left' ? -1 : 1;
  return path.segments.flatMap((s, i) => {
    const rounds: Round[] = [];
    if (s.kind === 'arc' && s.sweep * wire > 0 && s.radius < radius) {
      const half = halfOf(Math.abs(s.sweep));
      const apex = s.radius / Math.cos(half);
      const middle = pointAt(s, 0.5);
      const out = { x: (middle.x - s.centre.x) / s.radius, y: (middle.y - s.centre.y) / s.radius };
      const corner = { x: s.centre.x + out.x * apex, y: s.centre.y + out.y * apex };
      rounds.push(roundAt(corner, { x: -out.x, y: -out.y }, half, radius));
    }
    const next = path.segments[i + 1];
    if (next === undefined) return rounds;
    const [u, v] = [endDirection(s), startDirection(next)];
    const turn = turnAt(s, next) * wire;
    if (turn <= LEAST_TURN) return rounds;
    const half = halfOf(turn);
    const way = { x: v.x - u.x, y: v.y - u.y };
    const size = Math.hypot(way.x, way.y);
    return [...rounds, roundAt(s.to, { x: way.x / size, y: way.y / size }, half, radius)];
  });
};

const roundAt = (corner: Point, inward: Point, half: number, radius: number): Round => {
  const away = radius / Math.cos(half);
  return { corner, centre: { x: corner.x + inward.x * away, y: corner.y + inward.y * away }, reach: radius * Math.tan(half) };
};

/**
 * Places in the mouth of a wanted slit: there no other line can be judged by what is missing. Reaches half a kerf to either side
 * of the slit's middle, and as far as may be off.
 */
export const inSlit = (work: GroupWork): ((at: Point, but?: OpenLine) => boolean) => {
  const slits = work.open
    .filter((o) => o.kept === 'slit')
    .map((line) => ({ line, drawn: drawnLine(line.path), box: boundsOfChain(line.path) }));
  if (slits.length === 0) return () => false;
  const reach = halfKerfOf(work) + Math.max(work.tolerance, 2 * RESOLUTION);
  return (at, but) =>
    slits.some(
      ({ line, drawn, box }) =>
        line !== but &&
        at.x > box.minX - reach &&
        at.x < box.maxX + reach &&
        at.y > box.minY - reach &&
        at.y < box.maxY + reach &&
        distanceFrom(drawn, at) <= reach,
    );
};

/** Places a little beside the lines, on the metal that must stay: what encloses one of them is a wanted piece. */
export const keptPlaces = (work: GroupWork): readonly { readonly at: Point; readonly line: number }[] => {
  if (work.open.length === 0) return [];
  const beside = halfKerfOf(work) + 0.05;
  return work.open.flatMap(({ path, kept }, line) => {
    const sides = kept === 'slit' ? [beside, -beside] : [kept === 'left' ? 0.05 : -0.05];
    return path.segments.flatMap((s) =>
      [0.25, 0.5, 0.75].flatMap((share) => {
        const [at, along] = [pointAt(s, share), tangentAt(s, share)];
        return sides.map((side) => ({ line, at: { x: at.x - along.y * side, y: at.y + along.x * side } }));
      }),
    );
  });
};
