/** Zooming, panning and fitting, as a finger or pointer expects them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centredOn, fitted, keptInSight, limitsFor, pinched, toPixel, toPlace, type View, windowOf, zoomedAt } from './view.ts';

const coordinate = fc.double({ min: -1e3, max: 1e3, noNaN: true });
const spot = fc.record({ x: coordinate, y: coordinate });
const view = fc.record({ scale: fc.double({ min: 0.01, max: 2000, noNaN: true }), x: coordinate, y: coordinate });
const anyZoom = { least: 1e-9, most: 1e9 };
const seeded = { seed: 1, numRuns: 200 };

describe('the view of the picture', () => {
  it('leads back to the place it came from', () => {
    fc.assert(
      fc.property(view, spot, (v, p) => {
        const back = toPlace(v, toPixel(v, p));
        expect(Math.hypot(back.x - p.x, back.y - p.y)).toBeLessThan(1e-8 * (1 + 1 / v.scale));
      }),
      seeded,
    );
  });

  it('keeps what is under the pointer there while zooming', () => {
    fc.assert(
      fc.property(view, spot, fc.double({ min: 0.1, max: 10, noNaN: true }), (v, pixel, factor) => {
        const under = toPlace(v, pixel);
        const after = toPixel(zoomedAt(v, pixel, factor, anyZoom), under);
        expect(Math.hypot(after.x - pixel.x, after.y - pixel.y)).toBeLessThan(1e-6);
      }),
      seeded,
    );
  });

  it('keeps both places under two fingers that turn neither way', () => {
    const v: View = { scale: 4, x: 100, y: 300 };
    const before = [
      { x: 50, y: 60 },
      { x: 150, y: 60 },
    ] as const;
    const after = [
      { x: 30, y: 80 },
      { x: 230, y: 80 },
    ] as const;
    const next = pinched(v, before, after, anyZoom);
    expect(next.scale).toBe(8);
    for (const i of [0, 1] as const) expect(toPixel(next, toPlace(v, before[i]))).toEqual(after[i]);
  });

  it('zooms no further than its limits', () => {
    const v: View = { scale: 4, x: 0, y: 0 };
    expect(zoomedAt(v, { x: 1, y: 1 }, 1e6, { least: 1, most: 100 }).scale).toBe(100);
    expect(zoomedAt(v, { x: 1, y: 1 }, 1e-6, { least: 1, most: 100 }).scale).toBe(1);
  });

  it('shows all of a box in the middle, with its margin', () => {
    const v = fitted({ minX: 10, minY: 20, maxX: 110, maxY: 70 }, { width: 640, height: 480 }, 20);
    expect(v.scale).toBe(6);
    expect(toPixel(v, { x: 10, y: 45 })).toEqual({ x: 20, y: 240 });
    expect(toPixel(v, { x: 110, y: 70 })).toEqual({ x: 620, y: 90 });
  });

  it('shows a single point and a level line without dividing by nothing', () => {
    const size = { width: 300, height: 200 };
    for (const box of [
      { minX: 5, minY: 5, maxX: 5, maxY: 5 },
      { minX: 0, minY: 5, maxX: 40, maxY: 5 },
    ]) {
      const v = fitted(box, size, 10);
      expect(Number.isFinite(v.scale) && v.scale > 0).toBe(true);
      expect(toPixel(v, { x: (box.minX + box.maxX) / 2, y: 5 })).toEqual({ x: 150, y: 100 });
      expect(limitsFor(v).most).toBeGreaterThan(v.scale);
    }
  });

  it('never loses the picture when it is dragged away', () => {
    const box = { minX: 0, minY: 0, maxX: 100, maxY: 50 };
    const size = { width: 400, height: 300 };
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), fc.double({ min: -1e5, max: 1e5, noNaN: true }), (x, y) => {
        const v = keptInSight({ scale: 2, x, y }, box, size, 60);
        const [low, high] = [toPixel(v, { x: 0, y: 50 }), toPixel(v, { x: 100, y: 0 })];
        expect(Math.min(high.x, size.width) - Math.max(low.x, 0)).toBeGreaterThanOrEqual(60 - 1e-6);
        expect(Math.min(high.y, size.height) - Math.max(low.y, 0)).toBeGreaterThanOrEqual(60 - 1e-6);
      }),
      seeded,
    );
  });

  it('says what it sees in mm', () => {
    const v = centredOn({ scale: 10, x: 0, y: 0 }, { x: 7, y: 3 }, { width: 100, height: 40 });
    const w = windowOf(v, { width: 100, height: 40 });
    expect([w.minX, w.maxX, w.minY, w.maxY]).toEqual([2, 12, 1, 5]);
  });
});
