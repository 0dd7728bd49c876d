/** Splines and internal gears: what the standards print, the involute by sampling, and the play between shaft and hub. */
import { areaPaths, difference, FillRule, intersect, type Path64 } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { Contour } from '../../geometry/contour.ts';
import { flatten } from '../../geometry/flatten.ts';
import { distanceToSegment } from '../../geometry/measure.ts';
import { soundness } from '../../geometry/soundness.ts';
import type { ShapeInput } from '../list/questions.ts';
import { make, refusal, refusedField, shaped, sizeIn, sizeOf } from '../made.fixture.ts';
import type { Shape } from '../shape.ts';
import { distanceFromInvolute, inv } from '../teeth/involute.ts';

const ring = (s: Shape): Contour => there(s.outlines.at(-1)).contour;

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
      const [shaft, hub] = [shaped({ ...asked, part: 'shaft' }), shaped({ ...asked, part: 'hub' })];
      const alpha = (Number(pressureAngle) * Math.PI) / 180;
      const base = 20 * Math.cos(alpha);
      const plain = Math.PI / 40 + inv(alpha);
      for (const s of [shaft, hub]) expect(soundness(ring(s), 1e-9)).toEqual({ kind: 'sound' });
      const [low, high] = [sizeIn(hub, 'tip-diameter') / 2 + 0.01, sizeIn(shaft, 'tip-diameter') / 2 - 0.01];
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

  it.each([
    ['ISO 4156', { module: 2 }, 'h', 0],
    ['ISO 4156', { module: 2 }, 'f', -0.025],
    ['ISO 4156', { module: 2 }, 'd', -0.08],
    ['ANSI B92.1', { pitch: 12.7 }, 'h', 0],
  ] as const)(
    '%s, %o, fit %s: a gauge feels the basic size at most, a hub at least, and every class leaves less room',
    (standard, pitched, fitClass, es) => {
      const asked = { kind: 'spline', standard, ...pitched, teeth: 20 } as const;
      const basic = Math.PI;
      const widths = (['4', '5', '6', '7'] as const).map((tolerance) => {
        const shaft = shaped({ ...asked, part: 'shaft', class: tolerance, fitClass });
        const hub = shaped({ ...asked, part: 'hub', class: tolerance });
        expect(there(there(sizeOf(shaft, 'effective-thickness')).limits).high).toBeCloseTo(basic + es, 9);
        expect(there(there(sizeOf(hub, 'effective-space')).limits).low).toBeCloseTo(basic, 9);
        const [total, variation] = [sizeIn(shaft, 'total-tolerance'), sizeIn(shaft, 'variation')];
        expect(there(there(sizeOf(shaft, 'tooth-thickness')).limits).low).toBeCloseTo(basic + es - total, 9);
        expect(there(there(sizeOf(shaft, 'tooth-thickness')).limits).high).toBeCloseTo(basic + es - variation, 9);
        expect(there(there(sizeOf(hub, 'space-width')).limits).high).toBeCloseTo(basic + total, 9);
        for (const [piece, key] of [
          [shaft, 'over-pins'],
          [shaft, 'span'],
          [hub, 'between-pins'],
        ] as const) {
          const { figure, limits } = there(sizeOf(piece, key));
          expect(there(limits).low).toBeLessThan(figure.value);
          expect(there(limits).high).toBeGreaterThan(figure.value);
        }
        // Anvils stand square to the flanks: the span moves by the cosine of what the tooth does.
        const span = there(there(sizeOf(shaft, 'span')).limits);
        expect(span.high - span.low).toBeCloseTo((total - variation) * Math.cos(Math.PI / 6), 9);
        return total;
      });
      expect(widths.toSorted((a, b) => a - b)).toEqual(widths);
    },
  );

  it('with a class is cut at the middle of its limits, and the clearance asked for comes on top', () => {
    const asked = { kind: 'spline', module: 2, teeth: 20, part: 'shaft', class: '5', pin: 4 } as const;
    const [plain, loose] = [shaped(asked), shaped({ ...asked, clearance: 0.02 })];
    for (const s of [plain, loose]) {
      const { figure, limits } = there(sizeOf(s, 'tooth-thickness'));
      expect(figure.value).toBeCloseTo((there(limits).low + there(limits).high) / 2, 9);
      const half = figure.value / 40 + inv(Math.PI / 6);
      expect(offInvolute(ring(s), 20, 20 * Math.cos(Math.PI / 6), half, 19.2, 20.9)).toBeLessThan(0.00051);
    }
    expect(sizeIn(plain, 'tooth-thickness') - sizeIn(loose, 'tooth-thickness')).toBeCloseTo(0.02 / Math.cos(Math.PI / 6), 9);
  });

  it('of short inch teeth is wider by what the standard adds, shaft and hub alike', () => {
    const asked = { kind: 'spline', standard: 'ANSI B92.1', pitch: 12.7, teeth: 24, root: 'fillet' } as const;
    for (const [pressureAngle, more] of [
      ['37.5', 0.2],
      ['45', 0.4],
    ] as const) {
      expect(sizeIn(shaped({ ...asked, pressureAngle, part: 'shaft' }), 'tooth-thickness')).toBeCloseTo(Math.PI + more, 9);
      expect(sizeIn(shaped({ ...asked, pressureAngle, part: 'hub' }), 'space-width')).toBeCloseTo(Math.PI + more, 9);
    }
  });

  it('names the field of what it refuses', () => {
    expect(refusal({ kind: 'spline', module: 2, teeth: 20, helix: 12 })).toEqual(['spline-helical', 'helix']);
    expect(refusal({ kind: 'spline', module: 2, teeth: 20, part: 'shaft', spanTeeth: 9 })).toEqual(['spline-impossible', 'spanTeeth']);
    expect(refusal({ kind: 'spline', module: 2, teeth: 20, spanTeeth: 4 })).toEqual(['spline-impossible', 'spanTeeth']);
    expect(refusal({ kind: 'spline', module: 0.25, teeth: 6, class: '4', engagement: 2000 })).toEqual([
      'spline-class-without-room',
      'engagement',
    ]);
    expect(refusal({ kind: 'spline', standard: 'ANSI B92.1', pitch: 12, teeth: 20, part: 'shaft', class: '5', fitClass: 'd' })).toEqual([
      'spline-class-not-in-table',
      'fitClass',
    ]);
    expect(refusal({ kind: 'spline', module: 20, teeth: 60, part: 'shaft', class: '5', fitClass: 'e' })).toEqual([
      'spline-class-not-in-table',
      'fitClass',
    ]);
    expect(refusedField({ kind: 'spline', teeth: 20 })).toBe('module');
    expect(refusedField({ kind: 'spline', standard: 'ANSI B92.1', module: 2, teeth: 20 })).toBe('pitch');
    expect(refusal({ kind: 'spline', module: 2, teeth: 20, pressureAngle: '45' })).toEqual(['spline-root-form', 'root']);
    expect(refusedField({ kind: 'spline', module: 2, teeth: 20, rootRadius: 5 })).toBe('rootRadius');
    expect(refusedField({ kind: 'spline', module: 2, teeth: 20, outside: 40 })).toBe('outside');
    expect(refusedField({ kind: 'spline', module: 2, teeth: 20, part: 'shaft', clearance: 5, share: 1 })).toBe('clearance');
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
          class: fc.constantFrom('4', '7', undefined),
          fitClass: fc.constantFrom('h', 'd', 'js', 'k'),
          engagement: fc.option(fc.double({ min: 0.1, max: 2000, noNaN: true }), { nil: undefined }),
          spanTeeth: fc.option(fc.integer({ min: 2, max: 30 }), { nil: undefined, freq: 1 }),
        }),
        (input) => {
          const made = make({ kind: 'spline', ...input } as ShapeInput);
          if (made.kind === 'refused') expect(made.findings.every((f) => f.place?.kind === 'field')).toBe(true);
          else expect(made.shape.outlines.map((o) => soundness(o.contour, 1e-6).kind)).toEqual(['sound']);
        },
      ),
      { seed: 11, numRuns: 60 },
    );
  });
});

