/** Hubs with keyways: what is drawn has the sizes that are told, and what cannot be is refused with its field. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { areaOf, boundsOfChain } from '../../geometry/area.ts';
import { insideCorners } from '../../geometry/joints.ts';
import { soundness } from '../../geometry/soundness.ts';
import type { ShapeInput } from '../list/questions.ts';
import { codesOf, make, refusedField, shaped, sizeIn, sizeOf } from '../made.fixture.ts';
import { ASME_B17 } from './asme-b17.ts';
import { DIN_6885 } from './din-6885.ts';

type HubInput = Omit<Extract<ShapeInput, { kind: 'keyway-hub' }>, 'kind'>;
const hub = (input: HubInput) => shaped({ kind: 'keyway-hub', ...input });
const field = (input: HubInput): string => refusedField({ kind: 'keyway-hub', ...input });

describe('a hub with a keyway', () => {
  it('is cut at the middle of its limits, for every row of the table', () => {
    for (const row of DIN_6885) {
      const shape = hub({ shaft: row.to });
      const opening = there(shape.outlines[0]).contour;
      expect(soundness(opening, 1e-9)).toEqual({ kind: 'sound' });
      for (const { figure, limits } of shape.sizes)
        if (limits !== undefined) expect(figure.value).toBeCloseTo((limits.low + limits.high) / 2, 9);
      const { minX, maxX } = boundsOfChain(opening);
      expect(maxX - minX).toBeCloseTo(row.to + row.hub + row.deeper / 2, 9);
      const corners = insideCorners(opening, 'inside', 1e-6).filter((c) => c.radius < 0.4 * row.to);
      expect(corners.map((c) => c.kind)).toEqual(['round', 'round']);
      for (const c of corners) expect(c.radius).toBeCloseTo(row.corner[1], 9);
    }
  });

  it('has a keyway of ASME B17.1 for every row, with a square or a flat key, of both classes', () => {
    for (const row of ASME_B17)
      for (const flatKey of row.square ? [true, false] : [true])
        for (const keyClass of ['1', '2'] as const) {
          const shaft = Math.min(500, row.to * 25.4);
          const shape = hub({ shaft, standard: 'ASME B17.1', flatKey, keyClass, boreZone: 'none' });
          expect(soundness(there(shape.outlines[0]).contour, 1e-9)).toEqual({ kind: 'sound' });
          const { low, high } = there(there(sizeOf(shape, 'key-width-cut')).limits);
          expect(low).toBeCloseTo(row.width * 25.4, 9);
          expect((high - low) / 25.4).toBeGreaterThan(0.0019);
          expect((high - low) / 25.4).toBeLessThan(keyClass === '1' ? 0.0041 : 0.0021);
        }
    expect(field({ shaft: 400, standard: 'ASME B17.1', flatKey: false })).toBe('flatKey');
    // Above 6 1/2 in the flat key comes by itself.
    expect(sizeIn(hub({ shaft: 200, standard: 'ASME B17.1' }), 'across-cut')).toBe(
      sizeIn(hub({ shaft: 200, standard: 'ASME B17.1', flatKey: true }), 'across-cut'),
    );
  });

  it('has both keyways alike, opposite each other or where they are wanted', () => {
    const one = hub({ shaft: 40 });
    const two = hub({ shaft: 40, keyways: 2 });
    const round = Math.PI * (there(one.sizes[0]).figure.value / 2) ** 2;
    const [single, double] = [one, two].map((s) => areaOf(there(s.outlines[0]).contour) - round) as [number, number];
    expect(double).toBeCloseTo(2 * single, 9);
    const aside = hub({ shaft: 40, keyways: 2, between: 120 });
    expect(areaOf(there(aside.outlines[0]).contour) - round).toBeCloseTo(2 * single, 9);
  });

  it('grows all round by its share of the clearance', () => {
    const plain = hub({ shaft: 40 });
    const loose = hub({ shaft: 40, clearance: 0.05, share: 0.4 });
    const grown = (key: string): number =>
      [plain, loose].map((s) => there(s.sizes.find((z) => z.figure.key === key)).figure.value).reduce((a, b) => b - a);
    for (const key of ['bore', 'key-width-cut', 'across-cut']) expect(grown(key)).toBeCloseTo(0.04, 9);
  });

  it('names the field of what it refuses', () => {
    expect(field({ shaft: 5 })).toBe('shaft');
    expect(field({ shaft: 7, standard: 'ASME B17.1' })).toBe('shaft');
    expect(field({ shaft: 40, outside: 44 })).toBe('outside');
    expect(field({ shaft: 8, cornerRadius: 1.5 })).toBe('cornerRadius');
  });

  it('says where a corner leaves the standard, and where a shaft stands between two keys', () => {
    const codes = (input: HubInput): readonly string[] => codesOf(hub(input));
    expect(codes({ shaft: 40, cornerRadius: 1 })).toEqual(['keyway-corner-beyond-standard']);
    expect(codes({ shaft: 40, cornerRadius: 0.3 })).toEqual([]);
    const step = there(DIN_6885[3]).to;
    expect(codes({ shaft: step })).toEqual(['shaft-at-step']);
    expect(codes({ shaft: step - 0.5 })).toEqual([]);
  });

  it('never draws what is no number', () => {
    fc.assert(
      fc.property(
        fc.record({
          shaft: fc.double({ min: 0.1, max: 500, noNaN: true }),
          standard: fc.constantFrom('DIN 6885-1', 'ASME B17.1'),
          flatKey: fc.boolean(),
          widthZone: fc.constantFrom('JS9', 'P9', 'D10'),
          keyways: fc.constantFrom(1, 2),
          between: fc.double({ min: 60, max: 180, noNaN: true }),
          clearance: fc.double({ min: -0.1, max: 1, noNaN: true }),
        }),
        (input) => {
          const made = make({ kind: 'keyway-hub', ...(input as HubInput) });
          if (made.kind === 'refused') expect(made.findings.every((f) => f.place?.kind === 'field')).toBe(true);
          else expect(made.shape.outlines.map((o) => soundness(o.contour, 1e-6).kind)).toEqual(['sound']);
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });
});
