/** Ratchet wheels: sound, as deep and leaning as they say, standing back evenly, and doubted where a pawl would leave them. */
import { areaPaths, EndType, FillRule, inflatePaths, JoinType, type Path64, xor } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { flatten } from '../../geometry/flatten.ts';
import { cornerAt } from '../../geometry/joints.ts';
import { distanceToSegment } from '../../geometry/measure.ts';
import { selfCrossings } from '../../geometry/near/crossings.ts';
import { soundness } from '../../geometry/soundness.ts';
import type { ShapeInput } from '../list/questions.ts';
import { codesOf, refusedField as field, make, refusal, shaped as shape, sizeIn as size } from '../made.fixture.ts';
import type { Shape } from '../shape.ts';

const base = { kind: 'ratchet', teeth: 16, outerDiameter: 60, depth: 5 } as const;
const codes = (input: ShapeInput): readonly string[] => codesOf(shape(input));
const ring = (s: Shape): Contour => there(s.outlines[0]).contour;
const polygon = (contour: Contour): Path64 => flatten(contour, 1e-5).map((p) => ({ x: Math.round(p.x * 1e6), y: Math.round(p.y * 1e6) }));

describe('a ratchet wheel', () => {
  it.each([
    { back: 'straight', undercut: 0 },
    { back: 'straight', undercut: 20, turns: 'clockwise' },
    { back: 'curved', undercut: 8 },
    { back: 'curved', backRadius: 40, undercut: -6, turns: 'clockwise' },
  ] as const)('%j: has its depth, its lean, smooth roots, and looks the same one tooth on', (more) => {
    const s = shape({ ...base, ...more });
    const contour = ring(s);
    expect(soundness(contour, 1e-9)).toEqual({ kind: 'sound' });
    expect(selfCrossings(contour, 1e-9)).toEqual([]);
    expect(areaOf(contour)).toBeGreaterThan(0);
    const points = flatten(contour, 1e-5);
    const radii = points.map((p) => Math.hypot(p.x, p.y));
    expect(Math.max(...radii)).toBeCloseTo(30, 9);
    expect(Math.min(...radii)).toBeCloseTo(25, 4);
    const face = there(there(s.sizes.find((z) => z.figure.key === 'face-height')).taking);
    if (face.kind !== 'distance') throw new Error('no face');
    const sense = 'turns' in more ? -1 : 1;
    // The foot of an undercut face lies under its own tooth: on the side to which the wheel turns freely.
    const lean = Math.atan2(sense * (face.from.y - face.to.y), face.to.x - face.from.x) - sense * Math.atan2(face.to.y, face.to.x);
    expect((lean * 180) / Math.PI).toBeCloseTo(more.undercut, 9);
    // Two of the four or five corners of a tooth are sharp: face and land, land and back, unless the back leaves the land smoothly.
    const sharp = contour.segments.filter((_, i) => cornerAt(contour, i, 'left', 1e-6).kind !== 'tangent').length;
    expect(sharp).toBe(more.back === 'curved' && !('backRadius' in more) ? 16 : 32);
    const [c, n] = [Math.cos(Math.PI / 8), Math.sin(Math.PI / 8)];
    for (const p of points.slice(0, 40)) {
      const turned = { x: c * p.x - n * p.y, y: n * p.x + c * p.y };
      expect(Math.min(...contour.segments.map((g) => distanceToSegment(g, turned)))).toBeLessThan(1e-9);
    }
  });

  it.each([
    { back: 'straight', undercut: 5 },
    { back: 'curved', undercut: 5 },
    { back: 'curved', backRadius: 40, undercut: 0, land: 0 },
    { back: 'straight', undercut: 0, land: 0.1 },
  ] as const)('%j: stands back like the plain wheel shrunk by a polygon library of others', (more) => {
    const plain = inflatePaths([polygon(ring(shape({ ...base, ...more })))], -0.2e6, JoinType.Miter, EndType.Polygon, 20);
    const cut = [polygon(ring(shape({ ...base, ...more, clearance: 0.4, share: 0.5 })))];
    // Corners of land and face stand back along circles in the one and along chords in the other: some µm² a tooth.
    expect(Math.abs(areaPaths(xor(plain, cut, FillRule.NonZero))) / 1e12).toBeLessThan(2e-2);
    expect(Math.abs(areaPaths(cut) - areaPaths(plain)) / 1e12).toBeLessThan(2e-2);
  });

  it('turned clockwise is the mirror image', () => {
    const [one, other] = [shape(base), shape({ ...base, turns: 'clockwise' })].map((s) => ring(s));
    for (const p of flatten(there(one), 1e-3).slice(0, 60))
      expect(Math.min(...there(other).segments.map((g) => distanceToSegment(g, { x: p.x, y: -p.y })))).toBeLessThan(1e-9);
    expect(areaOf(there(other))).toBeCloseTo(areaOf(there(one)), 9);
  });

  it('is doubted where it throws the pawl out, ends in points, or no wire gets in', () => {
    expect(codes(base)).toEqual([]);
    expect(codes({ ...base, undercut: -5 })).toEqual(['ratchet-throws-pawl']);
    expect(codes({ ...base, land: 0 })).toEqual(['ratchet-pointed']);
    expect(codes({ ...base, rootRadius: 0 })).toEqual(['corner-below-any-wire']);
    // A pivot outside of the tangent at the face is drawn in, one inside thrown out; undercut faces bring it back.
    expect(codes({ ...base, pawlPivot: 45, pawlLength: 30 })).toEqual([]);
    expect(codes({ ...base, pawlPivot: 38, pawlLength: 30 })).toEqual(['ratchet-throws-pawl']);
    expect(codes({ ...base, pawlPivot: 38, pawlLength: 30, undercut: 12 })).toEqual([]);
    expect(codes({ ...base, pawlPivot: 100, pawlLength: 30 })).toEqual(['ratchet-pawl-out-of-reach']);
  });

  it('says which number of the wheel cannot be', () => {
    expect(refusal({ ...base, depth: 30 })).toEqual(['form-impossible', 'depth']);
    expect(field({ ...base, bore: 51 })).toBe('bore');
    expect(field({ ...base, rootRadius: 8 })).toBe('rootRadius');
    expect(field({ ...base, back: 'curved', backRadius: 3 })).toBe('backRadius');
    expect(field({ ...base, backRadius: 30 })).toBe('backRadius');
    expect(field({ ...base, land: 13 })).toBe('land');
    expect(field({ ...base, pawlPivot: 40 })).toBe('pawlLength');
    expect(field({ ...base, teeth: 60, depth: 12, undercut: 45 })).toBe('undercut');
    expect(field({ ...base, clearance: 5, share: 1 })).toBe('clearance');
    expect(size(shape({ ...base, bore: 20 }), 'bore')).toBe(20);
  });

  it('is never drawn wrong, whatever the numbers', () => {
    let drawn = 0;
    fc.assert(
      fc.property(
        fc.record({
          teeth: fc.integer({ min: 4, max: 120 }),
          outerDiameter: fc.double({ min: 2, max: 200, noNaN: true }),
          depth: fc.double({ min: 0.05, max: 2, noNaN: true }),
          undercut: fc.double({ min: -20, max: 40, noNaN: true }),
          back: fc.constantFrom('straight', 'curved'),
          turns: fc.constantFrom('clockwise', 'counter-clockwise'),
          rootRadius: fc.double({ min: 0, max: 0.3, noNaN: true }),
          land: fc.option(fc.double({ min: 0, max: 0.6, noNaN: true }), { nil: undefined }),
          clearance: fc.double({ min: -0.1, max: 0.2, noNaN: true }),
        }),
        ({ depth, rootRadius, land, ...rest }) => {
          const pitch = (Math.PI * rest.outerDiameter) / rest.teeth;
          const made = make({
            kind: 'ratchet',
            ...rest,
            depth: depth * pitch,
            rootRadius: rootRadius * pitch,
            land: land && land * pitch,
          } as ShapeInput);
          if (made.kind === 'refused') {
            expect(made.findings.every((f) => f.place?.kind === 'field')).toBe(true);
            return;
          }
          drawn += 1;
          expect(soundness(ring(made.shape), 1e-9)).toEqual({ kind: 'sound' });
          expect(selfCrossings(ring(made.shape), 1e-9)).toEqual([]);
        },
      ),
      { seed: 8, numRuns: 150, endOnFailure: true },
    );
    expect(drawn).toBeGreaterThan(60);
  });
});
