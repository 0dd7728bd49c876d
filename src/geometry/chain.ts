/** Turning and restarting whole chains; the places do not change. */

import { areaOf } from './area.ts';
import type { Chain, Contour, Region } from './contour.ts';
import { contour } from './contour.ts';
import { reverse, split } from './cut.ts';

/** The same chain travelled the other way. */
export const reverseChain = <C extends Chain>(chain: C): C => ({ ...chain, segments: chain.segments.map(reverse).reverse() });

/** The same contour started at a place on it, by segment and share; a share inside a segment splits it. */
export const startAt = (c: Contour, segment: number, share: number): Contour => {
  const count = c.segments.length;
  const chosen = c.segments[segment];
  if (chosen === undefined) throw new RangeError(`the contour has ${count} segments, none with the number ${segment}`);
  if (share <= 0) return contour([...c.segments.slice(segment), ...c.segments.slice(0, segment)]);
  if (share >= 1) return contour([...c.segments.slice(segment + 1), ...c.segments.slice(0, segment + 1)]);
  const [before, after] = split(chosen, share);
  return contour([after, ...c.segments.slice(segment + 1), ...c.segments.slice(0, segment), before]);
};

/** The contour with positive area: reversed when it runs clockwise. */
export const counterClockwise = (c: Contour): Contour => (areaOf(c) < 0 ? reverseChain(c) : c);

/** The contour with negative area. */
export const clockwise = (c: Contour): Contour => (areaOf(c) > 0 ? reverseChain(c) : c);

/** A region from contours in either sense: the outer one is turned counter-clockwise, the holes clockwise. */
export const regionOf = (outer: Contour, holes: readonly Contour[] = []): Region => ({
  outer: counterClockwise(outer),
  holes: holes.map(clockwise),
});
