/** Chains of segments: closed contours, open paths, and regions bounded by contours. */
import { aroundAt, isFilled, type NonEmpty, neighbours, roundPairs } from '../sequence/sequence.ts';
import { line, type Point, type Segment } from './segment.ts';

/**
 * A closed chain: each segment starts with exactly the numbers the one before ends with, the last one ends where the
 * first starts, and it has at least one segment (a full circle) and no zero-length ones. Counter-clockwise contours have
 * positive area.
 */
export interface Contour {
  readonly closed: true;
  readonly segments: NonEmpty<Segment>;
}

/** An open chain, joined in the same way. */
export interface Path {
  readonly closed: false;
  readonly segments: NonEmpty<Segment>;
}

export type Chain = Contour | Path;

/** Metal or opening with holes: `outer` runs counter-clockwise, `holes` clockwise, none of them crosses another. */
export interface Region {
  readonly outer: Contour;
  readonly holes: readonly Contour[];
}

/** @throws RangeError when there is no segment: who joins segments sees to it that there is one. */
export const contour = (segments: readonly Segment[]): Contour => ({ closed: true, segments: filled(segments) });

/** @throws RangeError when there is no segment. */
export const path = (segments: readonly Segment[]): Path => ({ closed: false, segments: filled(segments) });

const filled = (segments: readonly Segment[]): NonEmpty<Segment> => {
  if (isFilled(segments)) return segments;
  throw new RangeError('a chain has at least one segment');
};

/** Straight lines from corner to corner and back to the first. */
export const polygon = (corners: readonly Point[]): Contour => contour(roundPairs(corners).map(([from, to]) => line(from, to)));

/** Straight lines from place to place. */
export const polyline = (places: readonly Point[]): Path => path(neighbours(places).map(([from, to]) => line(from, to)));

/** Segments of a closed chain are counted round and round; an open one has none before its first and after its last. */
export const segmentAt = (chain: Chain, index: number): Segment | undefined =>
  chain.closed ? aroundAt(chain.segments, index) : chain.segments[index];
