/** Loops that come near each other: which pairs, where, and whether metal stays between them. */
import { boundsOfChain, widened } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import { boxIndexOf } from '../geometry/near/box-index.ts';
import { closestBetweenChains } from '../geometry/near/closest.ts';
import { midpoint, type Point } from '../geometry/segment.ts';
import type { KeptLoop } from './kept-side.ts';

/** Numbers of loops whose boxes come within a distance. */
export const pairsNear = (cut: readonly KeptLoop[], distance: number): readonly (readonly [number, number])[] => {
  if (cut.length < 2) return [];
  const boxes = cut.map(({ loop }, number) => ({ number, box: boundsOfChain(loop.contour) }));
  const index = boxIndexOf(boxes, ({ box }) => box);
  return boxes.flatMap(({ number, box }) =>
    index.search(widened(box, distance), (other) => other.number > number).map((other) => [number, other.number] as const),
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
