/** Splines are evaluated to rounding, with their directions, corners and seams. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { Point } from '../../geometry/segment.ts';
import type { Spline } from './curve.ts';
import { ellipseCurve } from './ellipse.ts';
import { cubicThrough } from './interpolate.ts';
import type { ParametricCurve } from './parametric.ts';
import { splineCurve } from './spline.ts';

const splineOf = (
  degree: number,
  points: readonly (readonly [number, number])[],
  knots: readonly number[],
  weights?: readonly number[],
): Spline => ({
  kind: 'spline',
  degree,
  points: points.map(([x, y]) => ({ x, y })),
  weights: weights ?? points.map(() => 1),
  knots,
});

/** The tangent must point where the curve goes: held against a difference of points. */
const holdsTangent = (curve: ParametricCurve, t: number): void => {
  const step = (curve.end - curve.start) * 1e-6;
  const [a, b] = [curve.pointAt(t - step), curve.pointAt(t + step)];
  const { x, y } = curve.tangentAt(t);
  const turn = Math.atan2(x * (b.y - a.y) - y * (b.x - a.x), x * (b.x - a.x) + y * (b.y - a.y));
  expect(Math.abs(turn)).toBeLessThan(1e-4);
};

describe('a spline', () => {
  it('of degree 3 without inner knots is the Bézier curve of its points', () => {
    const curve = splineCurve(
      splineOf(
        3,
        [
          [0, 0],
          [1, 3],
          [4, 3],
          [5, -1],
        ],
        [0, 0, 0, 0, 1, 1, 1, 1],
      ),
    );
    const t = 0.3;
    const share = [0.343, 0.441, 0.189, 0.027];
    expect(curve.pointAt(t).x).toBeCloseTo(there(share[1]) * 1 + there(share[2]) * 4 + there(share[3]) * 5, 14);
    expect(curve.pointAt(t).y).toBeCloseTo(there(share[1]) * 3 + there(share[2]) * 3 - there(share[3]), 14);
    holdsTangent(curve, t);
  });

  it('begins and ends on its first and last point, and in the directions of its first and last leg', () => {
    const curve = splineCurve(
      splineOf(
        2,
        [
          [0, 0],
          [2, 0],
          [3, 4],
          [9, 4],
        ],
        [0, 0, 0, 1, 2, 2, 2],
        [1, 2, 0.5, 3],
      ),
    );
    expect([curve.pointAt(0), curve.pointAt(2)]).toEqual([
      { x: 0, y: 0 },
      { x: 9, y: 4 },
    ]);
    expect(curve.tangentAt(0).y).toBeCloseTo(0, 14);
    expect(curve.tangentAt(2).y).toBeCloseTo(0, 14);
    expect(curve.tangentAt(2).x).toBeGreaterThan(0);
  });

  it('lies on a circle when its weights say so, all round', () => {
    const h = Math.SQRT1_2;
    const ring: readonly (readonly [number, number])[] = [
      [1, 0],
      [1, 1],
      [0, 1],
      [-1, 1],
      [-1, 0],
      [-1, -1],
      [0, -1],
      [1, -1],
      [1, 0],
    ];
    const curve = splineCurve(splineOf(2, ring, [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4], [1, h, 1, h, 1, h, 1, h, 1]));
    for (let i = 0; i <= 100; i++) {
      const p = curve.pointAt(i / 25);
      expect(Math.hypot(p.x, p.y)).toBeCloseTo(1, 14);
      const d = curve.tangentAt(i / 25);
      expect((p.x * d.x + p.y * d.y) / Math.hypot(d.x, d.y)).toBeCloseTo(0, 12);
    }
    expect(curve.seams).toEqual([1, 2, 3]);
    expect(curve.breaks).toEqual([]);
  });

  it('tells its corners, and only these', () => {
    const curve = splineCurve(
      splineOf(
        2,
        [
          [0, 0],
          [1, 0],
          [2, 0],
          [2, 1],
          [2, 2],
          [2, 3],
          [2, 4],
        ],
        [0, 0, 0, 1, 1, 2, 2, 3, 3, 3],
      ),
    );
    expect(curve.seams).toEqual([1, 2]);
    expect(curve.breaks).toEqual([1]);
  });

  it('is the same before and after a knot is put in', () => {
    const coordinate = fc.integer({ min: -50, max: 50 });
    const shape = fc.tuple(
      fc.array(fc.tuple(coordinate, coordinate), { minLength: 4, maxLength: 4 }),
      fc.double({ min: 0.1, max: 0.9, noNaN: true }),
    );
    fc.assert(
      fc.property(shape, ([points, at]) => {
        const legs = points
          .slice(1)
          .map(([x, y], i): readonly [number, number] => [
            there(points[i])[0] + at * (x - there(points[i])[0]),
            there(points[i])[1] + at * (y - there(points[i])[1]),
          ]);
        const before = splineCurve(splineOf(3, points, [0, 0, 0, 0, 1, 1, 1, 1]));
        const after = splineCurve(splineOf(3, [there(points[0]), ...legs, there(points[3])], [0, 0, 0, 0, at, 1, 1, 1, 1]));
        for (const t of [0, 0.05, at, 0.5, 0.95, 1]) {
          expect(after.pointAt(t).x).toBeCloseTo(before.pointAt(t).x, 10);
          expect(after.pointAt(t).y).toBeCloseTo(before.pointAt(t).y, 10);
        }
      }),
      { numRuns: 200, seed: 5 },
    );
  });
});

