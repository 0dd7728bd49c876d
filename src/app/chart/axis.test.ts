/** Steps, spans and thinning of charts. */
/** The axis of the strip: where its marks stand. */

import { describe, expect, it } from 'vitest';
import { neighbours } from '../../sequence/sequence.ts';
import { deviationSpan, roundSteps, thinned } from './axis.ts';

describe('axes of charts', () => {
  it('have round steps', () => {
    expect(roundSteps(-0.012, 0.011, 6)).toEqual([-0.01, -0.005, 0, 0.005, 0.01]);
    expect(roundSteps(0, 1, 5)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
    expect(roundSteps(3, 3, 5)).toEqual([3]);
  });
  it('show the tolerance where the deviation would still be seen beside it', () => {
    expect(deviationSpan([0.001, -0.004], 0.008)).toMatchObject({ withTolerance: true });
    expect(deviationSpan([0.001, -0.004], 0.008).high).toBeGreaterThan(0.008);
    expect(deviationSpan([0.0001], 0.02).withTolerance).toBe(false);
    expect(deviationSpan([0, 0], 0.02).withTolerance).toBe(true);
  });
  it('lose no peak when they are thinned', () => {
    const value = Float64Array.from({ length: 10_000 }, (_, i) => (i === 7777 ? 5 : Math.sin(i)));
    const kept = thinned(value, 300);
    expect(kept).toContain(7777);
    expect(kept.length).toBeLessThan(610);
    expect(neighbours(kept).every(([before, k]) => k >= before)).toBe(true);
  });
});
