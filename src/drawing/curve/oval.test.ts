/** A full turn is known as such however many digits the file gives it. */
import { describe, expect, it } from 'vitest';
import { isFullTurn } from './oval.ts';

describe('a full turn of an ellipse', () => {
  it.each([6.283185, 6.2831853, 6.28318531, 6.283185307, 2 * Math.PI, -6.283185])('is one when the file prints %d', (sweep) => {
    expect(isFullTurn(sweep)).toBe(true);
  });

  it.each([0, 1e-7, 6.2831, 6.2833, 3.1])('is none when the file prints %d', (sweep) => {
    expect(isFullTurn(sweep)).toBe(false);
  });
});
