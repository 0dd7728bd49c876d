/** Loops that come near each other: which pairs, where, and whether metal stays between them. */
import Flatbush from 'flatbush';
import { boundsOfChain } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import { closestBetweenChains } from '../geometry/near/closest.ts';
import { midpoint, type Point } from '../geometry/segment.ts';
import type { KeptLoop } from './kept-side.ts';

/** Numbers of loops whose boxes come within a distance. */
export const pairsNear = (cut: readonly KeptLoop[], distance: number): readonly (readonly [number, number])[] => {
  if (cut.length < 2) return [];
  const boxes = cut.map((k) => boundsOfChain(k.loop.contour));
  const index = new Flatbush(cut.length);
  for (const b of boxes) index.add(b.minX, b.minY, b.maxX, b.maxY);
  index.finish();
  return boxes.flatMap((b, i) =>
    index
      .search(b.minX - distance, b.minY - distance, b.maxX + distance, b.maxY + distance)
      .filter((j) => j > i)
      .map((j) => [i, j] as const),
  );
};

export const isNested = (a: KeptLoop, b: KeptLoop): boolean => a.loop.parent === b.loop.id || b.loop.parent === a.loop.id;

/** Between two openings, or an opening and the part around it, metal stays; all else between two contours is waste. */
export const metalStaysBetween = (a: KeptLoop, b: KeptLoop): boolean => {
  const outer = a.loop.parent === b.loop.id ? b : a;
  return isNested(a, b) ? outer.kept === 'punch' : a.kept === 'die' && b.kept === 'die';
};

export interface Near {
  readonly at: Point;
  readonly width: number;
}

/** Where two contours are nearest, when that is nearer than `most`. */
export const nearestPlace = (a: Contour, b: Contour, most: number): Near | undefined => {
  const { distance, first, second } = closestBetweenChains(a, b, 0);
  return distance < most ? { at: midpoint(first.at, second.at), width: distance } : undefined;
};
