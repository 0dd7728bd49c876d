/** What is narrow in lettering: the narrowest way for the wire, and the thinnest metal that stays. */

import { boundsOfChain } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { closestBetweenChains } from '../../geometry/near/closest.ts';
import type { Nested } from '../../geometry/near/containment.ts';
import { narrowestGap } from '../../geometry/near/narrowest.ts';
import type { Point } from '../../geometry/segment.ts';
import { sideBySide } from '../../sequence/sequence.ts';

export interface Gap {
  readonly distance: number;
  readonly from: Point;
  readonly to: Point;
}

export interface Narrow {
  /** Nothing where nothing faces anything, as round a single disc. */
  readonly opening?: Gap | undefined;
  readonly metal?: Gap | undefined;
}

/** `inks` says whether the letters themselves are metal. Contours with how they lie in each other: even depths run round a letter. */
export const narrowOf = (contours: readonly Contour[], nested: readonly Nested[], inks: 'metal' | 'opening'): Narrow => {
  // What is between two contours is found fast, and spares much of the looking across single ones.
  const best = between(contours, nested);
  for (const [c, { depth }] of sideBySide(contours, nested)) {
    for (const across of ['inside', 'outside'] as const) {
      const side = (depth + (across === 'inside' ? 1 : 0)) % 2;
      const gap = narrowestGap(c, across, best[side]?.distance);
      if (gap.kind === 'gap') best[side] = gap;
    }
  }
  const [ground, ink] = best;
  const [metal, opening] = inks === 'metal' ? [ink, ground] : [ground, ink];
  return { opening, metal };
};

/** The narrowest between neighbours, which lie in the same contour, or one straight in the other: first of the ground, which an even number of contours lies round, then of ink. */
const between = (contours: readonly Contour[], nested: readonly Nested[]): [Gap | undefined, Gap | undefined] => {
  const lying = sideBySide(contours, nested).map(([contour, within]) => ({ contour, within, box: boundsOfChain(contour) }));
  const best: [Gap | undefined, Gap | undefined] = [undefined, undefined];
  lying.forEach(({ contour: a, within: one, box }, i) => {
    for (const [j, { contour: b, within: other, box: otherBox }] of lying.slice(0, i).entries()) {
      const depth = one.parent === other.parent ? one.depth : one.parent === j ? one.depth : other.parent === i ? other.depth : -1;
      if (depth < 0 || apart(box, otherBox) >= (best[depth % 2]?.distance ?? Number.POSITIVE_INFINITY)) continue;
      const { distance, first, second } = closestBetweenChains(a, b, 1e-9);
      if (distance < (best[depth % 2]?.distance ?? Number.POSITIVE_INFINITY)) best[depth % 2] = { distance, from: first.at, to: second.at };
    }
  });
  return best;
};

type Box = ReturnType<typeof boundsOfChain>;

const apart = (a: Box, b: Box): number =>
  Math.hypot(Math.max(0, a.minX - b.maxX, b.minX - a.maxX), Math.max(0, a.minY - b.maxY, b.minY - a.maxY));
