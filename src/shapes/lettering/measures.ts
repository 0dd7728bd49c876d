/** What is narrow in lettering: the narrowest way for the wire, and the thinnest metal that stays. */
import { boundsOfChain } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { closestBetweenChains } from '../../geometry/near/closest.ts';
import type { Nested } from '../../geometry/near/containment.ts';
import { narrowestGap } from '../../geometry/near/narrowest.ts';
import type { Point } from '../../geometry/segment.ts';

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
  contours.forEach((c, i) => {
    const depth = nested[i]!.depth;
    for (const across of ['inside', 'outside'] as const) {
      const side = (depth + (across === 'inside' ? 1 : 0)) % 2;
      const gap = narrowestGap(c, across, best[side]?.distance);
      if (gap.kind === 'gap') best[side] = gap;
    }
  });
  const [ground, ink] = best;
  const [metal, opening] = inks === 'metal' ? [ink, ground] : [ground, ink];
  return { opening, metal };
};

/** The narrowest between neighbours, which lie in the same contour, or one straight in the other: first of the ground, which an even number of contours lies round, then of ink. */
const between = (contours: readonly Contour[], nested: readonly Nested[]): [Gap | undefined, Gap | undefined] => {
  const boxes = contours.map(boundsOfChain);
  const best: [Gap | undefined, Gap | undefined] = [undefined, undefined];
  contours.forEach((a, i) => {
    for (let j = 0; j < i; j += 1) {
      const [one, other] = [nested[i]!, nested[j]!];
      const depth = one.parent === other.parent ? one.depth : one.parent === j ? one.depth : other.parent === i ? other.depth : -1;
      if (depth < 0 || apart(boxes[i]!, boxes[j]!) >= (best[depth % 2]?.distance ?? Number.POSITIVE_INFINITY)) continue;
      const { distance, first, second } = closestBetweenChains(a, contours[j]!, 1e-9);
      if (distance < (best[depth % 2]?.distance ?? Number.POSITIVE_INFINITY)) best[depth % 2] = { distance, from: first.at, to: second.at };
    }
  });
  return best;
};

type Box = ReturnType<typeof boundsOfChain>;

const apart = (a: Box, b: Box): number =>
  Math.hypot(Math.max(0, a.minX - b.maxX, b.minX - a.maxX), Math.max(0, a.minY - b.maxY, b.minY - a.maxY));
