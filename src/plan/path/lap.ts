/**
 * One pass round a contour: programmed pieces with the wire-centre pieces beside them, told by the length travelled since
 * the entry. Forward is counter-clockwise, as the contour is drawn; any stretch of it can be taken either way.
 */

import { turnBetween } from '../../geometry/angle.ts';
import { type Chain, type Contour, contour, type Path, path } from '../../geometry/contour.ts';
import { reverse, slice } from '../../geometry/cut.ts';
import { besides, type ContourFrame } from '../../geometry/frame.ts';
import { endDirection, lengthOf, pointAt, startDirection, tangentAt } from '../../geometry/measure.ts';
import type { Arc, Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { certain, firstItem, itemAt, roundPairs } from '../../sequence/sequence.ts';
import { cornerOf } from './offset-corner.ts';
import { loopAt } from './outside-corners.ts';

export interface LapPiece {
  /** None for what the wire centre runs at an outside corner by itself; a loop there is programmed. */
  readonly programmed?: Segment | undefined;
  readonly centre?: Segment | undefined;
  /** Length travelled along the programmed contour, mm; the same twice for a corner. */
  readonly start: number;
  readonly end: number;
  /** The contour turns at its end: a corner, not a smooth joint. */
  readonly turns?: true | undefined;
}

export interface Lap {
  readonly pieces: readonly LapPiece[];
  readonly length: number;
  /** Side of the wire when travelled forward: 1 left, -1 right. */
  readonly side: 1 | -1;
  /** From the programmed contour to the wire centre. */
  readonly offset: number;
}

export interface LapOptions {
  readonly side: 1 | -1;
  readonly offset: number;
  readonly outsideCorners: 'arc' | 'intersection';
  /** Corners that are gone round out and back by a loop of this radius, mm. */
  readonly loops?: { readonly radius: number; readonly at: readonly Point[] };
}

/** Places nearer to a smooth joint than this are the joint: a program cannot hold a move so short. */
const SNAP = 5e-3;

/** Places nearer to a corner than this are moved this far past it: at the very corner there is no direction to leave by. */
const PAST = 0.02;

/** Turns below this, rad, are the noise of fitted curves. */
const SMOOTH = 1e-5;

/**
 * A contour must start at the entry, and a contour or path be opened by more than the offset, so that no piece of it vanishes.
 * Along a path there is only one lap.
 */
export const lapOf = (contour: Chain, options: LapOptions): Lap => {
  const shifted = contour.segments.map((s) => beside(s, options.side * options.offset));
  const corners = joined(contour, shifted, options);
  const pieces: LapPiece[] = [];
  let travelled = 0;
  roundPairs(contour.segments).forEach(([programmed, next], i) => {
    const end = travelled + lengthOf(programmed);
    const turns = !isEnd(contour, i) && Math.abs(cornerTurn(programmed, next)) > SMOOTH;
    pieces.push({ programmed, centre: itemAt(shifted, i), start: travelled, end, turns: turns || undefined });
    for (const beside of itemAt(corners, i)) pieces.push({ ...beside, start: end, end });
    travelled = end;
  });
  return { pieces, length: travelled, side: options.side, offset: options.offset };
};

const isEnd = (chain: Chain, i: number): boolean => !chain.closed && i === chain.segments.length - 1;

/** The wire-centre path of one lap along a path. */
export const centreAlong = (lap: Lap): Path => path(centreOf(lap).segments);

/** The wire-centre path of a whole lap, closed. */
export const centreOf = (lap: Lap): Contour => contour(lap.pieces.flatMap((p) => (p.centre ? [p.centre] : [])));

/** What is programmed for one lap along a path. */
export const programmedAlong = (lap: Lap): Path => path(programmedOf(lap).segments);

/** What is programmed for a whole lap, loops at corners and all, closed. */
export const programmedOf = (lap: Lap): Contour => contour(lap.pieces.flatMap((p) => (p.programmed ? [p.programmed] : [])));

/** Segment moved to its left by a signed distance; an arc that would turn inside out is our own mistake. */
const beside = (segment: Segment, left: number): Segment => {
  const shift = (p: Point, along: Point): Point => ({ x: p.x - along.y * left, y: p.y + along.x * left });
  const ends = { from: shift(segment.from, startDirection(segment)), to: shift(segment.to, endDirection(segment)) };
  if (segment.kind === 'line') return { ...segment, ...ends };
  const radius = segment.radius - Math.sign(segment.sweep) * left;
  if (!(radius > 0)) throw new Error(`an arc of ${segment.radius} mm cannot be offset by ${left} mm: the contour was not opened enough`);
  const whole = segment.from === segment.to || distanceBetween(segment.from, segment.to) === 0;
  return { ...segment, from: ends.from, to: whole ? ends.from : ends.to, radius };
};

type Beside = Pick<LapPiece, 'programmed' | 'centre' | 'turns'>;

/** Makes neighbours in `shifted` meet, and gives what the wire runs beside after each segment, at outside corners. */
const joined = (chain: Chain, shifted: Segment[], options: LapOptions): (readonly Beside[])[] => {
  return roundPairs(chain.segments).map(([segment, following], i) => {
    if (isEnd(chain, i)) return [];
    const next = (i + 1) % shifted.length;
    const before = itemAt(shifted, i);
    const after = itemAt(shifted, next);
    if (shifted.length === 1 && segment.kind === 'arc') return [];
    if (options.loops?.at.some((p) => distanceBetween(p, segment.to) < SAME_CORNER) === true) {
      const { out, round, back } = loopAt(segment.to, endDirection(segment), startDirection(following), options.loops.radius);
      return [out, round, back].map((s) => ({ programmed: s, centre: beside(s, options.side * options.offset), turns: true }) as const);
    }
    const apart = distanceBetween(before.to, after.from);
    const turn = cornerTurn(segment, following);
    const corner = cornerOf(before, after, segment.to, { ...options, turn, apart });
    if (corner.leave !== before.to) shifted[i] = { ...before, to: corner.leave };
    if (corner.enter !== after.from) shifted[next] = { ...itemAt(shifted, next), from: corner.enter };
    return corner.beside.map((centre) => ({ centre }));
  });
};

/** mm within which a corner is the one that was meant. */
const SAME_CORNER = 1e-6;

const cornerTurn = (before: Segment, after: Segment): number => {
  const u = endDirection(before);
  const v = startDirection(after);
  return turnBetween(u.x, u.y, v.x, v.y);
};

/** Where a lap is after `travelled` mm, any multiple of its length more or less, with the direction forward. */
export const frameAt = (lap: Lap, travelled: number): ContourFrame => {
  const { inside } = settled(lap, travelled);
  const piece = itemAt(lap.pieces, firstAfter(lap, inside));
  const share = Math.min(1, (inside - piece.start) / (piece.end - piece.start));
  const programmed = certain(piece.programmed, 'where a lap is has a length, and what has a length is programmed');
  const along = tangentAt(programmed, share);
  return { at: pointAt(programmed, share), along, aside: besides(along, lap.side) };
};

/** The pieces from one length travelled to another, cut there; an end before the start takes them backwards. Laps may be passed. */
export const stretch = (lap: Lap, start: number, end: number): readonly LapPiece[] => {
  if (end < start) return stretch(lap, end, start).toReversed().map(turnedRound);
  const first = settled(lap, start);
  const last = settled(lap, end);
  const found: LapPiece[] = [];
  for (let n = first.lap; n <= last.lap; n += 1) {
    found.push(...within(lap, n === first.lap ? first.inside : 0, n === last.lap ? last.inside : lap.length));
  }
  return found;
};

/** Length travelled as whole laps and the rest, drawn onto a joint that is very near, or moved past a corner. */
const settled = (lap: Lap, travelled: number): { readonly lap: number; readonly inside: number } => {
  const laps = Math.floor(travelled / lap.length);
  const inside = Math.max(0, travelled - laps * lap.length);
  if (inside >= lap.length) return { lap: laps + 1, inside: 0 };
  const at = firstAfter(lap, inside);
  const piece = itemAt(lap.pieces, at);
  const [since, left] = [inside - piece.start, piece.end - inside];
  if (since < PAST && turnsBefore(lap, at)) return { lap: laps, inside: pastStart(piece) };
  if (left < PAST && piece.turns) return { lap: laps, inside: pastStart(nextProgrammed(lap, at)) };
  if (since < SNAP) return { lap: laps, inside: piece.start };
  if (left >= SNAP) return { lap: laps, inside };
  return piece.end === lap.length ? { lap: laps + 1, inside: 0 } : { lap: laps, inside: piece.end };
};

/** A little into a piece, or to its middle where it is very short. */
const pastStart = (piece: LapPiece): number => piece.start + Math.min(PAST, (piece.end - piece.start) / 2);

/** Whether the contour turns at the start of a piece; at the entry it never does. */
const turnsBefore = (lap: Lap, at: number): boolean => {
  for (let i = at - 1; i >= 0; i -= 1) {
    const piece = itemAt(lap.pieces, i);
    if (piece.programmed !== undefined) return piece.turns === true;
  }
  return false;
};

/** The piece of contour after a corner; the entry is no corner, so there is one. */
const nextProgrammed = (lap: Lap, at: number): LapPiece => {
  for (let i = at + 1; i < lap.pieces.length; i += 1) {
    const piece = itemAt(lap.pieces, i);
    if (piece.programmed !== undefined && piece.end > piece.start) return piece;
  }
  return firstItem(lap.pieces);
};

const within = (lap: Lap, lower: number, upper: number): LapPiece[] => {
  const found: LapPiece[] = [];
  for (let i = firstAfter(lap, lower); i < lap.pieces.length; i += 1) {
    const piece = itemAt(lap.pieces, i);
    if (piece.start >= upper) break;
    found.push(cutPiece(lap, piece, Math.max(lower, piece.start), Math.min(upper, piece.end)));
  }
  return [...found, ...(found.at(-1)?.end === upper ? cornerAt(lap, upper) : [])];
};

/** What the centre runs at the corner that stands at exactly this length. */
const cornerAt = (lap: Lap, at: number): readonly LapPiece[] => {
  const after = firstAfter(lap, at);
  const next = itemAt(lap.pieces, after).end > at ? after : lap.pieces.length;
  let first = next;
  while (first > 0 && itemAt(lap.pieces, first - 1).start === at) first -= 1;
  return lap.pieces.slice(first, next);
};

/** A piece between two lengths travelled. Both neighbours of a cut reckon its place in the same way, so they meet in the same point. */
const cutPiece = (lap: Lap, piece: LapPiece, lower: number, upper: number): LapPiece => {
  if (piece.programmed === undefined || (lower === piece.start && upper === piece.end)) return piece;
  const size = piece.end - piece.start;
  const low = (lower - piece.start) / size;
  const high = (upper - piece.start) / size;
  const programmed = slice(piece.programmed, low, high);
  const wanted = piece.programmed;
  const whole = certain(piece.centre, 'what is programmed has its centre');
  const left = lap.side * lap.offset;
  const place = (share: number): Point => {
    const at = pointAt(wanted, share);
    const along = tangentAt(wanted, share);
    return { x: at.x - along.y * left, y: at.y + along.x * left };
  };
  const ends = { from: low === 0 ? whole.from : place(low), to: high === 1 ? whole.to : place(high) };
  const centre: Segment = whole.kind === 'line' ? { ...whole, ...ends } : { ...whole, ...ends, sweep: (programmed as Arc).sweep };
  return { programmed, centre, start: lower, end: upper };
};

const turnedRound = (piece: LapPiece): LapPiece => ({
  ...piece,
  programmed: piece.programmed && reverse(piece.programmed),
  centre: piece.centre && reverse(piece.centre),
});

/** Number of the first piece that ends beyond a length: by halving, as contours may have thousands of pieces. */
const firstAfter = (lap: Lap, at: number): number => {
  let low = 0;
  let high = lap.pieces.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (itemAt(lap.pieces, middle).end > at) high = middle;
    else low = middle + 1;
  }
  return low;
};