describe('the cubic through given points', () => {
  const through = (points: readonly (readonly [number, number])[], ends = {}): { curve: ParametricCurve; knots: readonly number[] } => {
    const { coordinates, knots } = cubicThrough([points.map((p) => p[0]), points.map((p) => p[1])], ends);
    return {
      curve: splineCurve(
        splineOf(
          3,
          there(coordinates[0]).map((x, i) => [x, there(there(coordinates[1])[i])] as const),
          knots,
        ),
      ),
      knots,
    };
  };
  /** Second derivative from both sides of a parameter, by differences. */
  const bend = (curve: ParametricCurve, t: number, side: 1 | -1): Point => {
    const h = side * 1e-3;
    const [a, b, c] = [curve.pointAt(t), curve.pointAt(t + h), curve.pointAt(t + 2 * h)];
    return { x: (a.x - 2 * b.x + c.x) / h ** 2, y: (a.y - 2 * b.y + c.y) / h ** 2 };
  };

  it('is the straight line where the points are in line', () => {
    const { curve } = through([
      [0, 0],
      [1, 2],
      [4, 8],
      [5, 10],
    ]);
    for (let t = curve.start; t <= curve.end; t += 0.5) expect(curve.pointAt(t).y).toBeCloseTo(2 * curve.pointAt(t).x, 12);
  });

  it('passes through every point with the same direction and the same bend on both sides, and has none at free ends', () => {
    const points = [
      [0, 0],
      [3, 2],
      [5, -1],
      [9, 0],
      [10, 6],
    ] as const;
    const { curve, knots } = through(points);
    const stops = [...new Set(knots)];
    points.forEach(([x, y], i) => {
      expect(curve.pointAt(there(stops[i])).x).toBeCloseTo(x, 12);
      expect(curve.pointAt(there(stops[i])).y).toBeCloseTo(y, 12);
    });
    for (const t of stops.slice(1, -1)) {
      holdsTangent(curve, t);
      expect(bend(curve, t, 1).x).toBeCloseTo(bend(curve, t, -1).x, 2);
      expect(bend(curve, t, 1).y).toBeCloseTo(bend(curve, t, -1).y, 2);
    }
    expect(Math.hypot(bend(curve, curve.start, 1).x, bend(curve, curve.start, 1).y)).toBeLessThan(0.01);
    expect(curve.breaks).toEqual([]);
  });

  it('runs smoothly through its first point when closed', () => {
    const { curve } = through(
      [
        [2, 0],
        [0, 1],
        [-2, 0],
        [0, -3],
        [2, 0],
      ],
      { closed: true },
    );
    const [first, last] = [curve.tangentAt(curve.start), curve.tangentAt(curve.end)];
    expect(first.x).toBeCloseTo(last.x, 12);
    expect(first.y).toBeCloseTo(last.y, 12);
    expect(bend(curve, curve.start, 1).x).toBeCloseTo(bend(curve, curve.end, -1).x, 2);
  });

  it('is a straight line between two points', () => {
    const { curve } = through([
      [1, 1],
      [4, 5],
    ]);
    expect(curve.pointAt(2.5)).toEqual({ x: 2.5, y: 3 });
  });
});

describe('an elliptic arc', () => {
  it('gives points and directions, also skewed and run backwards', () => {
    const curve = ellipseCurve({
      kind: 'ellipse',
      centre: { x: 1, y: 2 },
      major: { x: 3, y: 1 },
      minor: { x: 1, y: 2 },
      start: 2,
      end: -1,
    });
    expect(curve.pointAt(0)).toEqual({ x: 4, y: 3 });
    expect([curve.start, curve.end]).toEqual([2, -1]);
    for (const t of [-0.9, 0, 0.7, 1.9]) {
      const [a, b] = [curve.pointAt(t - 1e-6), curve.pointAt(t + 1e-6)];
      expect(curve.tangentAt(t).x).toBeCloseTo((b.x - a.x) / 2e-6, 6);
      expect(curve.tangentAt(t).y).toBeCloseTo((b.y - a.y) / 2e-6, 6);
    }
  });
});
