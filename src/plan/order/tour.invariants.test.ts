/** What holds for the way through any points: each once, never above the plainest way, never below a bound, exact for few. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { distanceBetween, type Point, point } from '../../geometry/segment.ts';
import { nearestFirst, nearestTo } from './nearest-first.ts';
import { shortestTour, shortTour, tourLength } from './tour.ts';
import { nearestBound, treeBound } from './tour-bound.ts';

const fixed = { seed: 20261125, numRuns: 60 };
/** Whole numbers on a small field: many points on a line, at equal distances or on one spot. */
const places = (minLength: number, maxLength: number, most: number) =>
  fc.array(
    fc.tuple(fc.integer({ min: 0, max: most }), fc.integer({ min: 0, max: most })).map(([x, y]) => point(x, y)),
    { minLength, maxLength },
  );
const start = fc.option(fc.tuple(fc.integer({ min: -9, max: 99 }), fc.integer({ min: -9, max: 99 })), { nil: undefined });
const spot = (at: readonly [number, number] | undefined): Point | undefined => (at === undefined ? undefined : point(at[0], at[1]));

/** By trying every order. */
const shortest = (points: readonly Point[], from: Point | undefined): number => {
  if (points.length === 0) return 0;
  return Math.min(...points.map((p, i) => (from === undefined ? 0 : distanceBetween(from, p)) + shortest(points.toSpliced(i, 1), p)));
};

describe('the way through any points', () => {
  it('is as short as the best of all orders, for up to eight', () => {
    fc.assert(
      fc.property(places(1, 8, 30), start, (points, at) => {
        const tour = shortestTour(points, spot(at));
        expect(tour.length).toBeCloseTo(shortest(points, spot(at)), 6);
        expect(tourLength(points, tour.order, spot(at))).toBeCloseTo(tour.length, 9);
      }),
      { ...fixed, numRuns: 25 },
    );
  });

  it('visits each once and is never longer than nearest first', () => {
    fc.assert(
      fc.property(places(1, 80, 60), start, (points, at) => {
        const tour = shortTour(points, spot(at));
        expect(tour.order.toSorted((a, b) => a - b)).toEqual(points.map((_, i) => i));
        const from = spot(at);
        const corner = points.reduce((best, p, i) => (p.x + p.y < there(points[best]).x + there(points[best]).y ? i : best), 0);
        const plain = nearestFirst(points, from === undefined ? corner : nearestTo(points, from));
        expect(tour.length).toBeLessThanOrEqual(tourLength(points, plain, from) + 1e-6);
      }),
      fixed,
    );
  });

  it('is never shorter than its bounds, exact ways included', () => {
    fc.assert(
      fc.property(places(3, 40, 60), start, (points, at) => {
        const from = spot(at);
        const all = from === undefined ? points : [...points, from];
        const { length } = shortTour(points, from, 10);
        expect(treeBound(all, from !== undefined)).toBeLessThanOrEqual(length + 1e-6);
        expect(nearestBound(all)).toBeLessThanOrEqual(length + 1e-6);
      }),
      fixed,
    );
  });

  it('grows with the scale and cares little about a turn of the field', () => {
    fc.assert(
      fc.property(places(2, 10, 50), fc.integer({ min: 2, max: 9 }), (points, scale) => {
        const { length } = shortestTour(points);
        expect(shortestTour(points.map((p) => point(p.x * scale, p.y * scale))).length).toBeCloseTo(length * scale, 6);
        expect(shortestTour(points.map((p) => point(-p.y, p.x))).length).toBeCloseTo(length, 6);
      }),
      fixed,
    );
  });
});
