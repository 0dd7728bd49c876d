/** Loose pieces and the ends of theirs that meet, as a graph. */
import type { DrawnPiece } from '../piece/piece.ts';

/** Half edge 2i leaves the start of piece i along it, 2i + 1 leaves its end against it. */
export interface Graph {
  readonly pieces: readonly DrawnPiece[];
  /** Node that each half edge leaves. */
  readonly nodeOf: Int32Array;
  /** Half edges that leave each node. */
  readonly leaving: readonly (readonly number[])[];
}
