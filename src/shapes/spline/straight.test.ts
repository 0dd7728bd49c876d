/** Straight-sided splines and serrations: sound, as wide as they say, clear of their mates by what was asked, pins where they lie. */
import { areaPaths, difference, EndType, FillRule, inflatePaths, JoinType, type Path64 } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { Contour } from '../../geometry/contour.ts';
import { flatten } from '../../geometry/flatten.ts';
import { distanceToSegment } from '../../geometry/measure.ts';
import { selfCrossings } from '../../geometry/near/crossings.ts';
import { soundness } from '../../geometry/soundness.ts';
import type { ShapeInput } from '../list/questions.ts';
import { codesOf, refusedField as field, make, refusal, shaped as shape, sizeIn as size } from '../made.fixture.ts';
import type { MadeShape, Shape } from '../shape.ts';
import { DIN_5481 } from './din-5481.ts';
import { ISO_14 } from './iso-14.ts';
import { SAE_FITS } from './sae-j499.ts';

const codes = (input: ShapeInput): readonly string[] => codesOf(shape(input));
const ring = (s: Shape): Contour => there(s.outlines.at(-1)).contour;
const soundAndSimple = (s: Shape): void => {
  for (const { contour } of s.outlines) {
    expect(soundness(contour, 1e-9)).toEqual({ kind: 'sound' });
    expect(selfCrossings(contour, 1e-9)).toEqual([]);
  }
};
/** 1 for a shape that is drawn, and well; 0 for one that is refused with the field to blame. */
const drawnWell = (made: MadeShape): 0 | 1 => {
  if (made.kind === 'refused') {
    expect(made.findings.every((f) => f.place?.kind === 'field')).toBe(true);
    return 0;
  }
  soundAndSimple(made.shape);
  return 1;
};
const closest = (s: Shape, x: number, y: number): number => Math.min(...ring(s).segments.map((g) => distanceToSegment(g, { x, y })));

const NANO = 1e6;
const polygon = (contour: Contour): Path64 => flatten(contour, 1e-5).map((p) => ({ x: Math.round(p.x * NANO), y: Math.round(p.y * NANO) }));
/** mm² of a shaft, grown all round, that the hub does not leave room for: by a polygon library of others. */
const overlap = (shaft: Shape, hub: Shape, grown: number): number => {
  const fat = inflatePaths([polygon(ring(shaft))], grown * NANO, JoinType.Round, EndType.Polygon, 2, 10);
  return Math.abs(areaPaths(difference(fat, [polygon(ring(hub))], FillRule.NonZero))) / NANO ** 2;
};

/** Least distance between the walls of a shaft and its hub. */
const clearOf = (shaft: Shape, hub: Shape): number => Math.min(...flatten(ring(shaft), 1e-3).map((p) => closest(hub, p.x, p.y)));

