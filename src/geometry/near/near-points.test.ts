/** Points are found near a place, each once, and places beyond all sense end too. */
import { describe, expect, it } from 'vitest';
import { nearPoints } from './near-points.ts';

const found = (points: readonly (readonly [number, number])[], at: readonly [number, number], reach: number): number[] => {
  const near = nearPoints(points.length, reach);
  points.forEach(([x, y], i) => {
    near.add(i, { x, y });
  });
  const seen: number[] = [];
  near.visit({ x: at[0], y: at[1] }, (i) => seen.push(i));
  return seen.sort((p, q) => p - q);
};

describe('points near a place', () => {
  it('are all those within reach, across the edges of cells, each once', () => {
    const points: [number, number][] = [];
    for (let i = 0; i < 400; i += 1) points.push([Math.sin(i * 7) * 5, Math.cos(i * 3) * 5]);
    for (const at of [
      [0, 0],
      [1, 1],
      [-2, 3],
      [4.99, -4.99],
    ] as const) {
      const expected = points.flatMap(([x, y], i) => (Math.hypot(x - at[0], y - at[1]) <= 1 ? [i] : []));
      expect(found(points, at, 1)).toEqual(expected);
    }
  });

  it('are found at places where a cell more or less is lost in rounding', () => {
    expect(
      found(
        [
          [1e17, -3e18],
          [0, 0],
        ],
        [1e17, -3e18],
        0.01,
      ),
    ).toEqual([0]);
  });
});
