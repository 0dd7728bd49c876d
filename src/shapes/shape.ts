/** What numbers turn into: exact contours, and the sizes one would measure on the piece. */

import type { Contour } from '../geometry/contour.ts';
import type { Point } from '../geometry/segment.ts';
import type { Figure } from '../quantity/figure.ts';
import type { Finding } from '../text/finding.ts';
import type { Text } from '../text/text.ts';

/** One contour of a shape, in mm, counter-clockwise, about the middle of the shape at 0, 0. */
export interface Outline {
  readonly contour: Contour;
  /** Which side of it is metal that is kept: `inside` for a punch (an outer form), `outside` for an opening. */
  readonly metal: 'inside' | 'outside';
  /** Layer it is drawn on; the kind of the shape when left out. */
  readonly layer?: string;
}

/** How a size is taken, so that it can be drawn beside its number. Lengths in mm. */
export type Taking =
  /** A straight distance between two places. */
  | { readonly kind: 'distance'; readonly from: Point; readonly to: Point }
  /** A circle about a centre; `drawn` for one that is no edge of the piece, as a base or pitch circle. */
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number; readonly drawn?: true | undefined }
  /** A radius, by its centre and a place on it. */
  | { readonly kind: 'radius'; readonly centre: Point; readonly at: Point }
  /** A size over, or between, pins that lie in spaces; `from` to `to` is the size itself. */
  | { readonly kind: 'pins'; readonly centres: readonly Point[]; readonly diameter: number; readonly from: Point; readonly to: Point };

/** A size of the piece as it is cut, `Figure.key` unique within the shape, as in 'span' or 'over-pins'. */
export interface ShapeSize {
  readonly figure: Figure;
  /** Limits of the size, where a standard or the request gives them, in the unit of the figure. */
  readonly limits?: { readonly low: number; readonly high: number } | undefined;
  /** How far the size moves when each wall it lies between stands back by one; 2 when left out. */
  readonly moves?: number;
  readonly taking?: Taking | undefined;
}

export interface Shape {
  /** In words with the numbers that make it: 'Spur gear, module 2 mm, 20 teeth'. */
  readonly name: Text;
  readonly outlines: readonly Outline[];
  /** Start holes that suit it, as in the counters of letters. */
  readonly starts: readonly Point[];
  readonly sizes: readonly ShapeSize[];
  /** Greatest distance from the true curves to the contours, mm; 0 where all is lines and arcs. */
  readonly fitDeviation: number;
  /** Smallest inside corner of kept metal that the wire has to get into, mm; none where there is no inside corner. */
  readonly insideRadius?: number | undefined;
  /** Limits, undercut, points, interference: what still can be cut, but has to be known. */
  readonly findings: readonly Finding[];
}

/** `refused`: there is no such shape, or a straight wall cannot have it; each finding has the field it concerns. */
export type MadeShape =
  | { readonly kind: 'made'; readonly shape: Shape }
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] };
