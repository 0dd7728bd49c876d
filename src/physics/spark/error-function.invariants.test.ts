/** The complementary error function keeps its laws wherever it is asked. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { erfc, ierfc } from './error-function.ts';

const settings = { seed: 7, numRuns: 500 } as const;

describe('the complementary error function', () => {
  it('is symmetrical about 1 and falls', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), (x) => {
        expect(erfc(x) + erfc(-x)).toBeCloseTo(2, 14);
        expect(erfc(x * 1.01 + 1e-9)).toBeLessThanOrEqual(erfc(x));
      }),
      settings,
    );
  });

  it('has the same value from series and fraction where they meet', () => {
    expect(Math.abs(erfc(2 - 1e-14) / erfc(2 + 1e-14) - 1)).toBeLessThan(1e-11);
  });

  it('is what its integral falls by', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 4, noNaN: true }), (x) => {
        const step = 1e-4;
        expect((ierfc(x) - ierfc(x + step)) / step).toBeCloseTo(erfc(x + step / 2), 7);
      }),
      settings,
    );
  });
});
