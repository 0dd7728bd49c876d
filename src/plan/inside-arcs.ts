/** Inside corners of a contour as the wire meets them: arcs and sharp turns that bend towards the wire. */

import { turnBetween } from '../geometry/angle.ts';
import type { Contour, Path } from '../geometry/contour.ts';
import { endDirection, startDirection } from '../geometry/measure.ts';
import type { Arc, Point } from '../geometry/segment.ts';
import { roundPairs } from '../sequence/sequence.ts';
import type { Kept } from './plan.ts';

/** Turns smaller than this (rad) are the noise of fitted curves and no corners. */
const NOISE = 0.02;

/** Arcs that the wire runs on the inside of. Contour counter-clockwise. */
export const insideArcs = (contour: Contour, kept: Kept): readonly Arc[] => arcsOn(contour, senseOf(kept));

/** Arcs that bend towards a wire on this side: 1 left of the way along them. */
export const arcsOn = ({ segments }: Contour | Path, side: 1 | -1): readonly Arc[] =>
  segments.filter((s): s is Arc => s.kind === 'arc' && Math.sign(s.sweep) === side);

/** Sharp inside corners with the rad by which the contour turns there. Contour counter-clockwise. */
export const insideTurns = (contour: Contour, kept: Kept): readonly { readonly at: Point; readonly turn: number }[] =>
  roundPairs(contour.segments).flatMap(([s, next]) => {
    const u = endDirection(s);
    const v = startDirection(next);
    const turn = turnBetween(u.x, u.y, v.x, v.y) * senseOf(kept);
    return turn > NOISE ? [{ at: s.to, turn }] : [];
  });

/** mm: 0 where an inside corner is sharp, infinite where there is none at all. Contour counter-clockwise. */
export const smallestInsideRadius = (contour: Contour, kept: Kept): number => {
  const sharp = insideTurns(contour, kept).length > 0;
  return sharp ? 0 : insideArcs(contour, kept).reduce((least, a) => Math.min(least, a.radius), Number.POSITIVE_INFINITY);
};

/** The wire runs inside a die-type contour, where a turn to the left is an inside corner, and outside a punch-type one. */
const senseOf = (kept: Kept): 1 | -1 => (kept === 'die' ? 1 : -1);
