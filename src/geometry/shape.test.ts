/** Areas, corners, soundness, nesting, simplifying, transforms and bulges, case by case. */
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { areaOf, centroidOf, regionAreaOf } from './area.ts';
import { arcByDegrees, fromBulge } from './bulge.ts';
import { regionOf, reverseChain } from './chain.ts';
import { contour, path } from './contour.ts';
import { disc, polygon, rectangle, roundedRectangle, star } from './example-shapes.fixture.ts';
import { cornerAt, insideCorners } from './joints.ts';
import { lengthOf } from './measure.ts';
import { nest, regionsOf } from './near/containment.ts';
import { line, point } from './segment.ts';
import { simplify } from './simplify.ts';
import { soundness } from './soundness.ts';
import { inTurn, mirroring, rotation, rotationOfDegrees, transformPoint, translation } from './transform.ts';

describe('area', () => {
  it('of discs, rings and half discs is the formula of the books', () => {
    expect(areaOf(disc(1, 2, 3))).toBeCloseTo(9 * Math.PI, 12);
    expect(areaOf(reverseChain(disc(1, 2, 3)))).toBeCloseTo(-9 * Math.PI, 12);
    expect(regionAreaOf(regionOf(disc(0, 0, 5), [disc(0, 0, 3)]))).toBeCloseTo(16 * Math.PI, 12);
    const half = contour([arcByDegrees(point(0, 0), 3, 0, 180), line(point(-3, 0), point(3, 0))]);
    expect(areaOf(half)).toBeCloseTo(4.5 * Math.PI, 12);
    expect(centroidOf(half).y).toBeCloseTo(4 / Math.PI, 12);
    expect(centroidOf(disc(1, 2, 3))).toEqual({ x: 1, y: 2 });
  });
});

describe('corners', () => {
  it('of a square open to a quarter inside and three quarters outside', () => {
    const square = rectangle(2, 2);
    expect(cornerAt(square, 1, 'left', 1e-6)).toEqual({
      kind: 'inside corner',
      at: { x: 2, y: 0 },
      turn: Math.PI / 2,
      opening: Math.PI / 2,
    });
    expect(cornerAt(square, 1, 'right', 1e-6)).toMatchObject({ kind: 'outside corner', opening: 1.5 * Math.PI });
    expect(cornerAt(roundedRectangle(9, 9, 1), 1, 'left', 1e-6).kind).toBe('tangent');
    expect(cornerAt(path(square.segments), 0, 'left', 1e-6).kind).toBe('end');
    expect(cornerAt(path(square.segments), 4, 'left', 1e-6).kind).toBe('end');
  });
  it('lists what a disc cannot reach into, on either side and in either direction', () => {
    const slotted = polygon([
      [0, 0],
      [9, 0],
      [9, 6],
      [6, 6],
      [6, 2],
      [3, 2],
      [3, 6],
      [0, 6],
    ]);
    for (const c of [slotted, reverseChain(slotted)]) {
      expect(insideCorners(c, 'inside')).toHaveLength(6);
      expect(insideCorners(c, 'outside').map((k) => k.at.y)).toEqual([2, 2]);
    }
    const rounded = insideCorners(roundedRectangle(9, 9, 1.5), 'inside');
    expect(rounded).toHaveLength(4);
    expect(there(rounded[0]).kind).toBe('round');
    expect(there(rounded[0]).radius).toBeCloseTo(1.5, 12);
    expect(insideCorners(roundedRectangle(9, 9, 1.5), 'outside')).toEqual([]);
  });
});

describe('soundness', () => {
  it('passes what is right and names each fault with its segment', () => {
    for (const c of [rectangle(1, 1), disc(0, 0, 1), star([9, 8, 9, 7], [0.3, -0.2])])
      expect(soundness(c, 1e-9)).toEqual({ kind: 'sound' });
    const faults = (segments: Parameters<typeof contour>[0]): string => {
      const s = soundness(contour(segments), 1e-9);
      return s.kind === 'sound' ? '' : s.faults.map((f) => `${f.kind} ${f.segment}`).join(', ');
    };
    const [a, b, c, d] = rectangle(1, 1).segments as [never, never, never, never];
    expect(() => contour([])).toThrow('at least one segment');
    expect(faults([a, b, c])).toBe('gap 0');
    expect(faults([a, line(point(1, 0), point(1, 0)), b, c, d])).toBe('zero length 1');
    expect(faults([line(point(0, 0), point(Number.NaN, 0))])).toContain('not finite 0');
    const round = there(disc(0, 0, 1).segments[0]);
    expect(faults([{ ...round, sweep: 7 } as never])).toBe('bad sweep 0');
    expect(faults([{ ...round, sweep: 3 } as never])).toBe('bad sweep 0');
    expect(faults([{ ...round, radius: 1.1 } as never])).toBe('ends off the circle 0');
    const half = arcByDegrees(point(0, 0), 1, 0, 180);
    expect(faults([{ ...half, sweep: -half.sweep / 2 }, line(half.to, half.from)])).toBe('ends off the circle 0');
  });
});

