/** Splines and internal gears: what the standards print, the involute by sampling, and the play between shaft and hub. */
import { areaPaths, difference, FillRule, intersect, type Path64 } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Contour } from '../../geometry/contour.ts';
import { flatten } from '../../geometry/flatten.ts';
import { distanceToSegment } from '../../geometry/measure.ts';
import { soundness } from '../../geometry/soundness.ts';
import { distanceFromInvolute, inv } from '../involute.ts';
import { makeShape, type ShapeInput, shapeSchema } from '../make.ts';
import type { Shape } from '../shape.ts';

const make = (input: ShapeInput) => makeShape(shapeSchema.parse(input));
const shape = (input: ShapeInput): Shape => {
  const made = make(input);
  if (made.kind === 'refused') throw new Error(made.findings[0]?.sentence);
  return made.shape;
};
const field = (input: ShapeInput): string => {
  const made = make(input);
  const place = made.kind === 'refused' ? made.findings[0]?.place : undefined;
  return place?.kind === 'field' ? place.path : made.kind;
};
const size = ({ sizes }: Shape, key: string): number => sizes.find((s) => s.figure.key === key)?.figure.value ?? Number.NaN;
const ring = (s: Shape): Contour => s.outlines.at(-1)!.contour;

/** Every place on a flank that lies well between its ends, against the equation: `half` is the half angle on the base circle. */
const offInvolute = (contour: Contour, teeth: number, base: number, half: number, from: number, to: number): number =>
  flatten(contour, 1e-6).reduce((most, p) => {
    const radius = Math.hypot(p.x, p.y);
    if (radius < from || radius > to) return most;
    const pitch = (2 * Math.PI) / teeth;
    const angle = Math.atan2(p.y, p.x);
    const own = angle - pitch * Math.round(angle / pitch);
    const there = { x: radius * Math.cos(own), y: radius * Math.sin(own) };
    return Math.max(most, distanceFromInvolute(there, base, Math.sign(own) * half, own > 0 ? -1 : 1));
  }, 0);

const NANO = 1e6;
const polygon = (contour: Contour, turn = 0, x = 0): Path64 =>
  flatten(contour, 1e-5).map((p) => ({
    x: Math.round((Math.cos(turn) * p.x - Math.sin(turn) * p.y + x) * NANO),
    y: Math.round((Math.sin(turn) * p.x + Math.cos(turn) * p.y) * NANO),
  }));