describe('an internal gear', () => {
  // Tips of full height would meet the pinion below its involute.
  it('takes its pinion through a pitch without overlap', () => {
    const ringGear = shaped({ kind: 'internal-gear', module: 2, teeth: 50, addendum: 0.8, clearance: 0.02 });
    const pinion = shaped({ kind: 'gear', module: 2, teeth: 20, clearance: 0.02 });
    expect(soundness(ring(ringGear), 1e-9)).toEqual({ kind: 'sound' });
    const opening = (turn: number): Path64 => polygon(ring(ringGear), turn);
    for (let i = 0; i < 8; i += 1) {
      const turn = ((i / 8) * 2 * Math.PI) / 20;
      // Both turn the same way; a space of the ring and a tooth of the pinion meet on X.
      const outside = difference([polygon(there(pinion.outlines[0]).contour, turn, 30)], [opening(turn * (20 / 50))], FillRule.NonZero);
      expect(Math.abs(areaPaths(outside)) / NANO ** 2).toBeLessThan(1e-3);
      const through = intersect([polygon(there(pinion.outlines[0]).contour, turn, 30)], [opening(turn * (20 / 50))], FillRule.NonZero);
      expect(areaPaths(through)).toBeGreaterThan(0);
    }
  });

  it('keeps to the involute, and refuses tips inside the base circle', () => {
    const gear = shaped({ kind: 'internal-gear', module: 2, teeth: 50 });
    const base = 50 * Math.cos((20 * Math.PI) / 180);
    const half = Math.PI / 100 + inv((20 * Math.PI) / 180);
    expect(offInvolute(ring(gear), 50, base, half, 48.01, sizeIn(gear, 'form-diameter') / 2 - 0.01)).toBeLessThan(0.00051);
    expect(refusal({ kind: 'internal-gear', module: 2, teeth: 20 })).toEqual(['gear-ring-tip', 'addendum']);
    expect(refusedField({ kind: 'internal-gear', module: 2, teeth: 40, outside: 80 })).toBe('outside');
  });
});