describe('nesting', () => {
  it('finds parents and depths, in any order and direction, also where contours touch', () => {
    const shapes = [disc(2, 2, 0.5), rectangle(10, 10), disc(2, 2, 1), reverseChain(disc(7, 7, 3)), disc(20, 20, 1), disc(2.5, 2, 0.5)];
    expect(nest(shapes.slice(0, 5), 1e-6)).toEqual([
      { parent: 2, depth: 2 },
      { parent: -1, depth: 0 },
      { parent: 1, depth: 1 },
      { parent: 1, depth: 1 },
      { parent: -1, depth: 0 },
    ]);
    expect(nest([there(shapes[2]), there(shapes[5])], 1e-6)[1]).toEqual({ parent: 0, depth: 1 });
    const regions = regionsOf(shapes.slice(0, 5), 1e-6);
    expect(regions.map((r) => r.holes.length)).toEqual([0, 2, 0]);
    expect(regions.every((r) => areaOf(r.outer) > 0 && r.holes.every((h) => areaOf(h) < 0))).toBe(true);
  });
  it('nests ten thousand holes in a plate', () => {
    const holes = Array.from({ length: 10_000 }, (_, i) => disc(1 + (i % 100), 1 + Math.floor(i / 100), 0.4));
    const nested = nest([...holes, rectangle(102, 102)], 1e-6);
    expect(nested.filter((n) => n.parent === 10_000 && n.depth === 1)).toHaveLength(10_000);
  });
});

describe('simplify', () => {
  it('joins lines in line, also over the start, and leaves real corners', () => {
    const dotted = polygon([
      [1, 0],
      [2, 0],
      [4, 0],
      [4, 1],
      [4, 3],
      [0, 3],
      [0, 0],
    ]);
    expect(simplify(dotted, 1e-9).segments).toHaveLength(4);
    expect(areaOf(simplify(dotted, 1e-9))).toBe(12);
    expect(simplify(rectangle(3, 2), 1e-9)).toEqual(rectangle(3, 2));
  });
  it('keeps every dropped joint within the tolerance on a slow bend', () => {
    const bend = path(Array.from({ length: 400 }, (_, i) => line(point(i, (i * i) / 1e4), point(i + 1, ((i + 1) * (i + 1)) / 1e4))));
    const fewer = simplify(bend, 0.01);
    expect(fewer.segments.length).toBeLessThan(40);
    for (const s of bend.segments) {
      const on = there(fewer.segments.find((m) => m.from.x <= s.from.x && m.to.x >= s.to.x));
      const height = on.from.y + ((s.from.x - on.from.x) * (on.to.y - on.from.y)) / (on.to.x - on.from.x);
      expect(Math.abs(height - s.from.y)).toBeLessThan(0.0101);
    }
  });
  it('joins the parts of a circle to the whole of it and the parts of an arc to the arc', () => {
    const parts = (n: number, turn: number) =>
      Array.from({ length: n }, (_, i) => arcByDegrees(point(3, 4), 5, (turn * i) / n, (turn * (i + 1)) / n));
    const whole = parts(8, 360).map((s, i, all) => ({ ...s, to: there(all[(i + 1) % 8]).from }));
    expect(simplify(contour(whole), 1e-9).segments).toMatchObject([{ kind: 'arc', radius: 5, sweep: 2 * Math.PI }]);
    const [joined, ...rest] = simplify(path(parts(9, 300).map((s, i, all) => ({ ...s, to: all[i + 1]?.from ?? s.to }))), 1e-9).segments;
    expect(rest).toEqual([]);
    expect(lengthOf(there(joined))).toBeCloseTo((5 * 300 * Math.PI) / 180, 9);
  });
});

describe('transforms', () => {
  it('turn by quarters without any rounding', () => {
    expect(transformPoint(rotationOfDegrees(90), point(3, 7))).toEqual({ x: -7, y: 3 });
    expect(transformPoint(rotation(-Math.PI / 2, point(1, 1)), point(3, 7))).toEqual({ x: 7, y: -1 });
    expect(transformPoint(rotationOfDegrees(-450), point(3, 7))).toEqual({ x: 7, y: -3 });
    expect(transformPoint(mirroring(Math.PI / 2), point(3, 7))).toEqual({ x: -3, y: 7 });
  });
  it('follow each other in the order told', () => {
    const first = inTurn(mirroring(0.4), translation(3, -1));
    const both = inTurn(first, inTurn(rotation(1.1), mirroring(2, point(4, 4))));
    const p = point(2, 9);
    const stepwise = transformPoint(mirroring(2, point(4, 4)), transformPoint(rotation(1.1), transformPoint(first, p)));
    expect(transformPoint(both, p).x).toBeCloseTo(stepwise.x, 12);
    expect(transformPoint(both, p).y).toBeCloseTo(stepwise.y, 12);
  });
});

describe('bulges', () => {
  it('too small to rise over their chord are lines, and none makes a number that is not finite', () => {
    for (const b of [0, 1e-300, -1e-9]) expect(fromBulge(point(0, 0), point(1, 0), b).kind).toBe('line');
    const big = fromBulge(point(0, 0), point(1, 0), 1e6);
    expect(soundness(contour([big, line(point(1, 0), point(0, 0))]), 1e-6)).toEqual({ kind: 'sound' });
  });
});
