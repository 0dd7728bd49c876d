/** Finishes convert there and back without loss. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { microinches, parseFinish, raFromMicroinches, raFromVdi } from './finish.ts';

const settings = { seed: 31, numRuns: 500 } as const;
const ra = fc.double({ min: 0.01, max: 100, noNaN: true });

describe('finishes', () => {
  it('come back from class and microinches', () => {
    fc.assert(
      fc.property(ra, (value) => {
        expect(raFromVdi.compute({ vdi: 20 * Math.log10(10 * value) }) / value).toBeCloseTo(1, 12);
        expect(raFromMicroinches.compute({ microinches: microinches.compute({ ra: value }) }) / value).toBeCloseTo(1, 12);
      }),
      settings,
    );
  });

  it('end in a named outcome for any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'RaNVDIz0123456789.,µinum ') })), (text) => {
        const answer = parseFinish(text);
        if (answer.kind === 'finish') expect(answer.ra > 0 && answer.ra <= 100).toBe(true);
        if (answer.kind === 'band') expect(answer.raSafe).toBeLessThan(answer.raMight);
        if (answer.kind === 'not a finish') expect(answer.reason).not.toBe('');
      }),
      { ...settings, numRuns: 3000 },
    );
  });
});