describe('a straight-sided spline', () => {
  it.each(['6x11x14', '8x36x40', '10x112x125'])('%s: shaft and hub clear each other all round by what was asked, and no more', (iso) => {
    const asked = { kind: 'straight-spline', size: iso, seat: 'nominal', clearance: 0.04, share: 0.25 } as const;
    const [shaft, hub] = [shape({ ...asked, part: 'shaft' }), shape({ ...asked, part: 'hub', share: 0.75 })];
    for (const s of [shaft, hub]) soundAndSimple(s);
    expect(overlap(shaft, hub, 0.0399)).toBeLessThan(1e-6);
    expect(overlap(shaft, hub, 0.0402)).toBeGreaterThan(1e-4);
    expect(clearOf(shaft, hub)).toBeCloseTo(0.04, 3);
  });

  // 36 H7 0/+25 with f7 -25/-50 and 7 H9 0/+36 with d10 -40/-98, at their middles: 50 µm on the diameter, 87 µm on the width.
  it('by ISO 14 sits with the play of its zones: the inner diameter centres, the flanks have more', () => {
    const [shaft, hub] = [
      shape({ kind: 'straight-spline', size: '8x36x40', part: 'shaft' }),
      shape({ kind: 'straight-spline', size: '8x36x40', part: 'hub' }),
    ];
    expect(size(hub, 'inner-diameter') - size(shaft, 'inner-diameter')).toBeCloseTo(0.05, 9);
    expect(size(hub, 'width') - size(shaft, 'width')).toBeCloseTo(0.087, 9);
    expect(overlap(shaft, hub, 0.0249)).toBeLessThan(1e-6);
    expect(overlap(shaft, hub, 0.0252)).toBeGreaterThan(1e-4);
    const relieved = shape({ kind: 'straight-spline', size: '8x36x40', part: 'shaft', root: 'relief' });
    soundAndSimple(relieved);
    expect(areaPaths([polygon(ring(relieved))])).toBeLessThan(areaPaths([polygon(ring(shaft))]));
    expect(overlap(relieved, hub, 0.0249)).toBeLessThan(1e-6);
    expect(size(shape({ kind: 'straight-spline', size: '8x36x40', treated: true }), 'width')).toBeCloseTo(7.045, 9);
  });

  it('of every size of ISO 14 and fit of SAE J499 is drawn, sound, and as wide as it says', () => {
    const asked: ShapeInput[] = [
      ...[...ISO_14.keys()].map((iso): ShapeInput => ({ kind: 'straight-spline', size: iso })),
      ...SAE_FITS.map((saeFit): ShapeInput => ({ kind: 'straight-spline', standard: 'SAE J499', saeFit, outerDiameter: 38.1 })),
    ];
    for (const input of asked)
      for (const more of [{ part: 'hub' }, { part: 'shaft' }, { part: 'shaft', root: 'relief' }] as const) {
        const s = shape({ ...input, ...more } as ShapeInput);
        soundAndSimple(s);
        expect(s.findings).toEqual([]);
        const width = there(s.sizes.find((z) => z.figure.key === 'width')).taking;
        if (width?.kind !== 'distance') throw new Error('no width');
        for (const { x, y } of [width.from, width.to]) expect(closest(s, x, y)).toBeLessThan(1e-9);
        expect(width.to.y - width.from.y).toBeCloseTo(size(s, 'width'), 9);
        expect(width.to.x).toBe(width.from.x);
        const zoned = s.sizes.filter((z) => z.limits !== undefined && z.figure.key !== 'symmetry');
        expect(zoned.length).toBe(input.kind === 'straight-spline' && input.size !== undefined ? 3 : 0);
        for (const { figure, limits } of zoned) expect((there(limits).low + there(limits).high) / 2).toBeCloseTo(figure.value, 9);
      }
  });

  it('lays its pins on both flanks, where there is room for pins', () => {
    const s = shape({ kind: 'straight-spline', standard: 'SAE J499', saeFit: '16C', outerDiameter: 50, part: 'shaft' });
    const pins = there(s.sizes.find((z) => z.taking?.kind === 'pins'));
    if (pins.taking?.kind !== 'pins') throw new Error('no pins');
    for (const { x, y } of pins.taking.centres) expect(closest(s, x, y)).toBeCloseTo(pins.taking.diameter / 2, 9);
    expect(Math.hypot(pins.taking.to.x - pins.taking.from.x, pins.taking.to.y - pins.taking.from.y)).toBeCloseTo(pins.figure.value, 9);
    expect(shape({ kind: 'straight-spline', size: '6x23x26', part: 'shaft' }).sizes.some((z) => z.taking?.kind === 'pins')).toBe(false);
    expect(codes({ kind: 'straight-spline', size: '6x23x26', part: 'shaft', pin: 4 })).toEqual(['straight-pin-off-flank']);
    expect(codes({ kind: 'straight-spline', size: '6x23x26', part: 'hub', pin: 4 })).toEqual(['straight-pin-off-flank']);
  });

  it('warns of corners that bear or that no wire reaches', () => {
    expect(codes({ kind: 'straight-spline', size: '8x36x40', part: 'shaft', rootRadius: 0.5 })).toEqual(['spline-corner-clash']);
    expect(codes({ kind: 'straight-spline', size: '8x36x40', part: 'shaft', rootRadius: 0.5, root: 'relief' })).toEqual([]);
    expect(codes({ kind: 'straight-spline', size: '8x36x40', part: 'shaft', rootRadius: 0 })).toEqual(['corner-below-any-wire']);
  });

  it('names the field of what it refuses of it', () => {
    const free = { kind: 'straight-spline', standard: 'none', splines: 8, innerDiameter: 36, outerDiameter: 42, width: 7 } as const;
    expect(refusal({ kind: 'straight-spline' })).toEqual(['straight-spline-impossible', 'size']);
    expect(field({ kind: 'straight-spline', size: '8x36x40', width: 7 })).toBe('width');
    expect(field({ kind: 'straight-spline', standard: 'SAE J499', saeFit: '6B' })).toBe('outerDiameter');
    expect(field({ kind: 'straight-spline', standard: 'SAE J499', saeFit: '6B', outerDiameter: 25, seat: 'fixed' })).toBe('seat');
    expect(field(free)).toBe('made');
    expect(field({ ...free, width: 14 })).toBe('width');
    expect(field({ ...free, outerDiameter: 36 })).toBe('outerDiameter');
    expect(field({ ...free, outside: 42 })).toBe('outside');
    expect(field({ ...free, rootRadius: 4 })).toBe('rootRadius');
    expect(field({ ...free, chamfer: 4 })).toBe('chamfer');
    expect(field({ ...free, root: 'relief' })).toBe('root');
    expect(field({ ...free, part: 'shaft', clearance: 5, share: 1 })).toBe('clearance');
    expect(field({ ...free, splines: 30, width: 3.7, clearance: 0.2, share: 1 })).toBe('clearance');
  });

  it('is never drawn with what is no number', () => {
    let drawn = 0;
    fc.assert(
      fc.property(
        fc.record({
          part: fc.constantFrom('shaft', 'hub'),
          splines: fc.integer({ min: 2, max: 40 }),
          inner: fc.double({ min: 1, max: 200, noNaN: true }),
          depth: fc.double({ min: 0.01, max: 0.6, noNaN: true }),
          fill: fc.double({ min: 0.01, max: 1.02, noNaN: true }),
          root: fc.constantFrom('radius', 'relief'),
          rootRadius: fc.option(fc.double({ min: 0, max: 0.2, noNaN: true }), { nil: undefined }),
          chamfer: fc.option(fc.double({ min: 0, max: 0.2, noNaN: true }), { nil: undefined }),
          clearance: fc.double({ min: -0.3, max: 0.5, noNaN: true }),
        }),
        ({ inner, depth, fill, rootRadius, chamfer, ...rest }) => {
          const width = fill * inner * Math.sin(Math.PI / rest.splines);
          const made = make({
            kind: 'straight-spline',
            standard: 'none',
            ...rest,
            innerDiameter: inner,
            outerDiameter: inner * (1 + depth),
            width,
            rootRadius: rootRadius && rootRadius * width,
            chamfer: chamfer && chamfer * width,
            root: rest.part === 'hub' ? 'radius' : rest.root,
          } as ShapeInput);
          drawn += drawnWell(made);
        },
      ),
      { seed: 5, numRuns: 150, endOnFailure: true },
    );
    expect(drawn).toBeGreaterThan(60);
  });
});

