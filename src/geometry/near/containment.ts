/** Which contour lies inside which, by an index over their bounds and exact containment. */
import { grouped } from '../../sequence/sequence.ts';
import { areaOf, boundsOfChain } from '../area.ts';
import { clockwise, counterClockwise } from '../chain.ts';
import type { Contour, Region } from '../contour.ts';
import { type Bounds, pointAt } from '../measure.ts';
import { boxIndexOf } from './box-index.ts';
import { containsIn } from './inside.ts';
import type { Lookup } from './lookup.ts';
import { lookupOf } from './lookup.ts';

export interface Nested {
  /** Number of the smallest contour around this one, -1 where there is none. */
  readonly parent: number;
  /** How many contours lie around this one: 0 is outermost, odd ones are holes. */
  readonly depth: number;
}

/**
 * Nesting of contours that do not cross. One entry per contour, in the same order. Contours may touch.
 *
 * @param edge mm: places this near another contour do not decide on which side of it a contour lies. Contours equal within
 * it lie outside each other.
 */
export const nest = (contours: readonly Contour[], edge: number): readonly Nested[] => nesting(contours, edge).map(({ nested }) => nested);

interface Sized {
  readonly contour: Contour;
  readonly number: number;
  readonly area: number;
  readonly bounds: Bounds;
  lookup?: Lookup;
  around?: Sized;
  nested: Nested;
}

const nesting = (contours: readonly Contour[], edge: number): readonly Sized[] => {
  const all = contours.map(
    (contour, number): Sized => ({
      contour,
      number,
      area: Math.abs(areaOf(contour)),
      bounds: boundsOfChain(contour),
      nested: { parent: -1, depth: 0 },
    }),
  );
  const index = boxIndexOf(all, ({ bounds }) => bounds);
  // From the largest to the smallest, so that a parent's depth is known before its children ask.
  for (const one of all.toSorted((p, q) => q.area - p.area)) {
    const parent = index
      .search(lowCornerOf(one.bounds), (other) => other !== one && other.area > one.area && isWithin(one.bounds, other.bounds))
      .sort((p, q) => p.area - q.area)
      .find((other) => holds(lookupFor(other), one.contour, edge));
    if (parent === undefined) continue;
    one.around = parent;
    one.nested = { parent: parent.number, depth: parent.nested.depth + 1 };
  }
  return all;
};

/** Made for those only that lie around another. */
const lookupFor = (one: Sized): Lookup => {
  one.lookup ??= lookupOf(one.contour);
  return one.lookup;
};

const lowCornerOf = ({ minX, minY }: Bounds): Bounds => ({ minX, minY, maxX: minX, maxY: minY });

const isWithin = (inner: Bounds, outer: Bounds): boolean =>
  outer.minX <= inner.minX && outer.minY <= inner.minY && outer.maxX >= inner.maxX && outer.maxY >= inner.maxY;

/** The regions that contours bound by turns: each contour of even depth with the contours straight inside it as holes. */
export const regionsOf = (contours: readonly Contour[], edge: number): readonly Region[] => {
  const all = nesting(contours, edge);
  const holes = grouped(
    all.filter(({ nested }) => nested.depth % 2 === 1),
    ({ around }) => around,
  );
  return all
    .filter(({ nested }) => nested.depth % 2 === 0)
    .map((one) => ({ outer: counterClockwise(one.contour), holes: (holes.get(one) ?? []).map((hole) => clockwise(hole.contour)) }));
};

/** The first place of the inner contour that is clear of the outer one decides. */
const holds = (outer: Lookup, inner: Contour, edge: number): boolean => {
  for (const share of [0, 0.5, 0.25, 0.75]) {
    for (const s of inner.segments) {
      const side = containsIn(outer, pointAt(s, share), edge);
      if (side !== 'on the edge') return side === 'inside';
    }
  }
  return false;
};
