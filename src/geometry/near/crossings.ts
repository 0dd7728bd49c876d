/** Where chains cross, touch or run along themselves or each other, found with a spatial index. */

import { turnBetween } from '../angle.ts';
import type { Chain } from '../contour.ts';
import type { Contact } from '../intersect.ts';
import { intersect } from '../intersect.ts';
import { boundsOf, curvatureOf, lengthOf, tangentAt } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';
import type { Lookup } from './lookup.ts';
import { lookupOf, segmentsNear } from './lookup.ts';

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
export const selfCrossings = (chain: Chain, within: number): readonly ChainContact[] => {
  const lookup = lookupOf(chain);
  const found: ChainContact[] = [];
  const seen = new Set<number>();
  chain.segments.forEach((segment, i) => {
    const near = segmentsNear(lookup, boundsOf(segment), within).filter((j) => j > i);
    for (const j of near.sort((p, q) => p - q)) {
      for (const contact of intersect(segment, chain.segments[j]!, within)) {
        if (isSamePlace(chain, i, j, contact, within) || isSeen(seen, chain, chain, i, j, contact)) continue;
        found.push(told(chain, chain, i, j, contact));
      }
    }
  });
  return found;
};

/** All places where two chains meet, sorted by the segments of the first. */
export const crossingsBetween = (a: Chain, b: Chain, within: number): readonly ChainContact[] => crossingsWith(a, lookupOf(b), b, within);

/** The same with the index of the second chain made before. */
export const crossingsWith = (a: Chain, lookup: Lookup, b: Chain, within: number): readonly ChainContact[] => {
  const found: ChainContact[] = [];
  const seen = new Set<number>();
  a.segments.forEach((segment, i) => {
    for (const j of segmentsNear(lookup, boundsOf(segment), within).sort((p, q) => p - q)) {
      for (const contact of intersect(segment, b.segments[j]!, within)) {
        if (!isSeen(seen, a, b, i, j, contact)) found.push(told(a, b, i, j, contact));
      }
    }
  });
  return found;
};

/**
 * Places that are next to each other along the chain as well are no meeting: the joints, and what lies round segments shorter
 * than the tolerance. Four times the tolerance along the chain is allowed for what zigzags below it.
 */
const isSamePlace = (chain: Chain, i: number, j: number, contact: Contact, within: number): boolean => {
  const most = 4 * within;
  if (contact.kind !== 'overlap') return wayIsShort(chain, i, contact.first, j, contact.second, most);
  const stretch = (contact.first[1] - contact.first[0]) * lengthOf(chain.segments[i]!);
  return stretch <= most && wayIsShort(chain, i, contact.first[0], j, contact.second[0], most);
};

/** Whether the way along the chain from a share of segment i to a share of segment j is at most `most` mm, one way or the other. */
const wayIsShort = (chain: Chain, i: number, first: number, j: number, second: number, most: number): boolean => {
  const { segments, closed } = chain;
  let way = (1 - first) * lengthOf(segments[i]!) + second * lengthOf(segments[j]!);
  for (let k = i + 1; k < j && way <= most; k += 1) way += lengthOf(segments[k]!);
  if (way <= most) return true;
  if (!closed) return false;
  way = first * lengthOf(segments[i]!) + (1 - second) * lengthOf(segments[j]!);
  for (let k = j + 1; k < i + segments.length && way <= most; k += 1) way += lengthOf(segments[k % segments.length]!);
  return way <= most;
};

/**
 * Meetings at one corner are seen by up to four pairs of segments, and are told once: `seen` holds the pairs of places, a
 * place being a corner (even numbers) or the inside of a segment (odd ones).
 */
const isSeen = (seen: Set<number>, a: Chain, b: Chain, i: number, j: number, contact: Contact): boolean => {
  if (contact.kind !== 'touching end') return false;
  const p = placeOf(a, i, contact.first);
  const q = placeOf(b, j, contact.second);
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

const told = (a: Chain, b: Chain, i: number, j: number, contact: Contact): ChainContact => {
  const at = contact.kind === 'overlap' ? contact.from : contact.at;
  return { kind: kindOf(a, b, i, j, contact), at, first: i, second: j, contact };
};

const kindOf = (a: Chain, b: Chain, i: number, j: number, contact: Contact): ChainContact['kind'] => {
  if (contact.kind === 'overlap' || contact.kind === 'crossing') return contact.kind;
  if (contact.kind === 'tangent') return 'touching';
  const first = raysAt(a, i, contact.first);
  const second = raysAt(b, j, contact.second);
  return first.length === 2 && second.length === 2 && separates(first, second) ? 'crossing' : 'touching';
};

/** A way out of a place: its direction, and how it bends to the left. */
interface Ray {
  readonly x: number;
  readonly y: number;
  readonly bend: number;
}

/** The way back and the way on from a place of a chain; only one of them at the end of an open chain. */
const raysAt = (chain: Chain, i: number, share: number): Ray[] => {
  const count = chain.segments.length;
  const inner = share > 0 && share < 1;
  const back = share > 0 ? i : chain.closed ? (i + count - 1) % count : i - 1;
  const on = share < 1 ? i : chain.closed ? (i + 1) % count : i + 1;
  const rays: Ray[] = [];
  if (back >= 0) rays.push(ray(chain.segments[back]!, inner ? share : 1, -1));
  if (on < count) rays.push(ray(chain.segments[on]!, inner ? share : 0, 1));
  return rays;
};

const ray = (segment: Segment, share: number, way: 1 | -1): Ray => {
  const t = tangentAt(segment, share);
  return { x: way * t.x, y: way * t.y, bend: way * curvatureOf(segment) };
};

/** Whether exactly one of the second pair of rays lies in the turn from the first ray to its partner. */
const separates = (first: readonly Ray[], second: readonly Ray[]): boolean => {
  const [start, end] = first as [Ray, Ray];
  const held = second.map((r) => isBetween(start, end, r));
  return held[0] !== held[1];
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
