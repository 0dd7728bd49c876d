/** Drops the pieces that have no length, and tells of each. */
import type { Point } from '../../geometry/segment.ts';
import type { DrawnPiece } from './piece.ts';
import { fromOf, pieceLength } from './piece.ts';

export interface Cleaned {
  readonly pieces: readonly DrawnPiece[];
  readonly dropped: readonly { readonly at: Point; readonly size: number }[];
}

/** @param within mm: up to this length a piece is rounding, not a shape */
export const dropZeroLength = (pieces: readonly DrawnPiece[], within: number): Cleaned => {
  const kept: DrawnPiece[] = [];
  const dropped: { at: Point; size: number }[] = [];
  for (const piece of pieces) {
    const size = pieceLength(piece);
    if (size > within) kept.push(piece);
    else dropped.push({ at: fromOf(piece), size });
  }
  return { pieces: kept, dropped };
};
