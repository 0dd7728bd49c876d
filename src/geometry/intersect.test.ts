/** The named outcomes of two segments, case by case. */
import { describe, expect, it } from 'vitest';
import { arcByDegrees } from './bulge.ts';
import { intersect } from './intersect.ts';
import type { Segment } from './segment.ts';
import { circle, line, point } from './segment.ts';

const L = (x0: number, y0: number, x1: number, y1: number): Segment => line(point(x0, y0), point(x1, y1));
const within = 1e-6;
const kinds = (a: Segment, b: Segment): string => {
  const forth = intersect(a, b, within).map((c) => c.kind);
  expect(
    intersect(b, a, within)
      .map((c) => c.kind)
      .sort(),
  ).toEqual([...forth].sort());
  return forth.join(', ');
};

describe('line with line', () => {
  it('crosses, with the shares of both', () => {
    const [c] = intersect(L(0, 0, 4, 0), L(1, -1, 1, 3), within);
    expect(c).toEqual({ kind: 'crossing', at: { x: 1, y: 0 }, first: 0.25, second: 0.25 });
  });
  it('stays apart when parallel, beyond an end, or a hair short', () => {
    expect(kinds(L(0, 0, 4, 0), L(0, 1, 4, 1))).toBe('');
    expect(kinds(L(0, 0, 4, 0), L(5, -1, 5, 1))).toBe('');
    expect(kinds(L(0, 0, 4, 0), L(2, 2e-6, 2, 1))).toBe('');
  });
  it('touches with an end in the middle or at an end of the other, snapped to the end', () => {
    expect(intersect(L(0, 0, 4, 0), L(2, 5e-7, 2, 1), within)).toEqual([
      { kind: 'touching end', at: { x: 2, y: 5e-7 }, first: 0.5, second: 0 },
    ]);
    expect(intersect(L(0, 0, 4, 0), L(4, 5e-7, 9, 1), within)).toEqual([{ kind: 'touching end', at: { x: 4, y: 0 }, first: 1, second: 0 }]);
  });
  it('names an overlap with its stretch, also run backwards', () => {
    expect(intersect(L(0, 0, 4, 0), L(6, 0, 2, 0), within)).toEqual([
      { kind: 'overlap', from: { x: 2, y: 0 }, to: { x: 4, y: 0 }, first: [0.5, 1], second: [1, 0.5] },
    ]);
    expect(kinds(L(0, 0, 4, 0), L(0, 0, 4, 0))).toBe('overlap');
    expect(kinds(L(0, 0, 4, 0), L(4, 0, 8, 0))).toBe('touching end');
  });
});

describe('line with arc', () => {
  const half = arcByDegrees(point(0, 0), 5, 0, 180);
  it('crosses once or twice, or misses the part that is there', () => {
    expect(kinds(L(-9, 3, 9, 3), half)).toBe('crossing, crossing');
    expect(kinds(L(0, 0, 0, 9), half)).toBe('crossing');
    expect(kinds(L(-9, -3, 9, -3), half)).toBe('');
    expect(intersect(L(-9, 3, 9, 3), half, within).map((c) => (c.kind === 'crossing' ? c.at.x : NaN))).toEqual([-4, 4]);
  });
  it('is tangent within the tolerance, and apart or crossing beyond it', () => {
    expect(kinds(L(-9, 5, 9, 5), half)).toBe('tangent');
    expect(kinds(L(-9, 5 + 5e-7, 9, 5 + 5e-7), half)).toBe('tangent');
    expect(kinds(L(-9, 5 + 2e-6, 9, 5 + 2e-6), half)).toBe('');
    expect(kinds(L(-9, 5 - 2e-6, 9, 5 - 2e-6), half)).toBe('crossing, crossing');
  });
  it('sees one touching end in a tangent joint, also when the joint is rounded badly', () => {
    expect(kinds(half, L(-5, 0, -5, -9))).toBe('touching end');
    expect(kinds(half, L(-5 + 1e-7, 0, -5 - 1e-7, -9))).toBe('touching end');
    expect(kinds(half, L(-5, 0, -5 + 1e-5, -9))).toBe('touching end');
  });
  it('sees a flat arc along its chord as an overlap', () => {
    expect(kinds(arcByDegrees(point(0, 0), 5000, 90, 90.0005), L(5000 * Math.sin(-0.0005 * (Math.PI / 180)), 5000, 0, 5000))).toBe(
      'overlap',
    );
  });
});

describe('arc with arc', () => {
  it('crosses twice, or once when one is only a part', () => {
    expect(kinds(circle(point(0, 0), 5), circle(point(6, 0), 5))).toBe('crossing, crossing');
    expect(kinds(arcByDegrees(point(0, 0), 5, 0, 90), circle(point(6, 0), 5))).toBe('crossing');
  });
  it('is tangent from outside and from inside', () => {
    expect(kinds(circle(point(0, 0), 5), circle(point(0, 8), 3))).toBe('tangent');
    expect(kinds(circle(point(0, 0), 5), circle(point(0, 2), 3))).toBe('tangent');
    expect(kinds(circle(point(0, 0), 5), circle(point(0, 1), 3))).toBe('');
    expect(kinds(circle(point(0, 0), 5), circle(point(0, 9), 3))).toBe('');
  });
  it('sees concentric ones apart and equal ones as overlaps', () => {
    expect(kinds(circle(point(0, 0), 5), circle(point(0, 0), 4))).toBe('');
    expect(intersect(circle(point(0, 0), 5), circle(point(0, 0), 5, 'clockwise'), within)).toMatchObject([
      { kind: 'overlap', first: [0, 1], second: [1, 0] },
    ]);
    expect(kinds(arcByDegrees(point(0, 0), 5, 0, 270), arcByDegrees(point(0, 0), 5, 180, 90))).toBe('overlap, overlap');
    expect(kinds(circle(point(0, 0), 5), arcByDegrees(point(0, 0), 5, 300, 60))).toBe('overlap, overlap');
    expect(kinds(arcByDegrees(point(0, 0), 5, 0, 90), arcByDegrees(point(0, 0), 5, 90, 180))).toBe('touching end');
    expect(kinds(arcByDegrees(point(0, 0), 5, 0, 180), arcByDegrees(point(0, 0), 5, 180, 0))).toBe('touching end, touching end');
  });
});
