/** The tolerance table gives what it has and says by name what it has not. */

import { describe, expect, it } from 'vitest';
import { neighbours } from '../sequence/sequence.ts';
import { zoneLimits } from './limits-and-fits.ts';

describe('what the tolerance table does not have', () => {
  it.each([
    [4, 25],
    [12, 25],
    [7, 0],
    [7, -3],
    [7, 500.001],
    [7, Number.NaN],
  ])('says so for IT%i at %f mm', (grade, size) => {
    expect(zoneLimits(`H${grade}`, size).kind).toBe('not in the table');
  });

  it.each(['', 'H', '7', 'h 6', 'K7', 'e7', 'H99'])("says so for the zone '%s'", (zone) => {
    expect(zoneLimits(zone, 25).kind).toBe('not in the table');
  });
});

describe('the tolerance table itself', () => {
  const steps = [1, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];
  const width = (grade: number, size: number): number => {
    const answer = zoneLimits(`H${grade}`, size);
    return answer.kind === 'limits' ? answer.high : Number.NaN;
  };

  it('grows with size and grade and lies within 16 % of the formula, as the standard is said to', () => {
    for (const [grade, factor] of [
      [6, 10],
      [7, 16],
      [8, 25],
      [9, 40],
    ] as const) {
      for (const [i, [before, size]] of neighbours(steps).entries()) {
        const mean = Math.sqrt(before * size);
        // The standard's tolerance factor i, from a table of the tool trade.
        const formula = factor * (0.45 * Math.cbrt(mean) + 0.001 * mean);
        expect(Math.abs(width(grade, size) / formula - 1)).toBeLessThanOrEqual(0.16);
        expect(width(grade, size)).toBeGreaterThan(width(grade - 1, size));
        if (i > 0) expect(width(grade, size)).toBeGreaterThan(width(grade, before));
      }
    }
  });
});
