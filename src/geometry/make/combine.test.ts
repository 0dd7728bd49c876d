/** Unions and differences of contours, held against an independent polygon library and against what must hold for all. */
import { Clipper, FillRule, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf } from '../area.ts';
import { reverseChain } from '../chain.ts';
import { type Contour, contour } from '../contour.ts';
import { disc, polygon, rectangle, star } from '../example-shapes.fixture.ts';
import { flatten } from '../flatten.ts';
import { selfCrossings } from '../near/crossings.ts';
import { circle } from '../segment.ts';
import { soundness } from '../soundness.ts';
import { transformChain, translation } from '../transform.ts';
import { type Combined, united, without } from './combine.ts';

const WITHIN = 1e-6;
const contoursOf = (c: Combined): readonly Contour[] => {
  if (c.kind === 'broken') throw new Error(`broken at ${c.at.x}, ${c.at.y}`);
  return c.contours;
};
const area = (cs: readonly Contour[]): number => cs.reduce((sum, c) => sum + areaOf(c), 0);
const moved = (c: Contour, x: number, y: number): Contour => transformChain(translation(x, y), c);
const polygons = (cs: readonly Contour[]): PathsD => cs.map((c) => [...flatten(c, 1e-5)]);
const clipped = (paths: PathsD): number => paths.reduce((sum, p) => sum + Clipper.areaD(p), 0);

/** Even numbers, so that corners fall on corners and sides on sides more often than by chance. */
const hundredths = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 100);

describe('contours combined', () => {
  it('unite two squares that overlap, and leave alone what is apart', () => {
    const two = contoursOf(united([rectangle(4, 4), moved(rectangle(4, 4), 2, 2), moved(rectangle(1, 1), 20, 0)], WITHIN));
    expect(two.map(areaOf).sort((a, b) => a - b)).toEqual([1, 28]);
    expect(there(two.find((c) => areaOf(c) > 2)).segments).toHaveLength(8);
  });

  it('drop a contour inside one that runs the same way, and keep one that runs against it as a hole', () => {
    const inner = moved(rectangle(1, 1), 1, 1);
    expect(contoursOf(united([rectangle(4, 4), inner], WITHIN)).map(areaOf)).toEqual([16]);
    expect(contoursOf(united([rectangle(4, 4), reverseChain(inner)], WITHIN)).map(areaOf)).toEqual([16, -1]);
  });

  it('join squares that share an edge, and squares that are the same', () => {
    const beside = contoursOf(united([rectangle(2, 2), moved(rectangle(2, 2), 2, 0)], WITHIN));
    expect(beside).toHaveLength(1);
    expect(there(beside[0]).segments).toHaveLength(4);
    expect(contoursOf(united([rectangle(2, 2), rectangle(2, 2)], WITHIN)).map(areaOf)).toEqual([4]);
  });

  it('keep squares that touch at a corner as two', () => {
    expect(contoursOf(united([rectangle(2, 2), moved(rectangle(2, 2), 2, 2)], WITHIN)).map(areaOf)).toEqual([4, 4]);
  });

  it('cut a bar out of a ring, so that two halves are left', () => {
    const ring = [disc(0, 0, 5), contour([circle({ x: 0, y: 0 }, 3, 'clockwise')])];
    const halves = contoursOf(without(ring, [moved(rectangle(1, 20), -0.5, -10)], WITHIN));
    expect(halves).toHaveLength(2);
    expect(
      there(halves[0])
        .segments.filter((s) => s.kind === 'arc')
        .map((s) => s.kind === 'arc' && s.radius.toFixed(9)),
    ).toHaveLength(2);
    const sector = (r: number): number => Math.PI * r * r - (2 * r * r * Math.asin(0.5 / r) + Math.sqrt(r * r - 0.25));
    expect(area(halves)).toBeCloseTo(sector(5) - sector(3), 6);
  });

  it('wind once round the middle of a loop that crosses itself', () => {
    const tie = polygon([
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2],
    ]);
    const parts = contoursOf(united([tie], WITHIN));
    expect(parts.map(areaOf)).toEqual([1, 1]);
  });

  it('agree with an independent polygon library, and come out sound and simple', () => {
    const stars = fc.tuple(
      fc.array(hundredths(200, 900), { minLength: 5, maxLength: 9 }),
      fc.array(hundredths(-30, 30), { minLength: 5, maxLength: 5 }),
      hundredths(-600, 600),
      hundredths(-600, 600),
    );
    fc.assert(
      fc.property(fc.array(stars, { minLength: 2, maxLength: 4 }), (many) => {
        const all = many.map(([radii, bulges, x, y]) => moved(star(radii, bulges), x, y));
        const [first, ...rest] = all as [Contour, ...Contour[]];
        for (const [ours, theirs] of [
          [united(all, WITHIN), Clipper.unionD(polygons(all), [], FillRule.NonZero, 8)],
          [without([first], rest, WITHIN), Clipper.differenceD(polygons([first]), polygons(rest), FillRule.NonZero, 8)],
        ] as const) {
          const contours = contoursOf(ours);
          expect(Math.abs(area(contours) - clipped(theirs))).toBeLessThan(0.01);
          for (const c of contours) {
            expect(soundness(c, 1e-6)).toEqual({ kind: 'sound' });
            expect(selfCrossings(c, WITHIN).filter((m) => m.kind !== 'touching')).toEqual([]);
          }
        }
      }),
      { seed: 7, numRuns: 120 },
    );
  });
});