describe('an involute spline', () => {
  it.each([
    ['ISO 4156', '30', 'flat'],
    ['ISO 4156', '30', 'fillet'],
    ['ISO 4156', '37.5', 'fillet'],
    ['ISO 4156', '45', 'fillet'],
  ] as const)(
    '%s, %s°, %s root: shaft and hub keep to the involute and clear each other by what was asked',
    (standard, pressureAngle, root) => {
      const clearance = 0.03;
      const asked = { kind: 'spline', standard, module: 2, teeth: 20, pressureAngle, root, clearance } as const;
      const [shaft, hub] = [shape({ ...asked, part: 'shaft' }), shape({ ...asked, part: 'hub' })];
      const alpha = (Number(pressureAngle) * Math.PI) / 180;
      const base = 20 * Math.cos(alpha);
      const plain = Math.PI / 40 + inv(alpha);
      for (const s of [shaft, hub]) expect(soundness(ring(s), 1e-9)).toEqual({ kind: 'sound' });
      const [low, high] = [size(hub, 'tip-diameter') / 2 + 0.01, size(shaft, 'tip-diameter') / 2 - 0.01];
      expect(offInvolute(ring(shaft), 20, base, plain - clearance / 2 / base, low, high)).toBeLessThan(0.00051);
      expect(offInvolute(ring(hub), 20, base, plain + clearance / 2 / base, low, high)).toBeLessThan(0.00051);
      const walls = flatten(ring(shaft), 1e-3)
        .filter((p) => Math.hypot(p.x, p.y) > low && Math.hypot(p.x, p.y) < high && Math.abs(Math.atan2(p.y, p.x)) < 0.16)
        .map((p) => Math.min(...ring(hub).segments.map((s) => distanceToSegment(s, p))));
      expect(walls.length).toBeGreaterThan(8);
      expect(Math.min(...walls)).toBeGreaterThan(clearance - 0.0011);
      expect(Math.max(...walls)).toBeLessThan(clearance + 0.0011);
      const inside = areaPaths(difference([polygon(ring(shaft))], [polygon(ring(hub))], FillRule.NonZero));
      expect(inside / NANO ** 2).toBeLessThan(1e-6);
    },
  );

  it('names the field of what it refuses', () => {
    expect(field({ kind: 'spline', teeth: 20 })).toBe('module');
    expect(field({ kind: 'spline', standard: 'ANSI B92.1', module: 2, teeth: 20 })).toBe('pitch');
    expect(field({ kind: 'spline', module: 2, teeth: 20, pressureAngle: '45' })).toBe('root');
    expect(field({ kind: 'spline', module: 2, teeth: 20, rootRadius: 5 })).toBe('rootRadius');
    expect(field({ kind: 'spline', module: 2, teeth: 20, outside: 40 })).toBe('outside');
    expect(field({ kind: 'spline', module: 2, teeth: 20, part: 'shaft', clearance: 5, share: 1 })).toBe('clearance');
  });

  it('never draws what is no number', () => {
    fc.assert(
      fc.property(
        fc.record({
          part: fc.constantFrom('shaft', 'hub'),
          module: fc.double({ min: 0.25, max: 10, noNaN: true }),
          teeth: fc.integer({ min: 6, max: 90 }),
          pressureAngle: fc.constantFrom('30', '37.5', '45'),
          root: fc.constantFrom('flat', 'fillet'),
          clearance: fc.double({ min: -0.05, max: 0.5, noNaN: true }),
        }),
        (input) => {
          const made = make({ kind: 'spline', ...input } as ShapeInput);
          if (made.kind === 'refused') expect(made.findings.every((f) => f.place?.kind === 'field')).toBe(true);
          else expect(made.shape.outlines.map((o) => soundness(o.contour, 1e-6).kind)).toEqual(['sound']);
        },
      ),
      { seed: 11, numRuns: 40 },
    );
  });
});

describe('an internal gear', () => {
  // Tips of full height would meet the pinion below its involute.
  it('takes its pinion through a pitch without overlap', () => {
    const ringGear = shape({ kind: 'internal-gear', module: 2, teeth: 50, addendum: 0.8, clearance: 0.02 });
    const pinion = shape({ kind: 'gear', module: 2, teeth: 20, clearance: 0.02 });
    expect(soundness(ring(ringGear), 1e-9)).toEqual({ kind: 'sound' });
    const opening = (turn: number): Path64 => polygon(ring(ringGear), turn);
    for (let i = 0; i < 8; i += 1) {
      const turn = ((i / 8) * 2 * Math.PI) / 20;
      // Both turn the same way; a space of the ring and a tooth of the pinion meet on X.
      const outside = difference([polygon(pinion.outlines[0]!.contour, turn, 30)], [opening(turn * (20 / 50))], FillRule.NonZero);
      expect(Math.abs(areaPaths(outside)) / NANO ** 2).toBeLessThan(1e-3);
      const through = intersect([polygon(pinion.outlines[0]!.contour, turn, 30)], [opening(turn * (20 / 50))], FillRule.NonZero);
      expect(areaPaths(through)).toBeGreaterThan(0);
    }
  });

  it('keeps to the involute, and refuses tips inside the base circle', () => {
    const gear = shape({ kind: 'internal-gear', module: 2, teeth: 50 });
    const base = 50 * Math.cos((20 * Math.PI) / 180);
    const half = Math.PI / 100 + inv((20 * Math.PI) / 180);
    expect(offInvolute(ring(gear), 50, base, half, 48.01, size(gear, 'form-diameter') / 2 - 0.01)).toBeLessThan(0.00051);
    expect(field({ kind: 'internal-gear', module: 2, teeth: 20 })).toBe('addendum');
    expect(field({ kind: 'internal-gear', module: 2, teeth: 40, outside: 80 })).toBe('outside');
  });
});
