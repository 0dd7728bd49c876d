/** Where chains cross, touch or run along themselves or each other, found with a spatial index. */

import { aroundAt } from '../../sequence/sequence.ts';
import { turnBetween } from '../angle.ts';
import { type Chain, segmentAt } from '../contour.ts';
import type { Contact } from '../intersect.ts';
import { intersect } from '../intersect.ts';
import { boundsOf, curvatureOf, lengthOf, tangentAt } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';
import type { Lookup } from './lookup.ts';
import { lookupOf, type Numbered, segmentsNear } from './lookup.ts';

/**
 * One place, or one stretch, that two pieces of chain share. `crossing`: the chains change sides there, even where it
 * happens exactly on a corner. `touching`: they do not, or one of them ends there. `overlap`: they run along each other.
 */
export interface ChainContact {
  readonly kind: 'crossing' | 'touching' | 'overlap';
  readonly at: Point;
  /** Segment numbers, in the first and the second chain; for one chain the first is the lower. */
  readonly first: number;
  readonly second: number;
  readonly contact: Contact;
}

/**
 * All places where a chain meets itself other than in its own joints, sorted by the first segment. Loops shorter than four
 * times the tolerance are below it and not told.
 *
 * @param within mm: what counts as meeting, see `intersect`.
 */
export const selfCrossings = (chain: Chain, within: number, limit: CrossingLimit = {}): readonly ChainContact[] => {
  const { most = Number.POSITIVE_INFINITY, looked } = limit;
  const lookup = lookupOf(chain);
  const found: ChainContact[] = [];
  const seen = new Set<number>();
  let crossings = 0;
  for (const [index, segment] of chain.segments.entries()) {
    const one = { segment, index };
    const later = segmentsNear(lookup, boundsOf(segment), within, (other) => other.index > index);
    looked?.(later.length);
    for (const other of inOrder(later)) {
      for (const contact of intersect(segment, other.segment, within)) {
        if (isSamePlace(chain, one, other, contact, within) || isSeen(seen, [chain, chain], [one, other], contact)) continue;
        found.push(told(chain, chain, one, other, contact));
        if (contact.kind === 'crossing' && ++crossings >= most) return found;
      }
    }
  }
  return found;
};

/** A tangle crosses itself once for every pair of its segments: whoever needs not to know them all says so. */
export interface CrossingLimit {
  /** After so many crossings of two segments the search ends. */
  readonly most?: number | undefined;
  /** Told how many pairs of segments are looked at, before they are. */
  readonly looked?: ((pairs: number) => void) | undefined;
}

const inOrder = (segments: Numbered[]): readonly Numbered[] => segments.sort((p, q) => p.index - q.index);

/** All places where two chains meet, sorted by the segments of the first. */
export const crossingsBetween = (a: Chain, b: Chain, within: number): readonly ChainContact[] => crossingsWith(a, lookupOf(b), b, within);

/** The same with the index of the second chain made before. */
export const crossingsWith = (a: Chain, lookup: Lookup, b: Chain, within: number, limit: CrossingLimit = {}): readonly ChainContact[] => {
  const { most = Number.POSITIVE_INFINITY, looked } = limit;
  const found: ChainContact[] = [];
  const seen = new Set<number>();
  let crossings = 0;
  for (const [index, segment] of a.segments.entries()) {
    const one = { segment, index };
    const near = segmentsNear(lookup, boundsOf(segment), within);
    looked?.(near.length);
    for (const other of inOrder(near)) {
      for (const contact of intersect(segment, other.segment, within)) {
        if (isSeen(seen, [a, b], [one, other], contact)) continue;
        found.push(told(a, b, one, other, contact));
        if (contact.kind === 'crossing' && ++crossings >= most) return found;
      }
    }
  }
  return found;
};

/**
 * Places that are next to each other along the chain as well are no meeting: the joints, and what lies round segments shorter
 * than the tolerance. Four times the tolerance along the chain is allowed for what zigzags below it.
 */
const isSamePlace = (chain: Chain, one: Numbered, other: Numbered, contact: Contact, within: number): boolean => {
  const most = 4 * within;
  if (contact.kind !== 'overlap') return wayIsShort(chain, [one, contact.first], [other, contact.second], most);
  const stretch = (contact.first[1] - contact.first[0]) * lengthOf(one.segment);
  return stretch <= most && wayIsShort(chain, [one, contact.first[0]], [other, contact.second[0]], most);
};

/** A segment and a share of it. */
type Share = readonly [segment: Numbered, share: number];

