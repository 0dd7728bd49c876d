/** Keeps once the fitted curves that are drawn twice, the same way or backwards; their arcs may differ, their places do not. */

import { nearPoints } from '../../geometry/near/near-points.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { Doubled, Single } from './doubled-pieces.ts';
import type { DrawnPiece } from './piece.ts';
import { fromOf, pieceAt, pieceLength, toOf } from './piece.ts';
import type { WorkLimit } from './work-limit.ts';
import { spend } from './work-limit.ts';

/** @param within mm: how far apart two fits of the same curve may lie */
export const dropTwins = (pieces: readonly DrawnPiece[], within: number, work: WorkLimit): Single => {
  const near = nearPoints(pieces.length, 2 * within);
  const dropped = new Set<number>();
  const doubled: Doubled[] = [];
  pieces.forEach((piece, i) => {
    if (piece.segments.length === 1) return;
    const middle = pieceAt(piece, 0.5);
    let twin = false;
    let steps = 1;
    near.visit(middle, (j) => {
      steps += 1;
      twin ||= sameCourse(piece, itemAt(pieces, j), within);
    });
    spend(work, steps * 8);
    if (twin) {
      dropped.add(i);
      doubled.push({ at: middle, size: pieceLength(piece), copies: 1 });
    } else near.add(i, middle);
  });
  return { pieces: dropped.size === 0 ? pieces : pieces.filter((_, i) => !dropped.has(i)), doubled };
};

const sameCourse = (a: DrawnPiece, b: DrawnPiece, within: number): boolean => {
  const along = distanceBetween(fromOf(a), fromOf(b)) <= within && distanceBetween(toOf(a), toOf(b)) <= within;
  const against = distanceBetween(fromOf(a), toOf(b)) <= within && distanceBetween(toOf(a), fromOf(b)) <= within;
  const agrees = (turned: boolean): boolean =>
    [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875].every(
      (s) => distanceBetween(pieceAt(a, s), pieceAt(b, turned ? 1 - s : s)) <= 2 * within,
    );
  return (along && agrees(false)) || (against && agrees(true));
};
