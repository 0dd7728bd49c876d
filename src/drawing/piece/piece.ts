/** The pieces a drawing is joined from: one drawn line, arc or fitted curve each, in mm. */

import { reverse } from '../../geometry/cut.ts';
import { lengthOf, pointAt } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { firstItem, itemAt, lastItem } from '../../sequence/sequence.ts';

export interface DrawnPiece {
  /** One line or arc; several where a curve was fitted or a gap was bridged. Joined exactly. */
  readonly segments: readonly Segment[];
  readonly layer: string;
  readonly hidden: boolean;
  /** A line that explains the drawing, and by what it is known: it is joined with what is hidden. */
  readonly construction?: string | undefined;
  /** Pieces of one polyline or path share it. */
  readonly entity: number;
  readonly closes: boolean;
  /** Where in the file it stands: its line, or its byte in a binary file. */
  readonly line: number;
  /** The curve it came from, by number; parts of one cut curve share it. */
  readonly source: number;
  /** Greatest distance in mm from the curve that was drawn. */
  readonly deviation: number;
  /**
   * By how much more mm² the drawn curve sweeps, seen from a fixed point, than its segments do; 0 for lines and arcs. With
   * it the area of a loop is that of the drawing and not that of its fit.
   */
  readonly excess: number;
  /** More than one copy of it was drawn, and this one was kept. */
  readonly copied?: true;
}

/** A piece and the way it is travelled. */
export interface Step {
  readonly piece: DrawnPiece;
  readonly forward: boolean;
}

export const fromOf = (piece: DrawnPiece): Point => firstItem(piece.segments).from;

export const toOf = (piece: DrawnPiece): Point => lastItem(piece.segments).to;

export const pieceLength = (piece: DrawnPiece): number => {
  let total = 0;
  for (const segment of piece.segments) total += lengthOf(segment);
  return total;
};

/** The point at a share of a piece's length. */
export const pieceAt = (piece: DrawnPiece, share: number): Point => {
  if (piece.segments.length === 1) return pointAt(firstItem(piece.segments), share);
  let left = share * pieceLength(piece);
  for (const segment of piece.segments) {
    const long = lengthOf(segment);
    if (left <= long) return pointAt(segment, long === 0 ? 0 : left / long);
    left -= long;
  }
  return toOf(piece);
};

/** The segments of a chain of steps, each the way it is travelled. */
export const segmentsOf = (steps: readonly Step[]): Segment[] => {
  const all: Segment[] = [];
  for (const { piece, forward } of steps) {
    if (forward) for (const segment of piece.segments) all.push(segment);
    else for (let i = piece.segments.length - 1; i >= 0; i -= 1) all.push(reverse(itemAt(piece.segments, i)));
  }
  return all;
};

/** The layer most of the length lies on; the first in the alphabet where two have the same. */
export const layerOf = (pieces: readonly DrawnPiece[]): string => {
  const first = firstItem(pieces).layer;
  if (pieces.every((p) => p.layer === first)) return first;
  const lengths = new Map<string, number>();
  for (const p of pieces) lengths.set(p.layer, (lengths.get(p.layer) ?? 0) + pieceLength(p));
  return firstItem([...lengths].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)))[0];
};
