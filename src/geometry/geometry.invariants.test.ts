/** Lengths, areas, distances and containment do not depend on direction, start or place, and agree with a polygon library. */
import { area as clipperArea, PointInPolygonResult, pointInPolygon } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { areaOf, boundsOfChain, centroidOf, perimeterOf } from './area.ts';
import { arcAbout, fromBulge } from './bulge.ts';
import { reverseChain, startAt } from './chain.ts';
import { type Contour, contour } from './contour.ts';
import { reverse, split } from './cut.ts';
import { disc, star } from './example-shapes.fixture.ts';
import { flatten } from './flatten.ts';
import { intersect } from './intersect.ts';
import { boundsOf, distanceToSegment, lengthOf, nearestOn, pointAt } from './measure.ts';
import { crossingsBetween, selfCrossings } from './near/crossings.ts';
import { distanceTo, nearestOnChain } from './near/distance.ts';
import { contains, containsIn, windingOf } from './near/inside.ts';
import { lookupOf, nearestIn } from './near/lookup.ts';
import type { Point, Segment } from './segment.ts';
import { distanceBetween } from './segment.ts';
import type { Similarity } from './transform.ts';
import { inTurn, mirroring, rotation, scaling, transformChain, transformPoint, translation } from './transform.ts';

const runs = { seed: 20_261, numRuns: 300 };
const coordinate = fc.double({ min: -20, max: 20, noNaN: true }).map((v) => Math.round(v * 64) / 64);
const place = fc.record({ x: coordinate, y: coordinate });
const bulge = fc.oneof(
  fc.constantFrom(0, 1, -1, Math.SQRT2 - 1, 2.5),
  fc.double({ min: -3, max: 3, noNaN: true }).filter((b) => Math.abs(b) > 1e-3),
);
const segment: fc.Arbitrary<Segment> = fc
  .tuple(place, place, bulge)
  .filter(([a, b]) => distanceBetween(a, b) > 0.01)
  .map(([a, b, k]) => fromBulge(a, b, k));
const circleOrSegment = fc.oneof(
  segment,
  fc.tuple(place, fc.double({ min: 0.1, max: 9, noNaN: true })).map(([c, r]) => there(disc(c.x, c.y, r).segments[0])),
);
/** Stars whose bulges are too small for neighbours to meet. */
const shape: fc.Arbitrary<Contour> = fc
  .tuple(
    fc.array(fc.double({ min: 8, max: 14, noNaN: true }), { minLength: 6, maxLength: 24 }),
    fc.array(
      fc.integer({ min: -100, max: 200 }).map((k) => k / 1000),
      { minLength: 1, maxLength: 5 },
    ),
  )
  .map(([radii, bulges]) => star(radii, bulges));
const similarity: fc.Arbitrary<Similarity> = fc
  .tuple(fc.double({ min: -7, max: 7, noNaN: true }), fc.double({ min: 0.2, max: 5, noNaN: true }), fc.boolean(), place)
  .map(([angle, factor, mirrored, move]) => {
    const turned = inTurn(rotation(angle), inTurn(scaling(factor), translation(move.x, move.y)));
    return mirrored ? inTurn(mirroring(0.3), turned) : turned;
  });
const factorOf = (t: Similarity): number => Math.hypot(t.a, t.b);

describe('segments', () => {
  it('split into parts that add up and meet on the segment', () => {
    fc.assert(
      fc.property(circleOrSegment, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (s, share) => {
        const [a, b] = split(s, share);
        expect(lengthOf(a) + lengthOf(b)).toBeCloseTo(lengthOf(s), 10);
        expect(a.to).toEqual(b.from);
        expect(distanceToSegment(s, a.to)).toBeLessThan(1e-12);
        expect(distanceBetween(pointAt(a, 0.5), pointAt(s, share / 2))).toBeLessThan(1e-11);
      }),
      runs,
    );
  });
  it('reversed have the same length and the same places, shares counted from the other end', () => {
    fc.assert(
      fc.property(circleOrSegment, fc.double({ min: 0, max: 1, noNaN: true }), (s, share) => {
        expect(lengthOf(reverse(s))).toBe(lengthOf(s));
        expect(distanceBetween(pointAt(reverse(s), 1 - share), pointAt(s, share))).toBeLessThan(1e-11);
      }),
      runs,
    );
  });
  it('have no sampled place nearer than the nearest, nor outside the bounds', () => {
    fc.assert(
      fc.property(circleOrSegment, place, (s, p) => {
        const near = nearestOn(s, p);
        expect(Math.abs(distanceBetween(near.at, p) - near.distance)).toBeLessThan(1e-11);
        expect(Math.abs(distanceToSegment(s, p) - near.distance)).toBeLessThan(1e-11);
        const box = boundsOf(s);
        for (let i = 0; i <= 64; i += 1) {
          const q = pointAt(s, i / 64);
          expect(distanceBetween(q, p)).toBeGreaterThan(near.distance - 1e-11);
          expect(q.x >= box.minX - 1e-11 && q.x <= box.maxX + 1e-11 && q.y >= box.minY - 1e-11 && q.y <= box.maxY + 1e-11).toBe(true);
        }
      }),
      runs,
    );
  });
});

