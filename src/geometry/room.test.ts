/** Closest places, the roomiest place and the narrowest gap. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { arcAbout, fromBulge } from './bulge.ts';
import { regionOf, reverseChain, startAt } from './chain.ts';
import { contour } from './contour.ts';
import { disc, polygon, rectangle, roundedRectangle, star } from './example-shapes.fixture.ts';
import { distanceToSegment, pointAt } from './measure.ts';
import { closestBetween, closestBetweenChains } from './near/closest.ts';
import { distanceTo } from './near/distance.ts';
import { regionContains } from './near/inside.ts';
import { narrowestGap } from './near/narrowest.ts';
import { roomiestPoint } from './near/roomiest.ts';
import type { Segment } from './segment.ts';
import { distanceBetween, line, point } from './segment.ts';

const coordinate = fc.integer({ min: -80, max: 80 }).map((v) => v / 8);
const segment: fc.Arbitrary<Segment> = fc
  .tuple(coordinate, coordinate, coordinate, coordinate, fc.constantFrom(0, 0, 0.2, -0.7, 1, 2.2))
  .filter(([a, b, c, d]) => a !== c || b !== d)
  .map(([a, b, c, d, k]) => fromBulge(point(a, b), point(c, d), k));

describe('closest places', () => {
  it('of two segments beat every sampled pair, and lie on both', () => {
    fc.assert(
      fc.property(segment, segment, (a, b) => {
        const c = closestBetween(a, b, 1e-9);
        expect(distanceBetween(c.first.at, c.second.at)).toBeLessThanOrEqual(c.distance + 2e-9);
        expect(distanceToSegment(a, c.first.at)).toBeLessThan(1e-9);
        expect(distanceToSegment(b, c.second.at)).toBeLessThan(1e-9);
        for (let i = 0; i <= 100; i += 1) expect(distanceToSegment(b, pointAt(a, i / 100))).toBeGreaterThan(c.distance - 1e-9);
      }),
      { seed: 3, numRuns: 400 },
    );
  });
  it('of two chains are those of their closest pair', () => {
    const a = star([8, 9, 7, 8, 9, 8], [0.1]);
    const b = disc(20, 3, 4);
    const c = closestBetweenChains(a, b, 1e-9);
    const least = Math.min(...a.segments.map((s) => closestBetween(s, there(b.segments[0]), 1e-9).distance));
    expect(c.distance).toBe(least);
    expect(closestBetweenChains(b, a, 1e-9).distance).toBeCloseTo(least, 12);
    expect(closestBetweenChains(a, reverseChain(a), 1e-9).distance).toBe(0);
  });
});

describe('the roomiest place', () => {
  it('is the middle of discs, squares and rings, with its distance', () => {
    const square = roomiestPoint(regionOf(rectangle(4, 4)), 1e-4);
    expect(square).toMatchObject({ at: { x: 2, y: 2 }, distance: 2 });
    expect(roomiestPoint(regionOf(disc(3, 4, 2)), 1e-6).distance).toBeCloseTo(2, 6);
    const ring = roomiestPoint(regionOf(disc(0, 0, 5), [disc(0, 0, 3)]), 1e-3);
    expect(ring.distance).toBeGreaterThan(1 - 1e-3);
    expect(ring.atMost).toBeGreaterThanOrEqual(1);
    expect(ring.atMost).toBeLessThan(1 + 2e-3);
  });
  it('of a triangle is its incentre', () => {
    const found = roomiestPoint(
      regionOf(
        polygon([
          [0, 0],
          [4, 0],
          [0, 3],
        ]),
      ),
      1e-6,
    );
    expect(found.distance).toBeCloseTo(1, 5);
    expect(found.at.x).toBeCloseTo(1, 4);
  });
  it('lies inside, and no sampled place beats it', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 90 }), { minLength: 5, maxLength: 14 }), fc.constantFrom(0, 0.08), (radii, k) => {
        const region = regionOf(
          star(
            radii.map((r) => r / 10),
            [k],
          ),
        );
        const found = roomiestPoint(region, 0.01);
        expect(regionContains(region, found.at, 0)).toBe('inside');
        expect(Math.abs(distanceTo(region.outer, found.at) - found.distance)).toBeLessThan(1e-9);
        for (let x = -9; x <= 9; x += 0.5)
          for (let y = -9; y <= 9; y += 0.5)
            if (regionContains(region, point(x, y), 0) === 'inside')
              expect(distanceTo(region.outer, point(x, y))).toBeLessThan(found.distance + 0.01);
      }),
      { seed: 3, numRuns: 25 },
    );
  });
});

/** A slot along an arc: two concentric arcs with round ends, drawn as `parts` arcs each. */
const kidney = () => {
  const at = (r: number, degrees: number) => point(r * Math.cos((degrees * Math.PI) / 180), r * Math.sin((degrees * Math.PI) / 180));
  const o = point(0, 0);
  const end = at(10, 80);
  const start = at(10, 0);
  return contour([
    arcAbout(o, at(11, 0), at(11, 80), 'counter-clockwise'),
    arcAbout(end, at(11, 80), at(9, 80), 'counter-clockwise'),
    arcAbout(o, at(9, 80), at(9, 0), 'clockwise'),
    arcAbout(start, at(9, 0), at(11, 0), 'counter-clockwise'),
  ]);
};

