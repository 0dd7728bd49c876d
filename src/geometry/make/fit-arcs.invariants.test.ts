/** Arcs fitted to any curve keep the tolerance and the direction; what cannot be fitted is named. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { path } from '../contour.ts';
import { turnAt } from '../joints.ts';
import { lengthOf } from '../measure.ts';
import { nearestOnChain } from '../near/distance.ts';
import type { Point, Segment } from '../segment.ts';
import { soundness } from '../soundness.ts';
import type { FitCurve } from './fit-arcs.ts';
import { fitArcs } from './fit-arcs.ts';

const tolerance = 0.0005;
const ellipse = (a: number, b: number, start = 0, end = 2 * Math.PI): FitCurve => ({
  start,
  end,
  closed: Math.abs(end - start) > 6.28,
  pointAt: (t) => ({ x: a * Math.cos(t), y: b * Math.sin(t) }),
  tangentAt: (t) => ({ x: -a * Math.sin(t), y: b * Math.cos(t) }),
});

/** A rational cubic by its four points and weights. */
const cubic = (points: readonly Point[], weights: readonly number[]): FitCurve => {
  const parts = (t: number): { p: Point; w: number; dp: Point; dw: number } => {
    const u = 1 - t;
    const basis = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    const slope = [-3 * u * u, 3 * u * u - 6 * u * t, 6 * u * t - 3 * t * t, 3 * t * t];
    const sum = (of: readonly number[], f: (i: number) => number): number => of.reduce((s, b, i) => s + b * there(weights[i]) * f(i), 0);
    return {
      p: { x: sum(basis, (i) => there(points[i]).x), y: sum(basis, (i) => there(points[i]).y) },
      w: sum(basis, () => 1),
      dp: { x: sum(slope, (i) => there(points[i]).x), y: sum(slope, (i) => there(points[i]).y) },
      dw: sum(slope, () => 1),
    };
  };
  return {
    start: 0,
    end: 1,
    pointAt: (t) => {
      const { p, w } = parts(t);
      return { x: p.x / w, y: p.y / w };
    },
    tangentAt: (t) => {
      const { p, w, dp, dw } = parts(t);
      return { x: (dp.x * w - p.x * dw) / (w * w), y: (dp.y * w - p.y * dw) / (w * w) };
    },
  };
};

const worst = (curve: FitCurve, segments: readonly Segment[], samples = 1500): number => {
  let most = 0;
  for (let i = 0; i <= samples; i += 1) {
    const p = curve.pointAt(curve.start + ((curve.end - curve.start) * i) / samples);
    most = Math.max(most, nearestOnChain(path(segments), p).distance);
  }
  return most;
};

const fitted = (curve: FitCurve): readonly Segment[] => {
  const fit = fitArcs(curve, tolerance);
  if (fit.kind !== 'fitted') throw new Error(`not fitted: ${fit.kind}`);
  expect(fit.deviation).toBeLessThanOrEqual(tolerance);
  expect(soundness({ closed: curve.closed === true, segments: fit.segments } as never, 1e-9)).toEqual({ kind: 'sound' });
  return fit.segments;
};
const kinks = (segments: readonly Segment[], over = 1e-6): number =>
  segments.slice(1).filter((s, i) => Math.abs(turnAt(there(segments[i]), s)) > over).length;

const coordinate = fc.integer({ min: -100, max: 100 }).map((v) => v / 4);
const place = fc.record({ x: coordinate, y: coordinate });

