/** Rounding keeps arcs what they were. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arc, point } from '../../geometry/segment.ts';
import { standardDialect } from '../dialect/dialect.ts';
import { plain } from './comment.ts';
import { gridOf, printed, spotOf } from './grid.ts';
import { type GridArc, gridMoves } from './grid-moves.ts';

const grid = gridOf(standardDialect);
const coordinate = fc.double({ min: -200, max: 200, noNaN: true });
const anyArc = fc
  .record({
    x: coordinate,
    y: coordinate,
    radius: fc.double({ min: 0.0005, max: 300, noNaN: true }),
    start: fc.double({ min: -3.2, max: 3.2, noNaN: true }),
    sweep: fc.double({ min: -6.28, max: 6.28, noNaN: true }),
  })
  .filter(({ sweep }) => Math.abs(sweep) > 1e-3)
  .map(({ x, y, radius, start, sweep }) => {
    const on = (angle: number) => point(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
    return arc(on(start), on(start + sweep), point(x, y), sweep);
  });

describe('arcs on the grid of last digits', () => {
  it('keep each radius within half a digit of the mean and the ends within half a digit of the plan', () => {
    fc.assert(
      fc.property(anyArc, (segment) => {
        let from = spotOf(segment.from, grid);
        for (const move of gridMoves(from, segment, grid, 'centre')) {
          if (move.kind === 'arc') expect(Math.abs(radiusAt(move, from) - radiusAt(move, move.to))).toBeLessThanOrEqual(1 + 1e-9);
          from = move.to;
        }
        const end = spotOf(segment.to, grid);
        expect(Math.hypot(from.x - end.x, from.y - end.y)).toBeLessThan(1);
      }),
      { seed: 20260302, numRuns: 3000 },
    );
  });

  it('reach their end by radius', () => {
    fc.assert(
      fc.property(anyArc, (segment) => {
        let from = spotOf(segment.from, grid);
        for (const move of gridMoves(from, segment, grid, 'radius')) {
          if (move.kind === 'arc') expect(2 * move.radius).toBeGreaterThanOrEqual(Math.hypot(move.to.x - from.x, move.to.y - from.y));
          from = move.to;
        }
      }),
      { seed: 20260303, numRuns: 1000 },
    );
  });
});

const radiusAt = (move: GridArc, spot: { readonly x: number; readonly y: number }): number =>
  Math.hypot(spot.x - move.centre.x, spot.y - move.centre.y);

describe('printed numbers and comments', () => {
  it('print a count of last digits as the number it stands for, with a point', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -999_999_999, max: 999_999_999 }),
        fc.integer({ min: 2, max: 6 }),
        fc.boolean(),
        (count, decimals, trailingZeros) => {
          const text = printed(count, { perMillimetre: 10 ** decimals, decimals, trailingZeros });
          expect(text).toMatch(trailingZeros ? new RegExp(`^-?\\d+\\.\\d{${decimals}}$`) : /^-?\d+\.(\d*[1-9])?$/);
          expect(Math.round(Number(text) * 10 ** decimals) + 0).toBe(count + 0);
        },
      ),
      { seed: 20260304, numRuns: 2000 },
    );
  });

  it('make any text plain, and plain text stays as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (text) => {
        const once = plain(text);
        expect(once).toMatch(/^[A-Z0-9+\-*/=., ]*$/);
        expect(once).not.toMatch(/\.\.| {2}|^ | $/);
        expect(plain(once)).toBe(once);
      }),
      { seed: 20260305, numRuns: 2000 },
    );
  });
});