/** Whether the way along the chain from a share of one segment to a share of a later one is at most `most` mm, one way or the other. */
const wayIsShort = ({ segments, closed }: Chain, [one, first]: Share, [other, second]: Share, most: number): boolean => {
  const [size, otherSize] = [lengthOf(one.segment), lengthOf(other.segment)];
  const isShort = (ends: number, from: number, to: number): boolean => {
    let way = ends;
    for (let k = from + 1; k < to && way <= most; k += 1) way += lengthOf(aroundAt(segments, k));
    return way <= most;
  };
  if (isShort((1 - first) * size + second * otherSize, one.index, other.index)) return true;
  return closed && isShort(first * size + (1 - second) * otherSize, other.index, one.index + segments.length);
};

/**
 * Meetings at one corner are seen by up to four pairs of segments, and are told once: `seen` holds the pairs of places, a
 * place being a corner (even numbers) or the inside of a segment (odd ones).
 */
const isSeen = (
  seen: Set<number>,
  [a, b]: readonly [Chain, Chain],
  [one, other]: readonly [Numbered, Numbered],
  contact: Contact,
): boolean => {
  if (contact.kind !== 'touching end') return false;
  const p = placeOf(a, one.index, contact.first);
  const q = placeOf(b, other.index, contact.second);
  const room = 2 * (a.segments.length + b.segments.length) + 2;
  const key = a === b ? Math.min(p, q) * room + Math.max(p, q) : p * room + q;
  if (seen.has(key)) return true;
  seen.add(key);
  return false;
};

const placeOf = (chain: Chain, i: number, share: number): number => {
  if (share === 0) return 2 * i;
  if (share !== 1) return 2 * i + 1;
  return chain.closed && i === chain.segments.length - 1 ? 0 : 2 * i + 2;
};

const told = (a: Chain, b: Chain, one: Numbered, other: Numbered, contact: Contact): ChainContact => {
  const at = contact.kind === 'overlap' ? contact.from : contact.at;
  return { kind: kindOf(a, b, one, other, contact), at, first: one.index, second: other.index, contact };
};

const kindOf = (a: Chain, b: Chain, one: Numbered, other: Numbered, contact: Contact): ChainContact['kind'] => {
  if (contact.kind === 'overlap' || contact.kind === 'crossing') return contact.kind;
  if (contact.kind === 'tangent') return 'touching';
  const [start, end] = raysAt(a, one, contact.first);
  const [back, on] = raysAt(b, other, contact.second);
  if (start === undefined || end === undefined || back === undefined || on === undefined) return 'touching';
  // The chains change sides where exactly one way of the second lies in the turn between the ways of the first.
  return isBetween(start, end, back) !== isBetween(start, end, on) ? 'crossing' : 'touching';
};

/** A way out of a place: its direction, and how it bends to the left. */
interface Ray {
  readonly x: number;
  readonly y: number;
  readonly bend: number;
}

/** The way back and the way on from a place of a chain; only one of them at the end of an open chain. */
const raysAt = (chain: Chain, { segment, index }: Numbered, share: number): readonly Ray[] => {
  if (share > 0 && share < 1) return [ray(segment, share, -1), ray(segment, share, 1)];
  const back = share > 0 ? segment : segmentAt(chain, index - 1);
  const on = share > 0 ? segmentAt(chain, index + 1) : segment;
  return [...(back === undefined ? [] : [ray(back, 1, -1)]), ...(on === undefined ? [] : [ray(on, 0, 1)])];
};

const ray = (segment: Segment, share: number, way: 1 | -1): Ray => {
  const t = tangentAt(segment, share);
  return { x: way * t.x, y: way * t.y, bend: way * curvatureOf(segment) };
};

/** Whether turning left from `start` one meets `r` before `end`; the same direction is told apart by the bend. */
const isBetween = (start: Ray, end: Ray, r: Ray): boolean => {
  const toEnd = turnFrom(start, end);
  const toRay = turnFrom(start, r);
  if (Math.abs(toRay - toEnd) > SAME_DIRECTION) return toRay < toEnd;
  return r.bend < end.bend;
};

/** Rad: directions closer than this are one, and their bends decide; rounding of a tangent is some 1e-15. */
const SAME_DIRECTION = 1e-9;

/** Turn to the left in (0, 2 pi]: a ray in the same direction that bends less than `start` lies a whole turn on. */
const turnFrom = (start: Ray, r: Ray): number => {
  const turn = turnBetween(start.x, start.y, r.x, r.y);
  if (Math.abs(turn) <= SAME_DIRECTION) return r.bend > start.bend ? 0 : 2 * Math.PI;
  return turn < 0 ? turn + 2 * Math.PI : turn;
};
