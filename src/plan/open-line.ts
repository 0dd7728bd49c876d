/** Open lines of a drawing that are cut: what is asked of them, and what is decided. Lengths in mm. */
import type { Path } from '../geometry/contour.ts';
import type { Line, Point } from '../geometry/segment.ts';
import type { Figure } from '../quantity/figure.ts';

/** The metal left or right of the line's way stays, or both sides stay and the middle of the kerf runs along it. */
export type OpenKept = 'left' | 'right' | 'slit';

export interface WantedLine {
  readonly id: string;
  readonly path: Path;
  readonly kept: OpenKept;
  /** mm by which it may leave the curve that was drawn, where arcs stand for it; none when left out. */
  readonly fit?: number | undefined;
}

/**
 * Where the wire comes in or goes out. `edge`: beside the block. `hole`: threaded in a hole. `blind`: it stops in the metal, as only a
 * slit may.
 */
export type OpenEnd =
  | { readonly kind: 'edge'; readonly at: Point }
  | {
      readonly kind: 'hole';
      readonly at: Point;
      readonly diameter: number;
      readonly origin: 'drawing' | 'placed';
      readonly past?: number | undefined;
    }
  | { readonly kind: 'blind'; readonly at: Point };

export interface OpenCutPlan {
  readonly chain: string;
  readonly kept: OpenKept;
  /** As wanted, in the drawing's direction. */
  readonly path: Path;
  readonly from: OpenEnd;
  readonly to: OpenEnd;
  /** Slits besides the line itself that its leads leave in the block. */
  readonly leads: readonly Line[];
  /** Per pass; a slit has one course, which both are. Extended to where the wire comes in and goes out. */
  readonly courses: readonly { readonly pass: number; readonly programmed: Path; readonly centre: Path }[];
  /** The smaller of the two pieces into which the line parts the block, and the metal left standing until somebody holds it. */
  readonly piece?: { readonly role: 'waste' | 'part'; readonly area: number; readonly mass: Figure; readonly tab: number } | undefined;
}

/** 1 where the wire runs left of the line's way. */
export const wireSide = (kept: 'left' | 'right'): 1 | -1 => (kept === 'left' ? -1 : 1);
