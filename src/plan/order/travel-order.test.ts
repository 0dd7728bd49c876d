/** The order of openings visits each once and is short. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { type Point, point } from '../../geometry/segment.ts';
import { tourLength as wayLength } from './tour.ts';
import { travelOrder } from './travel-order.ts';

/** Numbers that look random and are always the same. */
const scattered = (count: number): readonly Point[] => {
  let state = 12345;
  const next = (): number => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 2147483648;
  };
  return Array.from({ length: count }, () => point(next() * 300, next() * 200));
};

const best = (points: readonly Point[]): number => {
  const walk = (here: number, left: readonly number[]): number =>
    left.length === 0
      ? 0
      : Math.min(
          ...left.map(
            (i) =>
              Math.hypot(there(points[i]).x - there(points[here]).x, there(points[i]).y - there(points[here]).y) +
              walk(
                i,
                left.filter((j) => j !== i),
              ),
          ),
        );
  const all = points.map((_, i) => i);
  return Math.min(
    ...all.map((i) =>
      walk(
        i,
        all.filter((j) => j !== i),
      ),
    ),
  );
};

describe('the order of openings', () => {
  it('visits each once', () => {
    for (const count of [0, 1, 2, 3, 50, 700]) {
      const order = travelOrder(scattered(count));
      expect(order.toSorted((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i));
    }
  });

  it('is the shortest for seven points', () => {
    for (const skip of [0, 7, 14, 21]) {
      const points = scattered(28).slice(skip, skip + 7);
      expect(wayLength(points, travelOrder(points))).toBeCloseTo(best(points), 9);
    }
  });

  it('walks a grid with hardly a diagonal', () => {
    const points = Array.from({ length: 900 }, (_, i) => point((i % 30) * 10, Math.floor(i / 30) * 10));
    expect(wayLength(points, travelOrder(points, point(0, 0)))).toBeLessThan(899 * 10 * 1.02);
  });

  it('is about as short as is known for evenly scattered points', () => {
    const points = scattered(2000);
    // The shortest tour through n points in an area A comes to about 0.7124 √(n A).
    expect(wayLength(points, travelOrder(points))).toBeLessThan(0.7124 * Math.sqrt(2000 * 300 * 200) * 1.06);
  });

  it('stands points on one spot or one line without trouble', () => {
    expect(travelOrder(Array.from({ length: 30 }, () => point(5, 5)))).toHaveLength(30);
    const line = Array.from({ length: 40 }, (_, i) => point((i * 7) % 40, 0));
    expect(wayLength(line, travelOrder(line))).toBeCloseTo(39, 9);
  });
});
