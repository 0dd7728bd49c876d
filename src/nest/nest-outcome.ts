/** What comes out when pieces are laid into a plate: where each lies, what is left over, and how much of the plate is used. */

import type { Bounds } from '../geometry/measure.ts';
import type { Finding } from '../text/finding.ts';

/** One piece that was laid. Its outline as drawn is turned about the drawing's origin, then moved. */
export interface PlacedPiece {
  /** The id of the piece in the question. */
  readonly piece: string;
  /** Which of the pieces of that kind, from 1. */
  readonly copy: number;
  /** Counter-clockwise, 0 or more and below 360. */
  readonly degrees: number;
  /** mm. */
  readonly dx: number;
  readonly dy: number;
}

/** Pieces of a kind that found no place. */
export interface Left {
  readonly piece: string;
  /** At least 1. */
  readonly quantity: number;
}

export interface LaidNest {
  readonly kind: 'laid';
  /** In the order of the kinds in the question, then by copy. */
  readonly placed: readonly PlacedPiece[];
  readonly left: readonly Left[];
  /** The manner of the better layout, where both were tried. */
  readonly manner: 'rows' | 'free';
  /** Metal of the pieces laid, openings in them taken off, by the area of the whole plate: 0 up to 1. */
  readonly yield: number;
  /**
   * The share that area alone would allow: pieces taken with half a web all round, those with most metal for their room first,
   * until the room inside the border and beside the forbidden zones is full. No layout of these pieces is above it.
   */
  readonly bound: number;
  /** mm²: what `yield` is the ratio of. */
  readonly metalArea: number;
  readonly plateArea: number;
  /** The box around all pieces laid; when none was laid, a box of no size at the plate's lower left corner. */
  readonly used: Bounds;
  /** Whether the questioner ended the search; the layout is whole all the same. */
  readonly stopped: boolean;
  readonly findings: readonly Finding[];
}

export interface RefusedNest {
  readonly kind: 'refused';
  readonly findings: readonly Finding[];
}

export type Nest = LaidNest | RefusedNest;
