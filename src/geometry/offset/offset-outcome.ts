/** What can come out of an offset: the named cases, and what each of them knows. */
import type { NonEmpty } from '../../sequence/sequence.ts';
import type { Contour, Path, Region } from '../contour.ts';
import type { Point } from '../segment.ts';

/** One place where the input meets itself; no offset is made of such an input. */
export interface SelfMeeting {
  readonly kind: 'crossing' | 'touching' | 'overlap';
  readonly at: Point;
  /** Contour numbers (0 is the only or outer one, then the holes in order) and segment numbers in them. */
  readonly first: { readonly contour: number; readonly segment: number };
  readonly second: { readonly contour: number; readonly segment: number };
}

export interface SelfCrossing {
  readonly kind: 'self-crossing';
  readonly places: NonEmpty<SelfMeeting>;
}

/** The input breaks the promise of its type, or, as a last resort, the result could not be traced without contradiction. */
export interface Unsound {
  readonly kind: 'unsound';
  readonly what:
    | 'distance is not a number'
    | 'not a number'
    | 'not joined'
    | 'zero-length segment'
    | 'arc does not fit its ends'
    | 'arc of more than a turn'
    | 'wrong winding'
    | 'result contradicts itself';
  readonly at: Point;
  /** How wide the gap or the misfit is, or the distance of the offset, mm; the sweep of an arc of more than a turn, rad. */
  readonly amount?: number | undefined;
}

/** Nothing is left, and this was checked by another way than the offset itself. */
export interface Vanished {
  readonly kind: 'vanished';
  /** mm: the largest distance to the boundary that was found inside, and the place of it. Not more than the offset asked for. */
  readonly widest: number;
  readonly at: Point;
  /** mm: proved by bounds that no place inside is farther from the boundary than this. */
  readonly atMost: number;
}

/** What is told beside the result. */
export interface Remarks {
  /** Corners whose extension would have reached too far, and which were rounded instead; empty for `join: 'arc'`. */
  readonly rounded: readonly Point[];
  /** How many closed slivers narrower than `SLIVER_WIDTH` were left out. */
  readonly slivers: number;
}

export interface OffsetContours extends Remarks {
  readonly kind: 'offset';
  /** Largest first; they run the same way round as the source. */
  readonly contours: readonly Contour[];
  /** Pockets that an outward offset closes off: they run the other way round, and no tool of that size gets into them. */
  readonly enclosed: readonly Contour[];
}

export interface OffsetPaths extends Remarks {
  readonly kind: 'offset';
  /** In the order in which the source passes them. */
  readonly paths: readonly Path[];
  /** Where the offset runs into itself it may close. */
  readonly loops: readonly Contour[];
}

export interface OffsetRegions extends Remarks {
  readonly kind: 'offset';
  /** Largest first. */
  readonly regions: readonly Region[];
}

export type OffsetContourOutcome = OffsetContours | Vanished | SelfCrossing | Unsound;
export type OffsetPathOutcome = OffsetPaths | { readonly kind: 'vanished' } | SelfCrossing | Unsound;
export type OffsetRegionOutcome = OffsetRegions | Vanished | SelfCrossing | Unsound;

export interface OffsetOptions {
  /**
   * How corners on the side that opens are bridged: by an arc of the offset's radius about the corner (default), or by
   * continuing both sides, arcs by their tangents, until they meet.
   */
  readonly join?: 'arc' | 'intersection';
  /** With `intersection`: corners that would reach more than this many times the offset from their corner get an arc. Default 2. */
  readonly reach?: number;
}

/** mm: closed results with less mean width (twice the area over the perimeter) are left out. */
export const SLIVER_WIDTH = 1e-6;

/** mm: results have no segments shorter than this; their ends are drawn together. */
export const SHORTEST = 1e-7;
