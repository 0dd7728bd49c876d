/** What is asked when pieces are laid into a plate, and what may be said about how they are turned. Lengths in mm. */
import type { Contour } from '../geometry/contour.ts';
import type { Text } from '../text/text.ts';

/** How a piece may be turned from the way it is drawn; with a step in degrees it must divide the full turn. */
export type Turns = 'none' | 'half turns' | 'quarter turns' | { readonly step: number };

/** One kind of piece and how many of it are wanted. */
export interface NestPiece {
  /** Unlike those of the other pieces. */
  readonly id: string;
  /** In either sense. */
  readonly outline: Contour;
  /** Openings in the piece; smaller pieces may be laid into them. */
  readonly holes?: readonly Contour[];
  readonly quantity: number;
  readonly turns: Turns;
  /** Pieces are never turned over: grain, burr side and tapered edges would come out wrong. */
  readonly mirrored: false;
}

/** `rows`: equal pieces in rows and columns. `free`: each where it fits best. `best`: both, and the better one is taken. */
export type Manner = 'rows' | 'free' | 'best';

export interface NestQuestion {
  /** Outline of the plate, a rectangle or any other contour, in either sense. */
  readonly plate: Contour;
  /** mm kept free along the edge of the plate, 0 or more. */
  readonly border: number;
  /** Clamps and holes: pieces keep a web from them as from each other. */
  readonly forbidden: readonly Contour[];
  readonly pieces: readonly NestPiece[];
  /** mm between pieces, edge to edge: the kerf and what must stand beside it. 0 or more. */
  readonly web: number;
  readonly manner: Manner;
  /** Steps of work to spend on looking for better layouts, counted, not timed. `USUAL_WORK` when left out. */
  readonly work?: number;
  /** Told now and then how much of the work is done; its answer may end the search, and the best layout so far is given. */
  readonly progress?: ((share: number, note: Text) => 'go on' | 'stop') | undefined;
}

/** Enough for 60 pieces; some ten seconds on one core of 2020. */
export const USUAL_WORK = 1_000_000_000;
