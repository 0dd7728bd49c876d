/** The involute: its function there and back, the curve against its own equation, and how far a place lies off it. */
import { describe, expect, it } from 'vitest';
import { distanceFromInvolute, inv, inverseInv, involuteCurve } from './involute.ts';

describe('the involute', () => {
  it('is found again from its function over the whole range', () => {
    for (const angle of [1e-6, 1e-3, 0.019, 0.021, 0.1, 0.349, 0.7, 1, 1.3, 1.5, 1.57])
      expect(inverseInv(inv(angle))).toBeCloseTo(angle, angle > 1.55 ? 8 : 12);
    expect(inverseInv(0)).toBe(0);
    expect([inverseInv(-1e-9), inverseInv(Number.NaN), inverseInv(Number.POSITIVE_INFINITY)]).toEqual(['none', 'none', 'none']);
  });

  it('has string length, radius and direction that belong together', () => {
    for (const hand of [1, -1] as const) {
      const curve = involuteCurve(20, 20, 31, 0.4, hand);
      for (const t of [0.1, 0.5, curve.end]) {
        const p = curve.pointAt(t);
        expect(Math.hypot(p.x, p.y)).toBeCloseTo(20 * Math.sqrt(1 + t * t), 12);
        const step = 1e-6;
        const [a, b] = [curve.pointAt(t - step), curve.pointAt(t + step)];
        const d = curve.tangentAt(t);
        expect(((b.x - a.x) * d.y - (b.y - a.y) * d.x) / Math.hypot(b.x - a.x, b.y - a.y) / Math.hypot(d.x, d.y)).toBeCloseTo(0, 8);
        expect((b.x - a.x) * d.x + (b.y - a.y) * d.y).toBeGreaterThan(0);
        expect(distanceFromInvolute(p, 20, 0.4, hand)).toBeCloseTo(0, 12);
        // A step square to the curve is the distance from it.
        const size = Math.hypot(d.x, d.y);
        expect(distanceFromInvolute({ x: p.x - (0.01 * d.y) / size, y: p.y + (0.01 * d.x) / size }, 20, 0.4, hand)).toBeCloseTo(0.01, 9);
      }
    }
  });
});