describe('fitting arcs', () => {
  it('stays within the tolerance of ellipses everywhere, tangentially, in either direction', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 60, noNaN: true }),
        fc.double({ min: 0.02, max: 1, noNaN: true }),
        fc.boolean(),
        (a, ratio, back) => {
          const curve = back ? ellipse(a, a * ratio, 2 * Math.PI, 0) : ellipse(a, a * ratio);
          const segments = fitted(curve);
          expect(worst(curve, segments)).toBeLessThan(tolerance);
          expect(kinks(segments)).toBe(0);
        },
      ),
      { seed: 7, numRuns: 25 },
    );
  });
  it('stays within the tolerance of rational cubics, whatever their loops and cusps, and ends exactly on their ends', () => {
    fc.assert(
      fc.property(
        fc.array(place, { minLength: 4, maxLength: 4 }),
        fc.array(fc.double({ min: 0.2, max: 4, noNaN: true }), { minLength: 4, maxLength: 4 }),
        (points, weights) => {
          const curve = cubic(points, weights);
          const fit = fitArcs(curve, tolerance);
          if (fit.kind === 'no extent')
            return expect(points.every((p) => p.x === there(points[0]).x && p.y === there(points[0]).y)).toBe(true);
          const segments = fitted(curve);
          expect(there(segments[0]).from).toEqual(curve.pointAt(0));
          expect(there(segments.at(-1)).to).toEqual(curve.pointAt(1));
          expect(worst(curve, segments, 700)).toBeLessThan(tolerance);
          expect(segments.length).toBeLessThan(300);
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });
  it('needs no more arcs than bisection was seen to need', () => {
    expect(fitted(ellipse(5, 2)).length).toBeLessThanOrEqual(64);
    expect(fitted(ellipse(50, 5)).length).toBeLessThanOrEqual(120);
  });
  it('gives back a circle, a line, and lines with the corner between them', () => {
    expect(fitted(ellipse(5, 5))).toMatchObject([{ kind: 'arc', radius: 5 }]);
    const straight = fitted({ start: 0, end: 1, pointAt: (t) => ({ x: 10 * t ** 3, y: 0 }), tangentAt: (t) => ({ x: 30 * t * t, y: 0 }) });
    expect(straight).toEqual([{ kind: 'line', from: { x: 0, y: 0 }, to: { x: 10, y: 0 } }]);
    const roof = {
      start: -1,
      end: 1.3,
      pointAt: (t: number) => ({ x: t, y: -Math.abs(t) }),
      tangentAt: (t: number) => ({ x: 1, y: -Math.sign(t) }),
    };
    expect(fitted(roof).map((s) => s.kind)).toEqual(['line', 'line']);
    expect(fitted({ ...roof, breaks: [0] }).map((s) => s.kind)).toEqual(['line', 'line']);
  });
  it('runs into a cusp and out again', () => {
    const cusp = {
      start: -1,
      end: 1.137,
      pointAt: (t: number) => ({ x: t * t, y: t ** 3 }),
      tangentAt: (t: number) => ({ x: 2 * t, y: 3 * t * t }),
    };
    const segments = fitted(cusp);
    expect(worst(cusp, segments)).toBeLessThan(tolerance);
    const exact = (1 / 27) * ((4 + 9) ** 1.5 - 8 + (4 + 9 * 1.137 ** 2) ** 1.5 - 8);
    expect(segments.reduce((sum, s) => sum + lengthOf(s), 0)).toBeCloseTo(exact, 3);
  });
  it('names what cannot be fitted, in bounded time', () => {
    const flat = { tangentAt: () => ({ x: 1, y: 0 }) };
    expect(fitArcs({ start: 0, end: 1, pointAt: () => ({ x: 1, y: 1 }), tangentAt: () => ({ x: 0, y: 0 }) }, tolerance).kind).toBe(
      'no extent',
    );
    expect(fitArcs({ start: 0, end: 1, pointAt: (t) => ({ x: t, y: t > 0.5 ? Number.NaN : 0 }), ...flat }, tolerance).kind).toBe(
      'not finite',
    );
    expect(fitArcs({ start: 0, end: 1, pointAt: (t) => ({ x: t, y: t > 0.37 ? 1 : 0 }), ...flat }, tolerance).kind).toBe('jumps');
    const noise = {
      start: 0,
      end: 1,
      pointAt: (t: number) => ({ x: t, y: Math.sin(1e7 * t) }),
      tangentAt: (t: number) => ({ x: 1, y: 1e7 * Math.cos(1e7 * t) }),
    };
    expect(fitArcs(noise, tolerance, 300)).toEqual({ kind: 'too many', limit: 300 });
  });
});
