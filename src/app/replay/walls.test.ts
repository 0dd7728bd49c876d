/** Invented shapes have the sizes that are given. */
/** The wall under the glass, to scale. */
import { describe, expect, it } from 'vitest';
import { craterProfile } from '../chart/crater-profile.ts';
import { faceLine, sidewaysFactor } from '../chart/cut-faces.ts';

const face = {
  process: 'laser',
  name: 'laser',
  off: 0.15,
  shape: 'leaning',
  rough: 0.06,
  ra: [8, 16],
  tires: false,
  sentence: '',
} as const;

describe('the wall under the glass', () => {
  it('has the roughness that is given', () => {
    for (const ra of [0.1, 0.8, 2.8]) {
      const { off } = craterProfile(ra, 80, 3);
      const mean = off.reduce((s, y) => s + y, 0) / off.length;
      expect(mean).toBeCloseTo(0, 9);
      expect(off.reduce((s, y) => s + Math.abs(y - mean), 0) / off.length).toBeCloseTo(ra, 9);
    }
  });
  it('is the same at every look, and another after another pass', () => {
    expect(craterProfile(1, 80, 1)).toEqual(craterProfile(1, 80, 1));
    expect(craterProfile(1, 80, 1)).not.toEqual(craterProfile(1, 80, 2));
  });
  it('is straight where nothing is rough', () => {
    expect(craterProfile(0, 80, 1).off.every((y) => y === 0)).toBe(true);
  });
});

describe('faces of other processes', () => {
  it('are drawn larger sideways by one round factor, so that the widest has room', () => {
    const factor = sidewaysFactor([face, { ...face, off: 0.3 }], 6, 60);
    expect(factor).toBe(20);
    expect((0.3 + 0.06) * 6 * factor).toBeLessThanOrEqual(60);
  });
  it('lean by what they are off at the lower edge, barrels in the middle', () => {
    const leaning = faceLine({ ...face, rough: 0 });
    expect(leaning[0]?.off).toBe(0);
    expect(leaning.at(-1)?.off).toBeCloseTo(0.15, 12);
    const barrel = faceLine({ ...face, rough: 0, shape: 'barrel' });
    expect(Math.max(...barrel.map((p) => p.off))).toBeCloseTo(0.15, 6);
    expect(barrel.at(-1)?.off).toBeCloseTo(0, 12);
  });
  it('stay within the height of their roughness', () => {
    for (const { down, off } of faceLine(face)) expect(Math.abs(off - 0.15 * down)).toBeLessThanOrEqual(0.03 + 1e-12);
  });
});
