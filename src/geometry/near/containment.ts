/** Which contour lies inside which, by an index over their bounds and exact containment. */
import Flatbush from 'flatbush';
import { areaOf, boundsOfChain } from '../area.ts';
import { clockwise, counterClockwise } from '../chain.ts';
import type { Contour, Region } from '../contour.ts';
import { pointAt } from '../measure.ts';
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
export const nest = (contours: readonly Contour[], edge: number): readonly Nested[] => {
  if (contours.length === 0) return [];
  const areas = contours.map((c) => Math.abs(areaOf(c)));
  const bounds = contours.map(boundsOfChain);
  const index = new Flatbush(contours.length);
  for (const b of bounds) index.add(b.minX, b.minY, b.maxX, b.maxY);
  index.finish();
  const lookups: (Lookup | undefined)[] = [];
  const lookup = (i: number): Lookup => (lookups[i] ??= lookupOf(contours[i]!));
  const nested: Nested[] = contours.map(() => ({ parent: -1, depth: 0 }));
  // From the largest to the smallest, so that a parent's depth is known before its children ask.
  const order = contours.map((_, i) => i).sort((i, j) => areas[j]! - areas[i]!);
  for (const i of order) {
    const b = bounds[i]!;
    const around = index.search(b.minX, b.minY, b.minX, b.minY, (j, minX, minY, maxX, maxY) => {
      return j !== i && areas[j]! > areas[i]! && minX <= b.minX && minY <= b.minY && maxX >= b.maxX && maxY >= b.maxY;
    });
    const parent = around.sort((j, k) => areas[j]! - areas[k]!).find((j) => holds(lookup(j), contours[i]!, edge));
    if (parent !== undefined) nested[i] = { parent, depth: nested[parent]!.depth + 1 };
  }
  return nested;
};

/** The regions that contours bound by turns: each contour of even depth with the contours straight inside it as holes. */
export const regionsOf = (contours: readonly Contour[], edge: number): readonly Region[] => {
  const nested = nest(contours, edge);
  const holes: Contour[][] = contours.map(() => []);
  nested.forEach((n, i) => {
    if (n.depth % 2 === 1) holes[n.parent]!.push(clockwise(contours[i]!));
  });
  return contours.flatMap((c, i) => (nested[i]!.depth % 2 === 0 ? [{ outer: counterClockwise(c), holes: holes[i]! }] : []));
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
