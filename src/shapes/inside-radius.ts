/** The smallest inside corner of a shape's metal: whatever bends towards it has to be reached by the wire. */
import { insideCorners } from '../geometry/joints.ts';
import type { Outline } from './shape.ts';

/** Turns smaller than this are where fitted arcs meet, rad. */
const SMOOTH = 0.02;

/** mm; 0 for a sharp one, nothing where metal bends nowhere inwards. */
export const insideRadiusOf = (outlines: readonly Outline[]): number | undefined => {
  const corners = outlines.flatMap(({ contour, metal }) => insideCorners(contour, metal === 'inside' ? 'outside' : 'inside', SMOOTH));
  return corners.length === 0 ? undefined : corners.reduce((least, c) => Math.min(least, c.radius), Number.POSITIVE_INFINITY);
};
