/** Chains of segments: closed contours, open paths, and regions bounded by contours. */
import type { Segment } from './segment.ts';

/**
 * A closed chain: each segment starts with exactly the numbers the one before ends with, the last one ends where the
 * first starts, and it has at least one segment (a full circle) and no zero-length ones. Counter-clockwise contours have
 * positive area.
 */
export interface Contour {
  readonly closed: true;
  readonly segments: readonly Segment[];
}

/** An open chain, joined in the same way. */
export interface Path {
  readonly closed: false;
  readonly segments: readonly Segment[];
}

export type Chain = Contour | Path;

/** Metal or opening with holes: `outer` runs counter-clockwise, `holes` clockwise, none of them crosses another. */
export interface Region {
  readonly outer: Contour;
  readonly holes: readonly Contour[];
}

export const contour = (segments: readonly Segment[]): Contour => ({ closed: true, segments });

export const path = (segments: readonly Segment[]): Path => ({ closed: false, segments });