/** How often the flattened segments cross, which for clear crossings the exact ones must equal. */
const clear = (a: Segment, b: Segment): boolean =>
  [a.from, a.to].every((p) => distanceToSegment(b, p) > 0.05) && [b.from, b.to].every((p) => distanceToSegment(a, p) > 0.05);

describe('intersections', () => {
  it('lie on both segments at the shares told, in either order and direction', () => {
    fc.assert(
      fc.property(circleOrSegment, circleOrSegment, (a, b) => {
        const found = intersect(a, b, 1e-9);
        for (const c of found) {
          if (c.kind === 'overlap') continue;
          expect(distanceBetween(c.at, pointAt(a, c.first))).toBeLessThan(2e-9);
          expect(distanceBetween(c.at, pointAt(b, c.second))).toBeLessThan(2e-9);
        }
        expect(intersect(b, a, 1e-9)).toHaveLength(found.length);
        expect(intersect(reverse(a), b, 1e-9)).toHaveLength(found.length);
      }),
      { ...runs, numRuns: 2000 },
    );
  });
  it('are all found: where one segment passes the other there is a contact', () => {
    fc.assert(
      fc.property(circleOrSegment, circleOrSegment, (a, b) => {
        const found = intersect(a, b, 1e-9);
        if (found.length > 0 || !clear(a, b)) return;
        const steps = Array.from({ length: 257 }, (_, i) => pointAt(a, i / 256));
        const least = Math.min(...steps.map((p) => distanceToSegment(b, p)));
        expect(least).toBeGreaterThan(0);
        const sides = steps.filter((p) => distanceToSegment(b, p) < 0.04).map((p) => sideOf(b, p));
        expect(new Set(sides).size).toBeLessThan(2);
      }),
      { ...runs, numRuns: 1000 },
    );
  });
});

const sideOf = (s: Segment, p: Point): number => {
  if (s.kind === 'arc') return Math.sign(distanceBetween(s.centre, p) - s.radius);
  return Math.sign((s.to.x - s.from.x) * (p.y - s.from.y) - (s.to.y - s.from.y) * (p.x - s.from.x));
};

