/** What holds for every offset: Steiner's formula, independence of pose, nesting of offsets, opening and closing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf, perimeterOf, regionAreaOf } from '../area.ts';
import { reverseChain, startAt } from '../chain.ts';
import type { Contour } from '../contour.ts';
import { disc, polygon, star } from '../example-shapes.fixture.ts';
import { mirroring, rotation, scaling, transformChain, translation } from '../transform.ts';
import { faultsOf, totalArea } from './judge.fixture.ts';
import { offsetContour, offsetRegion } from './offset.ts';
import { close, open } from './opening.ts';

const SEED = { seed: 20_261_125, numRuns: 150 };

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Stars whose arcs bulge little, so that they never cross themselves. */
const stars = fc
  .array(number(4, 10), { minLength: 5, maxLength: 14 })
  .chain((radii) =>
    fc.array(number(-0.15, 0.15), { minLength: radii.length, maxLength: radii.length }).map((bulges) => star(radii, bulges)),
  );

/** Corners on a circle in order, with outward arcs of at most that circle's bend: convex. */
const convexShapes = fc.array(number(0.2, 1), { minLength: 3, maxLength: 10 }).map((steps) => {
  const whole = steps.reduce((a, b) => a + b, 0);
  let turn = 0;
  return polygon(
    steps.map((s): [number, number] => {
      turn += (2 * Math.PI * s) / whole;
      return [10 * Math.cos(turn), 10 * Math.sin(turn)];
    }),
  );
});

const areaAfter = (contour: Contour, distance: number): number => {
  const outcome = offsetContour(contour, distance);
  if (outcome.kind === 'vanished') return 0;
  if (outcome.kind !== 'offset') throw new Error(JSON.stringify(outcome));
  const results = [...outcome.contours, ...outcome.enclosed];
  expect(faultsOf([contour], results, distance)).toEqual([]);
  return Math.abs(totalArea(results));
};

describe('offsets of any shape', () => {
  it('grow a convex shape by Steiner: perimeter times distance and the disc', () => {
    fc.assert(
      fc.property(convexShapes, number(0.01, 5), (shape, d) => {
        const steiner = areaOf(shape) + perimeterOf(shape) * d + Math.PI * d * d;
        expect(areaAfter(shape, -d)).toBeCloseTo(steiner, 6);
      }),
      SEED,
    );
  });

  it('shrink a grown shape back to the area it had, by Steiner', () => {
    fc.assert(
      fc.property(convexShapes, number(0.01, 2), (shape, d) => {
        const grown = offsetContour(shape, -3);
        if (grown.kind !== 'offset') throw new Error(grown.kind);
        const round = there(grown.contours[0]);
        expect(areaAfter(round, d)).toBeCloseTo(areaOf(round) - perimeterOf(round) * d + Math.PI * d * d, 6);
      }),
      SEED,
    );
  });

  it('come out the same from every start, in every sense, turned, moved, mirrored and scaled', () => {
    fc.assert(
      fc.property(stars, number(-2, 2), fc.nat(20), number(0, 6), number(0.2, 5), (shape, d, k, angle, factor) => {
        fc.pre(Math.abs(d) > 0.01);
        const plain = areaAfter(shape, d);
        const same = (area: number): void => expect(Math.abs(area - plain)).toBeLessThan(1e-5);
        same(areaAfter(startAt(shape, k % shape.segments.length, 0), d));
        same(areaAfter(startAt(shape, k % shape.segments.length, 0.3), d));
        same(areaAfter(reverseChain(shape), -d));
        same(areaAfter(transformChain(rotation(angle), shape), d));
        same(areaAfter(transformChain(translation(1000 * angle, -77), shape), d));
        same(areaAfter(transformChain(mirroring(angle), shape), -d));
        same(areaAfter(transformChain(scaling(factor), shape), d * factor) / factor ** 2);
      }),
      SEED,
    );
  });
});

describe('regions, openings and closings', () => {
  it('a region with holes shrinks by the sum of its outlines, until they meet', () => {
    const hole = (x: number): Contour => reverseChain(disc(x, 5, 1));
    const region = {
      outer: polygon([
        [0, 0],
        [20, 0],
        [20, 10],
        [0, 10],
      ]),
      holes: [hole(5), hole(8)],
    };
    const apart = offsetRegion(region, 0.4);
    expect(apart.kind === 'offset' && apart.regions.map((r) => r.holes.length)).toEqual([2]);
    if (apart.kind === 'offset') expect(regionAreaOf(there(apart.regions[0]))).toBeCloseTo(19.2 * 9.2 - 2 * Math.PI * 1.4 ** 2, 9);
    const grownTogether = offsetRegion(region, 0.6);
    expect(grownTogether.kind === 'offset' && grownTogether.regions.map((r) => r.holes.length)).toEqual([1]);
    const overHoles = offsetRegion(region, -1);
    expect(overHoles.kind === 'offset' && overHoles.regions.map((r) => r.holes.length)).toEqual([0]);
  });

  it('a region that a row of holes cuts through falls apart', () => {
    const holes = [1, 3, 5, 7, 9].map((y) => reverseChain(disc(10, y, 0.8)));
    const outcome = offsetRegion(
      {
        outer: polygon([
          [0, 0],
          [20, 0],
          [20, 10],
          [0, 10],
        ]),
        holes,
      },
      0.3,
    );
    expect(outcome.kind === 'offset' && outcome.regions.length).toBe(2);
  });

  it('opening adds nothing, gives every inside corner the radius, and opens no further when repeated', () => {
    fc.assert(
      fc.property(stars, number(0.05, 1.5), (shape, radius) => {
        const opened = open(shape, radius);
        if (opened.kind === 'vanished') return;
        if (opened.kind !== 'offset') throw new Error(JSON.stringify(opened));
        const area = opened.regions.reduce((sum, r) => sum + regionAreaOf(r), 0);
        expect(area).toBeLessThanOrEqual(areaOf(shape) + 1e-6);
        for (const s of opened.regions.flatMap((r) => r.outer.segments)) {
          if (s.kind === 'arc' && s.sweep > 0) expect(s.radius).toBeGreaterThan(radius - 1e-6);
        }
        const again = opened.regions.flatMap((r) => {
          const outcome = open(r, radius - 1e-6);
          return outcome.kind === 'offset' ? outcome.regions : [];
        });
        expect(again.reduce((sum, r) => sum + regionAreaOf(r), 0)).toBeCloseTo(area, 3);
      }),
      SEED,
    );
  });

  it('closing takes nothing away', () => {
    fc.assert(
      fc.property(stars, number(0.05, 1.5), (shape, radius) => {
        const closed = close(shape, radius);
        if (closed.kind !== 'offset') throw new Error(JSON.stringify(closed));
        expect(closed.regions.reduce((sum, r) => sum + regionAreaOf(r), 0)).toBeGreaterThanOrEqual(areaOf(shape) - 1e-6);
      }),
      SEED,
    );
  });
});
