/** What is narrow in lettering: the narrowest way for the wire, and the thinnest metal that stays. */
import { boundsOfChain } from '../../geometry/area.ts';
import { closestBetweenChains } from '../../geometry/closest.ts';
import type { Contour } from '../../geometry/contour.ts';
import { narrowestGap } from '../../geometry/narrowest.ts';
import type { Nested } from '../../geometry/nest.ts';
import type { Point } from '../../geometry/segment.ts';

export interface Gap {
  readonly distance: number;
  readonly from: Point;
  readonly to: Point;
}

export interface Narrow {
  /** Nothing where nothing faces anything, as round a single disc. */
  readonly opening?: Gap;
  readonly metal?: Gap;
}

/** `inks` says whether the letters themselves are metal. Contours with how they lie in each other: even depths run round a letter. */
export const narrowOf = (contours: readonly Contour[], nested: readonly Nested[], inks: 'metal' | 'opening'): Narrow => {
  const ink: Gap[] = [];
  const ground: Gap[] = [];
  contours.forEach((c, i) => {
    const even = nested[i]!.depth % 2 === 0;
    for (const across of ['inside', 'outside'] as const) {
      const gap = narrowestGap(c, across);
      if (gap.kind === 'gap') (even === (across === 'inside') ? ink : ground).push(gap);
    }
  });
  for (const { depth, gap } of between(contours, nested)) (depth % 2 === 1 ? ink : ground).push(gap);
  const [inkLeast, groundLeast] = [least(ink), least(ground)];
  const [metal, opening] = inks === 'metal' ? [inkLeast, groundLeast] : [groundLeast, inkLeast];
  return { ...(opening === undefined ? {} : { opening }), ...(metal === undefined ? {} : { metal }) };
};

const least = (gaps: readonly Gap[]): Gap | undefined =>
  gaps.reduce<Gap | undefined>((best, g) => (best === undefined || g.distance < best.distance ? g : best), undefined);

/** Neighbours: contours in the same one, or one straight in the other. `depth` is how many contours lie round what is between them. */
const between = (contours: readonly Contour[], nested: readonly Nested[]): readonly { readonly depth: number; readonly gap: Gap }[] => {
  const boxes = contours.map(boundsOfChain);
  const best: (Gap | undefined)[] = [];
  contours.forEach((a, i) => {
    for (let j = 0; j < i; j += 1) {
      const [one, other] = [nested[i]!, nested[j]!];
      const depth = one.parent === other.parent ? one.depth : one.parent === j ? one.depth : other.parent === i ? other.depth : -1;
      if (depth < 0 || apart(boxes[i]!, boxes[j]!) >= (best[depth % 2]?.distance ?? Number.POSITIVE_INFINITY)) continue;
      const { distance, first, second } = closestBetweenChains(a, contours[j]!, 1e-9);
      if (distance < (best[depth % 2]?.distance ?? Number.POSITIVE_INFINITY)) best[depth % 2] = { distance, from: first.at, to: second.at };
    }
  });
  return best.flatMap((gap, depth) => (gap === undefined ? [] : [{ depth, gap }]));
};

type Box = ReturnType<typeof boundsOfChain>;

const apart = (a: Box, b: Box): number =>
  Math.hypot(Math.max(0, a.minX - b.maxX, b.minX - a.maxX), Math.max(0, a.minY - b.maxY, b.minY - a.maxY));