describe('contours', () => {
  it('keep area, length and centroid when reversed or started elsewhere', () => {
    fc.assert(
      fc.property(shape, fc.nat(), fc.double({ min: 0, max: 1, noNaN: true }), (c, n, share) => {
        expect(areaOf(reverseChain(c))).toBeCloseTo(-areaOf(c), 9);
        const shifted = startAt(c, n % c.segments.length, share);
        expect(areaOf(shifted)).toBeCloseTo(areaOf(c), 9);
        expect(perimeterOf(shifted)).toBeCloseTo(perimeterOf(c), 9);
        expect(distanceBetween(centroidOf(reverseChain(shifted)), centroidOf(c))).toBeLessThan(1e-10);
      }),
      runs,
    );
  });
  it('follow a turn, a mirror and a scale', () => {
    fc.assert(
      fc.property(shape, similarity, place, (c, t, p) => {
        const moved = transformChain(t, c);
        const k = factorOf(t);
        expect(areaOf(moved) / (areaOf(c) * k * k * (t.mirrors ? -1 : 1))).toBeCloseTo(1, 10);
        expect(perimeterOf(moved) / (perimeterOf(c) * k)).toBeCloseTo(1, 10);
        expect(distanceBetween(centroidOf(moved), transformPoint(t, centroidOf(c)))).toBeLessThan(1e-9 * k + 1e-10);
        expect(Math.abs(distanceTo(moved, transformPoint(t, p)) - k * distanceTo(c, p))).toBeLessThan(1e-9);
        if (distanceTo(c, p) > 1e-6) expect(windingOf(moved, transformPoint(t, p))).toBe(windingOf(c, p) * (t.mirrors ? -1 : 1) + 0);
      }),
      runs,
    );
  });
  it('agree with Clipper2 on area and on what is inside, away from the edge', () => {
    fc.assert(
      fc.property(shape, fc.array(place, { minLength: 20, maxLength: 20 }), (c, points) => {
        const chordError = 1e-5;
        const flat = flatten(c, chordError).map((p) => ({ x: Math.round(p.x * 1e6), y: Math.round(p.y * 1e6) }));
        expect(Math.abs(clipperArea(flat) / 1e12 - areaOf(c))).toBeLessThan(perimeterOf(c) * (chordError + 1e-6));
        for (const p of points) {
          if (distanceTo(c, p) < 2 * chordError) continue;
          const inside = pointInPolygon({ x: Math.round(p.x * 1e6), y: Math.round(p.y * 1e6) }, flat) === PointInPolygonResult.IsInside;
          expect(contains(c, p, 0)).toBe(inside ? 'inside' : 'outside');
        }
      }),
      { ...runs, numRuns: 60 },
    );
  });
  it('wind the same on grid points that lie on chords and level with corners', () => {
    const spiky = fc.array(fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 4 }), bulge), { minLength: 3, maxLength: 8 });
    fc.assert(
      fc.property(spiky, fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 4 }), (corners, x, y) => {
        const segments = corners.map(([cx, cy, k], i) => {
          const [nx, ny] = there(corners[(i + 1) % corners.length]);
          return fromBulge({ x: cx, y: cy }, { x: nx, y: ny }, k);
        });
        const longEnough = segments.filter((s) => distanceBetween(s.from, s.to) > 0);
        if (longEnough.length === 0) return;
        const c = contour(longEnough);
        if (distanceTo(c, { x, y }) < 1e-6) return;
        const angle = c.segments.reduce((sum, s) => sum + angleSeen(s, { x, y }), 0);
        expect(windingOf(c, { x, y })).toBe(Math.round(angle / (2 * Math.PI)) + 0);
      }),
      { ...runs, numRuns: 1500 },
    );
  });
  it('give the same nearest place and containment with an index', () => {
    fc.assert(
      fc.property(shape, place, (c, p) => {
        const lookup = lookupOf(c);
        expect(nearestIn(lookup, p).distance).toBe(nearestOnChain(c, p).distance);
        expect(containsIn(lookup, p, 1e-6)).toBe(contains(c, p, 1e-6));
        const b = boundsOfChain(c);
        expect([lookup.bounds.minX, lookup.bounds.maxY]).toEqual([b.minX, b.maxY]);
      }),
      runs,
    );
  });
  it('of star form never cross themselves, and a circle round a corner meets a star twice', () => {
    fc.assert(
      fc.property(shape, fc.nat(), (c, n) => {
        expect(selfCrossings(c, 1e-9)).toEqual([]);
        const corner = there(c.segments[n % c.segments.length]).from;
        expect(crossingsBetween(c, disc(corner.x, corner.y, 1e-3), 1e-9).map((x) => x.kind)).toEqual(['crossing', 'crossing']);
        expect(crossingsBetween(disc(corner.x, corner.y, 1e-3), reverseChain(c), 1e-9)).toHaveLength(2);
      }),
      runs,
    );
  });
});

/** Angle under which a point sees a segment travelled, in small steps: slow, and independent of the winding rule. */
const angleSeen = (s: Segment, p: Point): number => {
  let sum = 0;
  const steps = s.kind === 'line' ? 8 : 256;
  for (let i = 0; i < steps; i += 1) {
    const a = pointAt(s, i / steps);
    const b = pointAt(s, (i + 1) / steps);
    const turn = Math.atan2((a.x - p.x) * (b.y - p.y) - (a.y - p.y) * (b.x - p.x), (a.x - p.x) * (b.x - p.x) + (a.y - p.y) * (b.y - p.y));
    sum += turn;
  }
  return sum;
};

it('arcs by their centre run the sense asked for', () => {
  const quarter = arcAbout({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 1 }, 'counter-clockwise');
  expect(quarter.sweep).toBeCloseTo(Math.PI / 2, 14);
  expect(arcAbout({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 1 }, 'clockwise').sweep).toBeCloseTo(-1.5 * Math.PI, 14);
});
