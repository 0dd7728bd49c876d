/** Ways through points: exact ones against trying every order, near ones against bounds and against ways known by reasoning. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { type Point, point } from '../../geometry/segment.ts';
import { scattered } from './scattered.fixture.ts';
import { shortestTour, shortTour } from './tour.ts';
import { nearestBound, treeBound } from './tour-bound.ts';

const grid = (across: number, down: number): readonly Point[] =>
  Array.from({ length: across * down }, (_, i) => point((i % across) * 10, Math.floor(i / across) * 10));

describe('the shortest way', () => {
  it('of none and of one point goes nowhere, except there from the start', () => {
    expect(shortestTour([])).toMatchObject({ order: [], length: 0, bound: 0, gap: 0 });
    expect(shortestTour([point(3, 4)])).toMatchObject({ order: [0], length: 0, gap: 0 });
    expect(shortestTour([point(3, 4)], point(0, 0))).toMatchObject({ order: [0], length: 5, bound: 5, gap: 0 });
  });

  it('goes along a line whatever order its points come in, and begins at the lower left', () => {
    const eleven = Array.from({ length: 11 }, (_, i) => point(((i * 7) % 11) * 2, 0));
    const tour = shortestTour(eleven);
    expect(tour).toMatchObject({ kind: 'exact', length: 20 });
    expect(eleven[there(tour.order[0])]).toEqual(point(0, 0));
    const forty = Array.from({ length: 40 }, (_, i) => point((i * 7) % 40, 0));
    expect(shortestTour(forty).length).toBeCloseTo(39, 9);
  });

  it('through a grid has the length of its links, found and bounded', () => {
    const tour = shortestTour(grid(15, 10));
    expect(tour.length).toBeCloseTo(1490, 6);
    expect(tour.bound).toBeCloseTo(1490, 3);
  });

  it('is within a fiftieth of the bound for 120 scattered points, from a start and without', () => {
    const points = scattered(120);
    expect(shortestTour(points).gap).toBeLessThan(0.02);
    const away = shortestTour(points, point(-50, 100));
    expect(away.gap).toBeLessThan(0.02);
    expect(away.bound).toBeGreaterThan(shortestTour(points).bound);
  });

  it('stands points on one spot', () => {
    const tour = shortestTour(Array.from({ length: 50 }, () => point(5, 5)));
    expect(tour).toMatchObject({ length: 0, bound: 0, gap: 0 });
    expect(tour.order.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 50 }, (_, i) => i));
  });

  it('of very many points is quick and says so, with the weaker bound', () => {
    const tour = shortestTour(scattered(2500), point(0, 0));
    expect(tour.kind).toBe('quick');
    expect(new Set(tour.order).size).toBe(2500);
    expect(tour.bound).toBeGreaterThan(0.6 * tour.length);
  });

  it('is the same and takes the same work each time', () => {
    expect(shortestTour(scattered(60))).toEqual(shortestTour(scattered(60)));
  });

  it('gets no longer with more tries, and the work stays in proportion', () => {
    const points = scattered(200);
    const [few, many] = [shortTour(points, undefined, 1), shortTour(points, undefined, 10)];
    expect(many.length).toBeLessThanOrEqual(few.length);
    expect(few.work).toBeLessThan(200 * 4500);
  });
});

describe('a bound', () => {
  it('of trees is the way itself where the points lie in a row', () => {
    expect(treeBound(grid(30, 1), false)).toBeCloseTo(290, 9);
  });

  it('of nearest neighbours is weaker than that of trees', () => {
    const points = scattered(150);
    expect(nearestBound(points)).toBeLessThan(treeBound(points, false));
    expect(nearestBound(points)).toBeGreaterThan(0);
  });

  it('counts the way from the start even where that lies far off', () => {
    expect(treeBound([...grid(5, 5), point(1000, 0)], true)).toBeGreaterThan(960 + 239);
  });
});
