/** Contours cut where they meet each other or themselves: pieces between shared corners, each only once, and contours that meet nothing. */

import { neighbours } from '../../sequence/sequence.ts';
import { widened } from '../area.ts';
import { bulgeOf, fromBulge } from '../bulge.ts';
import type { Contour } from '../contour.ts';
import { slice } from '../cut.ts';
import { type Contact, intersect } from '../intersect.ts';
import { boundsOf, distanceToSegment, lengthOf, pointAt } from '../measure.ts';
import { boxIndexOf } from '../near/box-index.ts';
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

interface CutSegment {
  readonly segment: Segment;
  readonly contour: number;
  readonly number: number;
  /** Number of the segment that follows it in its contour. */
  readonly next: number;
  /** Where it is to be cut. */
  readonly shares: number[];
}

/** @param within mm: what is this near is one place. */
export const cutPieces = (contours: readonly Contour[], within: number): Cuts => {
  const placed: CutSegment[] = [];
  contours.forEach(({ segments }, contour) => {
    const first = placed.length;
    segments.forEach((segment, i) => {
      placed.push({ segment, contour, number: first + i, next: first + ((i + 1) % segments.length), shares: [] });
    });
  });
  const met = new Set<number>();
  const index = boxIndexOf(placed, ({ segment }) => boundsOf(segment));
  for (const p of placed) {
    for (const q of index.search(widened(boundsOf(p.segment), within), (other) => other.number > p.number)) {
      for (const contact of intersect(p.segment, q.segment, within)) {
        if (isJoint(p, q, contact)) continue;
        met.add(p.contour).add(q.contour);
        p.shares.push(...firstShares(contact));
        q.shares.push(...secondShares(contact));
      }
    }
  }
  const corners = cornersWithin(within);
  const pieces = placed.flatMap((p) => (met.has(p.contour) ? slices(p.segment, p.shares, corners, within) : []));
  return { whole: contours.filter((_, i) => !met.has(i)), pieces: once(pieces, within) };
};

/** Neighbours meet where one goes over into the other: that is no meeting. */
const isJoint = (p: CutSegment, q: CutSegment, contact: Contact): boolean => {
  if (contact.kind === 'overlap' || contact.kind === 'crossing' || p.contour !== q.contour) return false;
  return (
    (p.next === q.number && contact.first === 1 && contact.second === 0) ||
    (q.next === p.number && contact.second === 1 && contact.first === 0)
  );
};

const firstShares = (contact: Contact): readonly number[] => (contact.kind === 'overlap' ? contact.first : [contact.first]);
const secondShares = (contact: Contact): readonly number[] => (contact.kind === 'overlap' ? contact.second : [contact.second]);

/** A corner: the first place that was seen there, with its number. */
interface NumberedCorner {
  readonly number: number;
  readonly at: Point;
}

/** Gives the corner of every place: places within the tolerance of an earlier one move onto it. */
const cornersWithin = (within: number): ((p: Point) => NumberedCorner) => {
  let count = 0;
  const cells = new Map<string, readonly NumberedCorner[]>();
  const size = 4 * within;
  return (p) => {
    const [column, row] = [Math.floor(p.x / size), Math.floor(p.y / size)];
    for (let dx = -1; dx <= 1; dx += 1)
      for (let dy = -1; dy <= 1; dy += 1)
        for (const c of cells.get(`${column + dx} ${row + dy}`) ?? []) if (distanceBetween(c.at, p) <= 2 * within) return c;
    const corner = { number: count, at: p };
    count += 1;
    const cell = `${column} ${row}`;
    cells.set(cell, [...(cells.get(cell) ?? []), corner]);
    return corner;
  };
};

const slices = (
  segment: Segment,
  shares: readonly number[],
  cornerAt: (p: Point) => NumberedCorner,
  within: number,
): readonly CutPiece[] => {
  const cuts = [...new Set([0, ...shares, 1])].sort((a, b) => a - b);
  return neighbours(cuts).flatMap(([low, high]): readonly CutPiece[] => {
    const part = slice(segment, low, high);
    const [from, to] = [cornerAt(part.from), cornerAt(part.to)];
    if (from === to && lengthOf(part) <= 8 * within) return [];
    return [{ segment: movedTo(part, from.at, to.at), from: from.number, to: to.number }];
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
