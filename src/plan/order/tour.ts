/** The shortest way through points, open at its end: exact for few, near for many, with a length that no way can undercut. Lengths in mm. */

import { neighboursOf } from '../../geometry/near/neighbours.ts';
import { distanceBetween, type Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { exactOrder } from './exact.ts';
import { improved } from './improve.ts';
import { nearestFirst, nearestTo } from './nearest-first.ts';
import { shortened } from './shorten-tour.ts';
import { nearestBound, treeBound } from './tour-bound.ts';

export interface Tour {
  /** `exact`: no way is shorter. `near`: shortened until no small change helped. `quick`: shortened once, for very many points. */
  readonly kind: 'exact' | 'near' | 'quick';
  /** Numbers of the points in the order in which they are visited, each once. */
  readonly order: readonly number[];
  /** From the start, where one is given, to the last point. */
  readonly length: number;
  /** Steps counted while shortening: the same points always take the same. */
  readonly work: number;
}

export interface BoundedTour extends Tour {
  /** No way through these points is shorter than this. */
  readonly bound: number;
  /** How much longer the way found is than the bound, as a share: 0.02 is 2 %. The shortest way lies in between. */
  readonly gap: number;
}

/** So many points are solved exactly: the table of all subsets doubles with every point. */
export const MOST_EXACT = 12;
/** Beyond so many, shortening again and again would no longer pay. */
export const MOST_NEAR = 2000;

/** The way and how far it may be from the shortest. With `start` the way begins there; without it at whichever end is best. */
export const shortestTour = (points: readonly Point[], start?: Point): BoundedTour => {
  const tour = shortTour(points, start, THOROUGH);
  const bound = tour.kind === 'exact' ? tour.length : Math.min(tour.length, lowerBound(points, start));
  return { ...tour, bound, gap: tour.length > 0 ? tour.length / bound - 1 : 0 };
};

/**
 * The way alone, without a bound.
 * @param tries how often, for each point, the way is disturbed and shortened again.
 */
export const shortTour = (points: readonly Point[], start?: Point, tries: number = SWIFT): Tour => {
  const { kind, order, work } = wayOf(points, start, tries);
  return { kind, order, work, length: tourLength(points, order, start) };
};

const THOROUGH = 25;
const SWIFT = 1;

/** Length of the way through the points in an order, from the start where one is given. */
export const tourLength = (points: readonly Point[], order: readonly number[], start?: Point): number => {
  let length = 0;
  let here = start;
  for (const i of order) {
    const next = itemAt(points, i);
    if (here !== undefined) length += distanceBetween(here, next);
    here = next;
  }
  return length;
};

const wayOf = (points: readonly Point[], start: Point | undefined, tries: number): Omit<Tour, 'length'> => {
  if (points.length <= MOST_EXACT) return { kind: 'exact', ...exactOrder(points, start) };
  const first = nearestFirst(points, start === undefined ? corner(points) : nearestTo(points, start));
  if (points.length > MOST_NEAR) {
    const order = shortened(points, first, neighboursOf(points, FEW), start);
    return { kind: 'quick', order, work: points.length };
  }
  return { kind: 'near', ...improved(points, first, start, tries) };
};

/** More candidates than this for the next point hardly ever shorten the way. */
const FEW = 7;

const corner = (points: readonly Point[]): number =>
  points.reduce((best, p, i) => (p.x + p.y < itemAt(points, best).x + itemAt(points, best).y ? i : best), 0);

const lowerBound = (points: readonly Point[], start: Point | undefined): number => {
  const all = start === undefined ? points : [...points, start];
  return points.length > MOST_NEAR ? nearestBound(all) : treeBound(all, start !== undefined);
};