describe('the narrowest gap', () => {
  const gap = (c: Parameters<typeof narrowestGap>[0], across?: 'inside' | 'outside'): number => {
    const found = narrowestGap(c, across);
    for (const other of [reverseChain(c), startAt(c, c.segments.length - 1, 0.4)]) {
      const again = narrowestGap(other, across);
      expect(again.kind).toBe(found.kind);
      if (again.kind === 'gap' && found.kind === 'gap') expect(again.distance).toBeCloseTo(found.distance, 9);
    }
    return found.kind === 'gap' ? found.distance : Number.POSITIVE_INFINITY;
  };
  it('of a rectangle is its width, in the middle of it', () => {
    expect(narrowestGap(rectangle(9, 2))).toMatchObject({
      kind: 'gap',
      distance: 2,
      from: { x: 4.5, y: 0 },
      to: { x: 4.5, y: 2 },
      segments: [0, 2],
    });
  });
  it('of slots is their width, however many arcs their round ends have', () => {
    expect(gap(roundedRectangle(9, 2, 1))).toBeCloseTo(2, 12);
    expect(gap(kidney())).toBeCloseTo(2, 12);
    const ends = [-90, -45, 0, 45].map((d) => {
      const at = (degrees: number) => point(5 + Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180));
      return arcAbout(point(5, 0), at(d), at(d + 45), 'counter-clockwise');
    });
    const first = there(ends[0]).from;
    const last = there(ends[3]).to;
    const open = contour([...ends, line(last, point(0, 1)), line(point(0, 1), point(0, -1)), line(point(0, -1), first)]);
    expect(gap(open)).toBeCloseTo(2, 12);
  });
  it('finds a neck between two spikes, and the slot cut in from outside', () => {
    const neck = polygon([
      [0, 0],
      [5, 0],
      [5.5, 1.9],
      [6, 0],
      [10, 0],
      [10, 4],
      [6, 4],
      [5.2, 2.1],
      [5, 4],
      [0, 4],
    ]);
    expect(gap(neck)).toBeCloseTo(Math.hypot(0.3, 0.2), 12);
    const slotted = polygon([
      [0, 0],
      [9, 0],
      [9, 6],
      [5, 6],
      [5, 2],
      [4.5, 2],
      [4.5, 6],
      [0, 6],
    ]);
    expect(gap(slotted, 'outside')).toBeCloseTo(0.5, 12);
    expect(gap(slotted)).toBeCloseTo(2, 12);
  });
  it('counts a narrow end between two corners, and nothing in circles and triangles', () => {
    const wedge = polygon([
      [0, 0],
      [10, 1.9],
      [10, 2.1],
      [0, 4],
    ]);
    expect(gap(wedge)).toBeCloseTo(0.2, 12);
    expect(narrowestGap(disc(0, 0, 2)).kind).toBe('no gap');
    expect(
      narrowestGap(
        polygon([
          [0, 0],
          [4, 0],
          [0, 3],
        ]),
      ).kind,
    ).toBe('no gap');
    expect(
      narrowestGap(
        star(
          Array.from({ length: 60 }, () => 8),
          [0.026],
        ),
      ).kind,
    ).toBe('no gap');
  });
});
