/** The nearest edge against every edge tried. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { edgesOf } from './edges.ts';
import { isInside } from './metal.ts';

/** A star-shaped loop about zero, counter-clockwise, in units. */
const loops = fc.array(fc.integer({ min: 100_000, max: 900_000 }), { minLength: 3, maxLength: 40 }).map((radii) =>
  radii.map((r, i) => ({
    x: Math.round(r * Math.cos((2 * Math.PI * i) / radii.length)),
    y: Math.round(r * Math.sin((2 * Math.PI * i) / radii.length)),
  })),
);

describe('distance to the edge of the metal', () => {
  it('is that of the nearest edge, with the side of the loop as its sign', () => {
    fc.assert(
      fc.property(loops, fc.double({ min: -12, max: 12, noNaN: true }), fc.double({ min: -12, max: 12, noNaN: true }), (loop, x, y) => {
        const found = edgesOf([loop]).distance(x, y);
        const straight = Math.min(...loop.map((p, i) => toEdge(p, there(loop[(i + 1) % loop.length]), x * 1e5, y * 1e5))) / 1e5;
        expect(Math.abs(found)).toBeCloseTo(straight, 9);
        if (straight > 1e-6) expect(found < 0).toBe(isInside(loop, x * 1e5, y * 1e5));
      }),
      { seed: 7, numRuns: 400 },
    );
  });

  it('is endless where there is no edge', () => {
    expect(edgesOf([]).distance(1, 2)).toBe(Infinity);
  });
});

const toEdge = (a: { x: number; y: number }, b: { x: number; y: number }, x: number, y: number): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.min(Math.max(((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy), 0), 1);
  return Math.hypot(a.x + t * dx - x, a.y + t * dy - y);
};
