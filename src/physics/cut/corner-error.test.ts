/** The wire trailing round a sharp turn, held against the same pulled step by step. */
import { describe, expect, it } from 'vitest';
import { lagAtPointedTurn, lagAtSharpTurn } from './corner-error.ts';

/** A string of length 1 whose head runs to a turn and on; nearest that its tail comes to the turn. */
const pulled = (turn: number): number => {
  const steps = 60_000;
  let [x, y, least] = [-1, 0, 1];
  for (let n = 1; n <= steps; n += 1) {
    const run = (6 * n) / steps;
    const [ahead, aside] = [run * Math.cos(turn) - x, run * Math.sin(turn) - y];
    const length = Math.hypot(ahead, aside);
    [x, y] = [run * Math.cos(turn) - ahead / length, run * Math.sin(turn) - aside / length];
    least = Math.min(least, Math.hypot(x, y));
  }
  return least;
};

describe('wire lag at a sharp turn', () => {
  it.each([2, 20, 45, 60, 90, 110, 130, 160])('of %d degrees is what a string pulled round it gives', (degrees) => {
    const turn = (degrees * Math.PI) / 180;
    expect(Math.abs(lagAtSharpTurn.compute({ lag: 20, turn }) - 20 * pulled(turn))).toBeLessThan(1e-3);
  });

  it('grows with lag and turn, and never exceeds the lag', () => {
    const errors = Array.from({ length: 60 }, (_, i) => lagAtSharpTurn.compute({ lag: 10, turn: (i * Math.PI) / 60 }));
    expect(errors).toEqual(errors.toSorted((a, b) => a - b));
    expect(errors[0]).toBe(0);
    expect(Math.max(...errors)).toBeLessThanOrEqual(10);
    expect(lagAtSharpTurn.compute({ lag: 30, turn: 1 })).toBeCloseTo(3 * lagAtSharpTurn.compute({ lag: 10, turn: 1 }), 9);
  });

  it('is made up for where the path runs out further than the lag falls short', () => {
    expect(lagAtPointedTurn.compute({ lag: 20, turn: Math.PI / 2, offset: 0.18 })).toBe(0);
    const slight = lagAtPointedTurn.compute({ lag: 20, turn: 0.2, offset: 0.18 });
    expect(slight).toBeGreaterThan(0);
    expect(slight).toBeLessThan(lagAtSharpTurn.compute({ lag: 20, turn: 0.2 }));
  });
});
