/** All that the papers of a nest may print: where the pieces lie, the metal and its price, the stack. */

import type { Contour } from '../geometry/contour.ts';
import type { LaidNest } from '../nest/nest-outcome.ts';
import type { Clamp } from '../plan/clamp.ts';
import type { Figure } from '../quantity/figure.ts';
import type { Finding } from '../text/finding.ts';

/** A piece where it lies on the plate. */
export interface LaidPiece {
  /** From 1, as on the picture. */
  readonly number: number;
  readonly piece: string;
  readonly copy: number;
  readonly degrees: number;
  readonly outline: Contour;
  readonly holes: readonly Contour[];
}

/** One line for each kind of piece; masses in kg for one of them, money in minor units. */
export interface PieceRow {
  readonly piece: string;
  readonly laid: number;
  readonly left: number;
  readonly mass: Figure;
  /** Its share of the price of the plate, scrap and all, by its metal. None where nobody knows a price. */
  readonly share?: Figure | undefined;
}

export interface NestFacts {
  readonly name: string;
  readonly day: string;
  readonly material: string;
  readonly thickness: number;
  readonly border: number;
  readonly web: number;
  readonly plate: Contour;
  readonly plateHoles: readonly Contour[];
  readonly forbidden: readonly Clamp[];
  readonly pieces: readonly LaidPiece[];
  readonly rows: readonly PieceRow[];
  readonly nest: LaidNest;
  readonly plateMass: Figure;
  readonly piecesMass: Figure;
  readonly scrapMass: Figure;
  /** Of the metal of one plate. */
  readonly platePrice?: Figure | undefined;
  readonly suppliedBy?: 'shop' | 'customer' | undefined;
  readonly currency?: string | undefined;
  readonly stack: { readonly sheets: number; readonly most: number; readonly height: Figure; readonly gap: Figure };
  readonly findings: readonly Finding[];
}
