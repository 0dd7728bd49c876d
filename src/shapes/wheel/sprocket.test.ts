/** Sprockets and plain shapes: sound, alike all round, with the sizes they say, and refused by the field that is to blame. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf, boundsOfChain } from '../../geometry/area.ts';
import { flatten } from '../../geometry/flatten.ts';
import { distanceToSegment } from '../../geometry/measure.ts';
import { soundness } from '../../geometry/soundness.ts';
import { make, refusal, refusedField, shaped } from '../made.fixture.ts';
import { ROLLER_CHAINS } from './roller-chains.ts';

describe('a sprocket', () => {
  it('seats the roller of every chain of the table, between the limits of its gap', () => {
    for (const [chain, { pitch, roller }] of ROLLER_CHAINS)
      for (const gap of ['smallest', 'middle', 'largest'] as const) {
        const made = shaped({ kind: 'sprocket', chain, teeth: 19, gap });
        const ring = there(made.outlines[0]).contour;
        expect(soundness(ring, 1e-9)).toEqual({ kind: 'sound' });
        const centre = { x: pitch / Math.sin(Math.PI / 19) / 2, y: 0 };
        const clear = Math.min(...ring.segments.map((s) => distanceToSegment(s, centre)));
        expect(clear).toBeGreaterThanOrEqual(roller / 2 - 1e-9);
        expect(clear).toBeLessThanOrEqual(0.505 * roller + 0.069 * Math.cbrt(roller) + 1e-9);
      }
  });

  it('has a root within its limits with every gap, and pins that rest on it', () => {
    for (const [chain, { pitch, roller }] of ROLLER_CHAINS)
      for (const gap of ['smallest', 'middle', 'largest'] as const)
        for (const teeth of [9, 16, 17, 114]) {
          const { sizes, outlines } = shaped({ kind: 'sprocket', chain, teeth, gap });
          const greatest = pitch / Math.sin(Math.PI / teeth) - roller;
          const ring = there(outlines[0]).contour;
          const drawn = 2 * Math.min(...ring.segments.map((s) => distanceToSegment(s, { x: 0, y: 0 })));
          // h11 is 60 µm at its narrowest.
          expect(drawn).toBeLessThan(greatest - 0.029);
          expect(drawn).toBeGreaterThan(greatest - 0.5);
          const pins = sizes.find((s) => s.figure.key === 'over-pins');
          // Bush chains of small pitch: their pins lie below the tips.
          if (chain === '04C' || chain === '06C') continue;
          if (pins?.taking?.kind !== 'pins') throw new Error('no pins');
          for (const at of pins.taking.centres)
            expect(Math.min(...ring.segments.map((s) => distanceToSegment(s, at)))).toBeCloseTo(roller / 2, 9);
          const { low = 0, high = 0 } = pins.limits ?? {};
          expect(pins.figure.value).toBeGreaterThan(low);
          expect(pins.figure.value).toBeLessThan(high);
        }
  });

  it('prints no size over pins that lie below its tips, and says where a clearance spoils the root', () => {
    const low = shaped({ kind: 'sprocket', chain: '06C', teeth: 17 });
    expect(low.sizes.map((s) => s.figure.key)).not.toContain('over-pins');
    const codes = (clearance: number) => shaped({ kind: 'sprocket', teeth: 17, clearance }).findings.map((f) => f.code);
    expect([codes(0), codes(0.08), codes(0.2), codes(-0.2)]).toEqual([[], [], ['sprocket-root-outside'], ['sprocket-root-outside']]);
  });

  it('is the same again one pitch on', () => {
    const ring = there(shaped({ kind: 'sprocket', chain: '08B', teeth: 17 }).outlines[0]).contour;
    const [c, n] = [Math.cos((2 * Math.PI) / 17), Math.sin((2 * Math.PI) / 17)];
    for (const p of flatten(ring, 1e-3))
      expect(Math.min(...ring.segments.map((s) => distanceToSegment(s, { x: c * p.x - n * p.y, y: n * p.x + c * p.y })))).toBeLessThan(
        0.0011,
      );
  });

  it('ends in a point where the flanks meet first, and says so', () => {
    const made = shaped({ kind: 'sprocket', chain: '16B', teeth: 8, gap: 'largest', tipDiameter: 90 });
    expect(made.findings.map((f) => f.code)).toEqual(['sprocket-pointed']);
    expect(soundness(there(made.outlines[0]).contour, 1e-9)).toEqual({ kind: 'sound' });
    expect(refusedField({ kind: 'sprocket', teeth: 17, bore: 62 })).toBe('bore');
    expect(refusedField({ kind: 'sprocket', teeth: 17, tipDiameter: 40 })).toBe('tipDiameter');
  });
});

describe('plain shapes', () => {
  it('have the areas and reaches of their kind', () => {
    const hexagon = there(shaped({ kind: 'polygon', acrossFlats: 24 }).outlines[0]).contour;
    expect(areaOf(hexagon)).toBeCloseTo((24 ** 2 * Math.sqrt(3)) / 2, 9);
    const round = shaped({ kind: 'polygon', acrossFlats: 24, cornerRadius: 2 });
    const box = boundsOfChain(there(round.outlines[0]).contour);
    expect(box.maxY - box.minY).toBeCloseTo(there(round.sizes.find((s) => s.figure.key === 'across-corners')).figure.value, 9);
    const slot = there(shaped({ kind: 'slot', length: 30, breadth: 8 }).outlines[0]).contour;
    expect(areaOf(slot)).toBeCloseTo(22 * 8 + 16 * Math.PI, 9);
    expect(
      areaOf(there(shaped({ kind: 'slot', length: 30, breadth: 8, ends: 'corners', cornerRadius: 1 }).outlines[0]).contour),
    ).toBeCloseTo(240 - 4 + Math.PI, 9);
  });

  it('stand back by their share of the clearance, openings outwards and pieces inwards', () => {
    const across = (metal: 'inside' | 'outside', share: number): number =>
      there(shaped({ kind: 'polygon', acrossFlats: 24, metal, clearance: 0.04, share }).sizes[0]).figure.value;
    expect([across('inside', 0.25), across('outside', 0.75)]).toEqual([expect.closeTo(23.98, 12), expect.closeTo(24.06, 12)]);
  });

  it('refuse what has no room', () => {
    expect(refusal({ kind: 'polygon', acrossFlats: 24, cornerRadius: 13 })).toEqual(['shape-without-room', 'cornerRadius']);
    expect(refusedField({ kind: 'polygon', acrossFlats: 0.5, clearance: 1 })).toBe('clearance');
    expect(refusedField({ kind: 'slot', length: 10, breadth: 4, ends: 'corners', cornerRadius: 3 })).toBe('cornerRadius');
  });

  it('never draw what is no number', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 64 }),
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.constantFrom('inside', 'outside'),
        (sides, acrossFlats, cornerRadius, metal) => {
          const made = make({ kind: 'polygon', sides, acrossFlats, cornerRadius, metal: metal as 'inside' });
          if (made.kind === 'refused') expect(made.findings.every((f) => f.place?.kind === 'field')).toBe(true);
          else expect(made.shape.outlines.map((o) => soundness(o.contour, 1e-6).kind)).toEqual(['sound']);
        },
      ),
      { seed: 3, numRuns: 300 },
    );
  });
});
