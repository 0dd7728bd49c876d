/** Moves shorter than a control takes are merged, and nothing moves by more than was allowed. */
import { describe, expect, it } from 'vitest';
import { seeded } from '../../../test/seeded.ts';
import type { Contour } from '../../geometry/contour.ts';
import { polyline } from '../../geometry/example-shapes.fixture.ts';
import { lengthOf, pointAt } from '../../geometry/measure.ts';
import { distanceTo } from '../../geometry/near/distance.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { planned, questionFor } from '../plan.fixture.ts';
import { withoutShortMoves } from './least-move.ts';

const LEAST = { length: 0.005, within: 0.001 };

/** A wavy ring, each crest with an arc of a few micrometres, which fitted curves and parallel curves leave. */
const wavy = (waves: number, short: number, bulge: number): Contour => {
  const random = seeded(waves);
  return polyline(
    Array.from({ length: waves }, (_, i) => (2 * Math.PI * i) / waves).flatMap((angle) => {
      const radius = 8 + 0.3 * Math.sin(3 * angle);
      const [x, y] = [radius * Math.cos(angle), radius * Math.sin(angle)];
      const size = short * (0.4 + 0.6 * random());
      return [
        { x, y, bulge },
        { x: x - size * Math.sin(angle), y: y + size * Math.cos(angle), bulge: 0.02 },
      ];
    }),
  );
};

/** A plate with round corners, each in two arcs with a hair of arc between them. */
const cornered = (radius: number, hair: number): Contour => {
  const [half, turn] = [Math.tan((Math.PI / 4 - hair / radius / 2) / 4), hair / radius];
  const middles = [
    [37, 3],
    [37, 27],
    [3, 27],
    [3, 3],
  ] as const;
  return polyline(
    middles.flatMap(([x, y], corner) => {
      const from = ((corner - 1) * Math.PI) / 2;
      const at = (angle: number, bulge: number) => ({ x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle), bulge });
      const middle = from + Math.PI / 4;
      return [at(from, half), at(middle - turn / 2, Math.tan(turn / 4)), at(middle + turn / 2, half), at(from + Math.PI / 2, 0)];
    }),
  );
};

const shortIn = ({ segments }: Contour): number => segments.filter((s) => lengthOf(s) < LEAST.length).length;

const farthest = (of: Contour, from: Contour): number =>
  of.segments.reduce((most, s) => Math.max(most, ...[0, 0.1, 0.5, 0.9].map((share) => distanceTo(from, pointAt(s, share)))), 0);

describe('short moves', () => {
  it.each([
    ['arcs of 2 µm', wavy(24, 0.002, 0.01)],
    ['arcs of 4.9 µm', wavy(30, 0.0049, 0.002)],
    ['lines of 1 µm', wavy(12, 0.001, 0)],
    ['lines of 4 µm', wavy(60, 0.004, 0)],
  ])('are given to their neighbours: %s', (_, contour) => {
    const merged = withoutShortMoves(contour, LEAST);
    expect(shortIn(contour)).toBeGreaterThan(10);
    // The first stays where the contour is begun, whatever it is.
    expect(shortIn(merged)).toBeLessThanOrEqual(1);
    expect(merged.segments[0].from).toEqual(contour.segments[0].from);
    expect(farthest(merged, contour)).toBeLessThanOrEqual(LEAST.within + 1e-9);
    expect(farthest(contour, merged)).toBeLessThanOrEqual(LEAST.within + 1e-9);
    for (const [i, s] of merged.segments.entries()) {
      const next = merged.segments[(i + 1) % merged.segments.length] ?? s;
      expect(distanceBetween(s.to, next.from)).toBeLessThan(1e-9);
    }
  });

  it('leave no arc tighter than it was', () => {
    const radii = ({ segments }: Contour) => segments.flatMap((s) => (s.kind === 'arc' && lengthOf(s) > 0.1 ? [s.radius] : []));
    const contour = wavy(24, 0.002, 0.01);
    expect(Math.min(...radii(withoutShortMoves(contour, LEAST)))).toBeCloseTo(
      Math.min(...contour.segments.flatMap((s) => (s.kind === 'arc' && lengthOf(s) > 0.1 ? [s.radius] : []))),
      9,
    );
  });

  it('stay where merging would move the contour by more than is allowed, or make a corner that no wire enters', () => {
    const step = polyline([
      { x: 0, y: 0, bulge: 0 },
      { x: 20, y: 0, bulge: 0 },
      { x: 20, y: 10, bulge: 0 },
      { x: 10, y: 10, bulge: 0 },
      { x: 10, y: 10.0048, bulge: 0 },
      { x: 0, y: 10.0048, bulge: 0 },
    ]);
    expect(shortIn(withoutShortMoves(step, { ...LEAST, within: 0.0005 }))).toBe(1);
    expect(shortIn(withoutShortMoves(step, { ...LEAST, within: 0.003 }))).toBe(0);
  });

  it('make a corner only between moves that a wire half a millimetre beside them can follow', () => {
    const cornered = (side: number): Contour =>
      polyline(
        [
          [0, 0],
          [10 - 0.003, 0],
          [10, 0.003],
          [10, side],
          [0, side],
        ].map(([x = 0, y = 0]) => ({ x, y, bulge: 0 })),
      );
    expect([0.45, 0.55].map((side) => shortIn(withoutShortMoves(cornered(side), { ...LEAST, within: 0.004 })))).toEqual([1, 0]);
  });

  it('may turn their neighbours by 2 mrad, beside corners that are too tight for more', () => {
    const stepped = (length: number): Contour =>
      polyline(
        [
          [12, 5],
          [-5, 5],
          [-5, -0.07],
          [-0.07, -0.07],
          [0, 0],
          [length, 0],
          [length + 0.003, 0.0015],
          [12, 0.0015],
        ].map(([x = 0, y = 0]) => ({ x, y, bulge: 0 })),
      );
    expect([0.33, 0.5].map((length) => shortIn(withoutShortMoves(stepped(length), LEAST)))).toEqual([1, 0]);
  });

  it('are left alone where none is stated, and in a contour that has none', () => {
    const contour = wavy(24, 0.002, 0.01);
    expect(withoutShortMoves(contour, undefined)).toBe(contour);
    const long = wavy(24, 1, 0.01);
    expect(withoutShortMoves(long, LEAST)).toBe(long);
  });

  it('are in no pass of a plan under compensation', () => {
    const shape = cornered(3, 0.003);
    const question = questionFor([{ id: 'L1', contour: shape, depth: 0 }]);
    const moves = (leastMove: typeof LEAST | undefined): number =>
      planned({ ...question, leastMove }).steps.filter(
        (s) => s.kind === 'cut' && s.programmed !== undefined && lengthOf(s.programmed) < 0.005,
      ).length;
    expect(moves(undefined)).toBeGreaterThan(3);
    expect(moves(LEAST)).toBe(0);
  });
});
