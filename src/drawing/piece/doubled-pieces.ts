/** What became of pieces that are drawn more than once. */

import type { Point } from '../../geometry/segment.ts';
import type { DrawnPiece } from './piece.ts';

/** A stretch of which `copies` more than one were drawn. */
export interface Doubled {
  readonly at: Point;
  readonly size: number;
  readonly copies: number;
}

export interface Single {
  readonly pieces: readonly DrawnPiece[];
  readonly doubled: readonly Doubled[];
}