describe('a serration', () => {
  it.each(['8x10', '21x24', '55x60'])('%s: flanks of shaft and hub clear each other by what was asked', (din) => {
    const asked = { kind: 'serration', size: din, clearance: 0.03 } as const;
    const [shaft, hub] = [shape({ ...asked, part: 'shaft' }), shape({ ...asked, part: 'hub' })];
    for (const s of [shaft, hub]) soundAndSimple(s);
    expect(overlap(shaft, hub, 0.0299)).toBeLessThan(1e-6);
    expect(overlap(shaft, hub, 0.0302)).toBeGreaterThan(1e-5);
    expect(clearOf(shaft, hub)).toBeCloseTo(0.03, 3);
  });

  it('of every size of DIN 5481 is drawn with its tips clear, pins on both flanks, and the angle of its spaces', () => {
    for (const { size: din, teeth } of DIN_5481.values())
      for (const part of ['shaft', 'hub'] as const) {
        const s = shape({ kind: 'serration', size: din, part });
        soundAndSimple(s);
        expect(s.findings).toEqual([]);
        const pins = there(s.sizes.find((z) => z.taking?.kind === 'pins'));
        if (pins.taking?.kind !== 'pins') throw new Error('no pins');
        for (const { x, y } of pins.taking.centres) expect(closest(s, x, y)).toBeCloseTo(pins.taking.diameter / 2, 9);
        expect(Math.hypot(pins.taking.to.x - pins.taking.from.x, pins.taking.to.y - pins.taking.from.y)).toBeCloseTo(pins.figure.value, 9);
        const [a, b] = ring(s).segments.filter((g) => g.kind === 'line');
        const turn =
          Math.atan2(there(a).to.y - there(a).from.y, there(a).to.x - there(a).from.x) -
          Math.atan2(there(b).to.y - there(b).from.y, there(b).to.x - there(b).from.x);
        const between = Math.abs(Math.PI - (((turn % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)));
        // Both lines belong either to a tooth of the shaft's form or to a space of it.
        expect([60, 60 - 360 / teeth].some((angle) => Math.abs((between * 180) / Math.PI - angle) < 1e-6)).toBe(true);
      }
  });

  it('has tips and roots with the radii that are asked for', () => {
    const free = { kind: 'serration', teeth: 20, pitchDiameter: 40, boreDiameter: 37.5, shaftDiameter: 42 } as const;
    for (const part of ['shaft', 'hub'] as const) {
      const s = shape({ ...free, part, tipRadius: 0.2, rootDiameter: part === 'shaft' ? 36.5 : 43.5, rootRadius: 0.3 });
      soundAndSimple(s);
      const radii = new Set(ring(s).segments.flatMap((g) => (g.kind === 'arc' ? [g.radius.toFixed(6)] : [])));
      expect([...radii].map(Number).sort((p, q) => p - q)).toEqual(part === 'shaft' ? [0.2, 0.3, 18.25, 21] : [0.2, 0.3, 18.75, 21.75]);
      expect(s.insideRadius).toBeCloseTo(0.3, 9);
    }
    const thin = shape({ ...free, part: 'shaft', toothThickness: 2.5 });
    expect(2 * 20 * Math.asin(size(thin, 'chord-at-pitch') / 40)).toBeCloseTo(2.5, 9);
  });

  it('says where tips would touch, and which number is to blame for what cannot be', () => {
    const free = { kind: 'serration', teeth: 20, pitchDiameter: 40, boreDiameter: 37.5, shaftDiameter: 42 } as const;
    expect(codes({ ...free, boreDiameter: 35.2, rootRadius: 1 })).toEqual(['serration-tip-meets-root']);
    expect(codes({ ...free, rootRadius: 0.01 })).toEqual(['corner-below-any-wire']);
    expect(codes({ ...free, pin: 9 })).toEqual(['straight-pin-off-flank']);
    expect(refusal({ kind: 'serration' })).toEqual(['serration-impossible', 'size']);
    expect(field({ kind: 'serration', size: '8x10', teeth: 28 })).toBe('teeth');
    expect(field({ ...free, pitchDiameter: 50 })).toBe('pitchDiameter');
    expect(field({ ...free, boreDiameter: 43 })).toBe('boreDiameter');
    expect(field({ ...free, teeth: 6 })).toBe('angle');
    expect(field({ ...free, toothThickness: 6.3 })).toBe('toothThickness');
    expect(field({ ...free, part: 'shaft', shaftDiameter: 60 })).toBe('shaftDiameter');
    expect(field({ ...free, part: 'shaft', tipRadius: 3 })).toBe('tipRadius');
    expect(field({ ...free, rootRadius: 3.3 })).toBe('rootRadius');
    expect(field({ ...free, rootDiameter: 60 })).toBe('rootDiameter');
    expect(field({ ...free, outside: 43 })).toBe('outside');
    expect(field({ ...free, part: 'shaft', clearance: 5, share: 1 })).toBe('clearance');
  });

  it('is never drawn with numbers that are none', () => {
    let drawn = 0;
    fc.assert(
      fc.property(
        fc.record({
          part: fc.constantFrom('shaft', 'hub'),
          teeth: fc.integer({ min: 6, max: 80 }),
          pitchDiameter: fc.double({ min: 5, max: 60, noNaN: true }),
          below: fc.double({ min: 0.01, max: 1.2, noNaN: true }),
          above: fc.double({ min: 0.01, max: 1.2, noNaN: true }),
          angle: fc.double({ min: 40, max: 100, noNaN: true }),
          rootRadius: fc.option(fc.double({ min: 0, max: 0.2, noNaN: true }), { nil: undefined }),
          tipRadius: fc.double({ min: 0, max: 0.2, noNaN: true }),
          clearance: fc.double({ min: -0.1, max: 0.2, noNaN: true }),
        }),
        ({ below, above, ...rest }) => {
          const { pitchDiameter } = rest;
          const pitch = (Math.PI * pitchDiameter) / rest.teeth;
          const made = make({
            kind: 'serration',
            ...rest,
            boreDiameter: pitchDiameter - below * pitch,
            shaftDiameter: pitchDiameter + above * pitch,
            rootRadius: rest.rootRadius && rest.rootRadius * pitch,
            tipRadius: rest.tipRadius * pitch,
          } as ShapeInput);
          drawn += drawnWell(made);
        },
      ),
      { seed: 6, numRuns: 150, endOnFailure: true },
    );
    expect(drawn).toBeGreaterThan(60);
  });
});
