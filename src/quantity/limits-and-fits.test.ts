/** The tolerance table gives what it has and says by name what it has not. */

import { describe, expect, it } from 'vitest';
import { neighbours } from '../sequence/sequence.ts';
import { fitOf, toleranceFactor, toleranceWidth, zoneLimits } from './limits-and-fits.ts';

describe('what the tolerance table does not have', () => {
  it.each([
    [4, 25],
    [12, 25],
    [7, 0],
    [7, -3],
    [7, 500.001],
    [7, Number.NaN],
  ])('says so for IT%i at %f mm', (grade, size) => {
    expect(toleranceWidth(grade, size).kind).toBe('not in the table');
  });

  it.each(['', 'H', '7', 'h 6', 'K7', 'e7', 'H99'])("says so for the zone '%s'", (zone) => {
    expect(zoneLimits(zone, 25).kind).toBe('not in the table');
    expect(fitOf('H7', zone, 25).kind).toBe('not in the table');
    expect(fitOf(zone, 'g6', 25).kind).toBe('not in the table');
  });
});

describe('the tolerance table itself', () => {
  const steps = [1, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];
  const width = (grade: number, size: number): number => {
    const answer = toleranceWidth(grade, size);
    return answer.kind === 'width' ? answer.width : Number.NaN;
  };

  it('grows with size and grade and lies within 16 % of the formula, as the standard is said to', () => {
    for (const [grade, factor] of [
      [6, 10],
      [7, 16],
      [8, 25],
      [9, 40],
    ] as const) {
      for (const [i, [before, size]] of neighbours(steps).entries()) {
        const formula = factor * toleranceFactor.compute({ size: Math.sqrt(before * size) });
        expect(Math.abs(width(grade, size) / formula - 1)).toBeLessThanOrEqual(0.16);
        expect(width(grade, size)).toBeGreaterThan(width(grade - 1, size));
        if (i > 0) expect(width(grade, size)).toBeGreaterThan(width(grade, before));
      }
    }
  });
});
