/** Contours cut where they meet each other or themselves: pieces between shared corners, each only once, and contours that meet nothing. */
import { bulgeOf, fromBulge } from '../bulge.ts';
import type { Contour } from '../contour.ts';
import { slice } from '../cut.ts';
import { type Contact, intersect } from '../intersect.ts';
import { boundsOf, distanceToSegment, lengthOf, pointAt } from '../measure.ts';
import { lookupOfSegments, segmentsNear } from '../near/lookup.ts';
import { arc, distanceBetween, type Point, type Segment, samePoint } from '../segment.ts';

/** A piece between two corners, which are told by number: places within the tolerance of each other are one. */
export interface CutPiece {
  readonly segment: Segment;
  readonly from: number;
  readonly to: number;
}

export interface Cuts {
  /** Contours that meet nothing. */
  readonly whole: readonly Contour[];
  readonly pieces: readonly CutPiece[];
}

interface Placed {
  readonly segment: Segment;
  readonly contour: number;
  /** Number of the segment that follows it in its contour. */
  readonly next: number;
}

/** @param within mm: what is this near is one place. */
export const cutPieces = (contours: readonly Contour[], within: number): Cuts => {
  const placed: Placed[] = [];
  contours.forEach((c, number) => {
    const first = placed.length;
    c.segments.forEach((segment, i) => {
      placed.push({ segment, contour: number, next: first + ((i + 1) % c.segments.length) });
    });
  });
  const shares = new Map<number, number[]>();
  const met = new Set<number>();
  const lookup = lookupOfSegments(placed.map((p) => p.segment));
  placed.forEach((p, i) => {
    for (const j of segmentsNear(lookup, boundsOf(p.segment), within)) {
      if (j <= i) continue;
      const q = placed[j]!;
      for (const contact of intersect(p.segment, q.segment, within)) {
        if (isJoint(p, i, q, j, contact)) continue;
        met.add(p.contour).add(q.contour);
        add(shares, i, firstShares(contact));
        add(shares, j, secondShares(contact));
      }
    }
  });
  const corners = cornersWithin(within);
  const pieces = placed.flatMap((p, i) => (met.has(p.contour) ? slices(p.segment, shares.get(i) ?? [], corners, within) : []));
  return { whole: contours.filter((_, i) => !met.has(i)), pieces: once(pieces, within) };
};

const add = (shares: Map<number, number[]>, segment: number, more: readonly number[]): void => {
  const list = shares.get(segment);
  if (list === undefined) shares.set(segment, [...more]);
  else list.push(...more);
};

/** Neighbours meet where one goes over into the other: that is no meeting. */
const isJoint = (p: Placed, i: number, q: Placed, j: number, contact: Contact): boolean => {
  if (contact.kind === 'overlap' || contact.kind === 'crossing' || p.contour !== q.contour) return false;
  return (p.next === j && contact.first === 1 && contact.second === 0) || (q.next === i && contact.second === 1 && contact.first === 0);
};

const firstShares = (contact: Contact): readonly number[] => (contact.kind === 'overlap' ? contact.first : [contact.first]);
const secondShares = (contact: Contact): readonly number[] => (contact.kind === 'overlap' ? contact.second : [contact.second]);

interface Corners {
  readonly numberOf: (p: Point) => number;
  readonly at: (number: number) => Point;
}

/** Gives every place a number; places within the tolerance of an earlier one have its number and move onto it. */
const cornersWithin = (within: number): Corners => {
  const places: Point[] = [];
  const cells = new Map<string, number[]>();
  const size = 4 * within;
  const numberOf = (p: Point): number => {
    const [column, row] = [Math.floor(p.x / size), Math.floor(p.y / size)];
    for (let dx = -1; dx <= 1; dx += 1)
      for (let dy = -1; dy <= 1; dy += 1)
        for (const i of cells.get(`${column + dx} ${row + dy}`) ?? []) if (distanceBetween(places[i]!, p) <= 2 * within) return i;
    const number = places.push(p) - 1;
    const cell = `${column} ${row}`;
    cells.set(cell, [...(cells.get(cell) ?? []), number]);
    return number;
  };
  return { numberOf, at: (number) => places[number]! };
};

const slices = (segment: Segment, shares: readonly number[], corners: Corners, within: number): readonly CutPiece[] => {
  const cuts = [...new Set([0, ...shares, 1])].sort((a, b) => a - b);
  return cuts.slice(1).flatMap((high, i): readonly CutPiece[] => {
    const part = slice(segment, cuts[i]!, high);
    const [from, to] = [corners.numberOf(part.from), corners.numberOf(part.to)];
    if (from === to && lengthOf(part) <= 8 * within) return [];
    return [{ segment: movedTo(part, corners.at(from), corners.at(to)), from, to }];
  });
};

/** A corner moves by no more than twice the tolerance; an arc goes with it and keeps its sweep. */
const movedTo = (s: Segment, from: Point, to: Point): Segment => {
  if (samePoint(s.from, from) && samePoint(s.to, to)) return s;
  if (s.kind === 'line') return { ...s, from, to };
  return samePoint(from, to) ? arc(from, to, s.centre, s.sweep) : fromBulge(from, to, bulgeOf(s));
};

/** Pieces that run along each other, either way, are one: what they do to the winding is asked of the contours themselves. */
const once = (pieces: readonly CutPiece[], within: number): readonly CutPiece[] => {
  const seen = new Map<string, CutPiece[]>();
  return pieces.filter((p) => {
    const key = p.from < p.to ? `${p.from} ${p.to}` : `${p.to} ${p.from}`;
    const others = seen.get(key) ?? [];
    if (others.some((o) => distanceToSegment(o.segment, pointAt(p.segment, 0.5)) <= 2 * within)) return false;
    seen.set(key, [...others, p]);
    return true;
  });
};
