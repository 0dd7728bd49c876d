/** Lengths and factors are rounded down to what a reader counts with. */
import { describe, expect, it } from 'vitest';
import { roundBelow } from './round-length.ts';

describe('round lengths', () => {
  it('are one, two or five at every power, and never above what was asked', () => {
    expect([0.0019, 0.002, 0.7, 0.9, 1, 4.99, 5, 19, 21, 999, 1000].map(roundBelow)).toEqual([
      0.001, 0.002, 0.5, 0.5, 1, 2, 5, 10, 20, 500, 1000,
    ]);
  });
});
