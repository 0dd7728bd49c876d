/** Lengths that are typed are read as the same length. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printPlain } from '../text/print/print.ts';
import { type LengthUnit, millimetresIn, parseLength } from './typed-length.ts';

const settings = { seed: 4711, numRuns: 1000 } as const;
const unit = fc.constantFrom<LengthUnit>('mm', 'inch', 'thou', 'µm', 'cm', 'm', 'foot');

describe('lengths as they are typed', () => {
  it('come back to their last digit in every unit', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), unit, (mm, u) => {
        const typed = `${(mm / millimetresIn[u]).toFixed(7)} ${u}`;
        const answer = parseLength(typed);
        if (answer.kind !== 'length') throw new Error(`${typed}: ${answer.kind}`);
        expect(Math.abs(answer.mm - mm)).toBeLessThanOrEqual(0.6e-7 * millimetresIn[u]);
        expect(answer.unitTyped).toBe(true);
      }),
      settings,
    );
  });

  it('mean the same with a decimal comma as with a point, where the comma can mean nothing else', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99999 }), fc.integer({ min: 1, max: 9999 }), unit, (whole, tail, u) => {
        const decimals = String(tail);
        fc.pre(decimals.length !== 3 || whole === 0 || whole > 999);
        expect(parseLength(`${whole},${decimals}`, u)).toMatchObject({
          kind: 'length',
          mm: Number(`${whole}.${decimals}`) * millimetresIn[u],
        });
      }),
      settings,
    );
  });

  it('are ambiguous with one comma before three digits: both readings are given', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 0, max: 999 }), (whole, tail) => {
        const decimals = String(tail).padStart(3, '0');
        const answer = parseLength(`${whole},${decimals} mm`);
        if (answer.kind !== 'ambiguous') throw new Error(answer.kind);
        expect(answer.readings.map((r) => r.mm)).toEqual([Number(`${whole}.${decimals}`), whole * 1000 + tail]);
      }),
      settings,
    );
  });

  it('end in a named outcome for any text, never in a number that is none', () => {
    const text = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789.,/ eE+-"\'mµinthoul½¼') }));
    fc.assert(
      fc.property(text, unit, (typed, u) => {
        const answer = parseLength(typed, u);
        if (answer.kind === 'length') expect(Number.isFinite(answer.mm)).toBe(true);
        if (answer.kind === 'ambiguous') expect(answer.readings.length).toBeGreaterThan(1);
        if (answer.kind === 'not a length') expect(printPlain(answer.reason)).not.toBe('');
      }),
      { ...settings, numRuns: 5000 },
    );
  });
});
