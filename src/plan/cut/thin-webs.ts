/** Webs between two cuts that are thin enough to spring: their openings are roughed before any of them is finished. */

import { itemAt } from '../../sequence/sequence.ts';
import type { KeptLoop } from '../kept-side.ts';
import { metalStaysBetween, type Near, nearestPlace, pairsNear } from '../near-pairs.ts';
import type { OverridesAsked, WayAsked } from '../question.ts';
import type { Pair, WebLimits } from './webs.ts';

/** A web that holds its shape is at least this thick, mm: common practice, no source. */
export const WEB = 1;

export interface NearPair extends Near {
  readonly loops: Pair;
  /** Two openings of one depth, of which either can wait for the other. */
  readonly alike: boolean;
}

export const areAlike = (a: KeptLoop, b: KeptLoop): boolean => a.kept === 'die' && b.kept === 'die' && a.loop.depth === b.loop.depth;

/** Whether metal of this width is a web that springs: nearer than a kerf it is told by `webs.ts`. */
export const isThinWeb = ({ width }: Near, { kerf }: WebLimits): boolean => width >= kerf && width < kerf + WEB;

/**
 * The openings that are roughed first, by id: both sides of every thin web between two openings of one depth. An order set by hand rules,
 * and where all is roughed first anyway nothing more is asked for.
 */
export const roughedFirst = (
  cut: readonly KeptLoop[],
  limits: WebLimits,
  { run, order = [] }: WayAsked & OverridesAsked,
): ReadonlySet<string> => {
  if (run !== 'attended' || order.length > 0) return new Set();
  const openings = cut.filter(({ kept }) => kept === 'die');
  const pairs = pairsNear(openings, limits.kerf + WEB).map(([i, j]) => [itemAt(openings, i), itemAt(openings, j)] as const);
  const thin = pairs.filter(([a, b]) => {
    if (!areAlike(a, b) || !metalStaysBetween(a, b)) return false;
    const near = nearestPlace(a.loop.contour, b.loop.contour, limits.kerf + WEB);
    return near !== undefined && isThinWeb(near, limits);
  });
  return new Set(thin.flatMap(([a, b]) => [a.loop.id, b.loop.id]));
};
