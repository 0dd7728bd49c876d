/** SPLINE in all its kinds: weights, missing knots, fit points, open rings, and what is no spline at all. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, entity, type Tag } from '../../../test/dxf-writer.ts';
import { there } from '../../../test/there.ts';
import type { Curve, DrawnFile, Spline } from '../curve/curve.ts';
import { splineCurve } from '../curve/spline.ts';
import { readDxf } from './read-dxf.ts';

const read = (...entities: readonly (readonly Tag[])[]): DrawnFile => readDxf(asciiDxf(dxfTags({ entities })));
const curvesOf = (...entities: readonly (readonly Tag[])[]): readonly Curve[] => read(...entities).curves.map((c) => c.curve);
const codesOf = (file: DrawnFile): readonly string[] => file.findings.map((f) => f.code);

const spline = (
  degree: number,
  knots: readonly number[],
  points: readonly (readonly number[])[],
  more: readonly Tag[] = [],
): readonly Tag[] =>
  entity('SPLINE', { 70: 0, 71: degree, 72: knots.length, 73: points.length, 74: 0 }, [
    ...knots.map((t): Tag => [40, t]),
    ...more,
    ...points.flatMap(([x, y, z]): readonly Tag[] => [
      [10, there(x)],
      [20, there(y)],
      [30, z ?? 0],
    ]),
  ]);

describe('SPLINE', () => {
  const quarter = [
    [1, 0],
    [1, 1],
    [0, 1],
  ];
  const weights = [1, Math.SQRT1_2, 1].map((w): Tag => [41, w]);

  it('keeps weights: this one is a quarter of a circle', () => {
    const [curve] = curvesOf(spline(2, [0, 0, 0, 1, 1, 1], quarter, weights)) as [Spline];
    const at = splineCurve(curve);
    for (const t of [0, 0.25, 0.5, 0.9, 1]) expect(Math.hypot(at.pointAt(t).x, at.pointAt(t).y)).toBeCloseTo(1, 14);
  });

  it('makes even knots where there are none, and says so', () => {
    const file = read(
      spline(
        2,
        [],
        [
          [0, 0],
          [1, 2],
          [2, 0],
          [3, 2],
        ],
      ),
    );
    expect((there(file.curves[0]).curve as Spline).knots).toEqual([0, 0, 0, 1, 2, 2, 2]);
    expect(codesOf(file)).toEqual(['spline-knots-made']);
  });

  it('is a polyline where its degree is 1', () => {
    expect(
      curvesOf(
        spline(
          1,
          [0, 0, 1, 2, 2],
          [
            [0, 0],
            [1, 0],
            [1, 1],
          ],
        ),
      ),
    ).toMatchObject([{ kind: 'line', to: { x: 1, y: 0 } }, { kind: 'line' }]);
  });

  const through = (points: readonly (readonly [number, number])[], numbers = {}, more: readonly Tag[] = []): readonly Tag[] =>
    entity('SPLINE', { 70: 0, 71: 3, 74: points.length, ...numbers }, [
      ...more,
      ...points.flatMap(([x, y]): Tag[] => [
        [11, x],
        [21, y],
        [31, 0],
      ]),
    ]);

  it('passes through its fit points where it has no others, in the directions given', () => {
    const points = [
      [0, 0],
      [3, 2],
      [6, 0],
      [9, 5],
    ] as const;
    const [curve] = curvesOf(
      through(points, {}, [
        [12, 0],
        [22, 1],
        [32, 0],
        [13, 1],
        [23, 0],
        [33, 0],
      ]),
    ) as [Spline];
    const at = splineCurve(curve);
    const stops = [...new Set(curve.knots)];
    points.forEach(([x, y], i) => {
      expect(at.pointAt(there(stops[i])).x).toBeCloseTo(x, 12);
      expect(at.pointAt(there(stops[i])).y).toBeCloseTo(y, 12);
    });
    expect(at.tangentAt(at.start).x).toBeCloseTo(0, 12);
    expect(at.tangentAt(at.end).y).toBeCloseTo(0, 12);
    expect(at.breaks).toEqual([]);
  });

  it('takes the points that are there where another number is told, and says so', () => {
    const file = read(
      through(
        [
          [0, 0],
          [3, 2],
          [6, 0],
        ],
        { 74: 4 },
      ),
    );
    expect(file.curves.length).toBe(1);
    expect(codesOf(file)).toContain('count-differs');
  });

  it('closes smoothly through its fit points where it says so', () => {
    const [curve] = curvesOf(
      through(
        [
          [2, 0],
          [0, 2],
          [-2, 0],
          [0, -2],
        ],
        { 70: 1 },
      ),
    ) as [Spline];
    const at = splineCurve(curve);
    expect(at.pointAt(at.end)).toEqual(at.pointAt(at.start));
    expect(at.tangentAt(at.start).x).toBeCloseTo(0, 12);
    expect(at.tangentAt(at.end).x).toBeCloseTo(0, 12);
  });

  it('does without a knot of its own for a fit point that repeats the one before', () => {
    const [curve] = curvesOf(
      through([
        [0, 0],
        [3, 2],
        [3, 2],
        [6, 0],
      ]),
    ) as [Spline];
    expect(curve.points.every((p) => Number.isFinite(p.x) && Number.isFinite(p.y))).toBe(true);
    expect(curve.points.length).toBe(7);
    expect(
      codesOf(
        read(
          through([
            [0, 0],
            [1, 1],
          ]),
        ),
      ),
    ).toEqual(['spline-through-points']);
  });

  it('is evaluated only where it is whole when its knots are not clamped', () => {
    const ring = [
      [2, 0],
      [1, 2],
      [-1, 2],
      [-2, 0],
      [-1, -2],
      [1, -2],
      [2, 0],
      [1, 2],
      [-1, 2],
    ];
    const [curve] = curvesOf(
      spline(
        3,
        Array.from({ length: 13 }, (_, i) => i),
        ring,
      ),
    ) as [Spline];
    const at = splineCurve(curve);
    expect([at.start, at.end]).toEqual([3, 9]);
    expect(at.pointAt(3)).toEqual(at.pointAt(9));
  });

  it.each([
    ['too few knots', spline(2, [0, 0, 0, 1, 1], quarter), 'entity-unfinished'],
    ['falling knots', spline(2, [0, 0, 0, 1, 0.5, 1], quarter), 'entity-impossible'],
    ['knots that span nothing', spline(2, [1, 1, 1, 1, 1, 1], quarter), 'entity-impossible'],
    [
      'knots that tear it',
      spline(
        1,
        [0, 0, 1, 1, 2, 2],
        [
          [0, 0],
          [1, 0],
          [5, 5],
          [6, 5],
        ],
      ),
      'entity-impossible',
    ],
    ['too few points for its degree', spline(3, [0, 0, 0, 0, 1, 1, 1], quarter), 'entity-unfinished'],
    [
      'a weight of 0',
      spline(2, [0, 0, 0, 1, 1, 1], quarter, [
        [41, 1],
        [41, 0],
        [41, 1],
      ]),
      'entity-impossible',
    ],
    [
      'a weight too few',
      spline(2, [0, 0, 0, 1, 1, 1], quarter, [
        [41, 1],
        [41, 1],
      ]),
      'entity-unfinished',
    ],
    ['degree 99', spline(99, [0, 0, 0, 1, 1, 1], quarter), 'entity-impossible'],
    ['no points', entity('SPLINE', { 71: 3 }), 'entity-unfinished'],
  ])('is left out with %s', (_, tags, code) => {
    const file = read(tags);
    expect(file.curves).toEqual([]);
    expect(codesOf(file)).toEqual([code]);
  });
});
