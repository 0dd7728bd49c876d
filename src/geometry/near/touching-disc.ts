/** The largest disc that touches a contour at a place and has no other part of it inside: how much room there is. */

import type { Point } from '../segment.ts';
import { distanceBetween } from '../segment.ts';
import { nearestTo } from './clearance-to.ts';
import type { Lookup } from './lookup.ts';

export interface TouchingDisc {
  readonly radius: number;
  /** Where it touches on the other side; none where the largest disc asked for fits. */
  readonly other?: Point;
}

/**
 * Begins with the largest radius asked for and shrinks the disc to touch whatever is found inside it.
 *
 * @param at on the contour. @param aside unit vector to the side of the disc.
 */
export const touchingDisc = (lookup: Lookup, at: Point, aside: Point, most: number): TouchingDisc => {
  let disc: TouchingDisc = { radius: most };
  // Every step but the last one finds a nearer obstacle; a handful is usual, the bound only keeps rounding from going round.
  for (let step = 0; step < 60; step += 1) {
    const { radius } = disc;
    const found = nearestTo(lookup, { x: at.x + aside.x * radius, y: at.y + aside.y * radius });
    if (found.distance >= radius - 1e-9) return disc;
    const reach = distanceBetween(found.at, at);
    const ahead = (found.at.x - at.x) * aside.x + (found.at.y - at.y) * aside.y;
    if (reach < 1e-7 || ahead < 1e-12) return disc;
    const smaller = (reach * reach) / (2 * ahead);
    if (smaller >= radius - 1e-10) return disc;
    disc = { radius: smaller, other: found.at };
  }
  return disc;
};
