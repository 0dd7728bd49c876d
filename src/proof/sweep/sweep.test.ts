/** Swept areas against the formulas of bars, rings and discs. */
/** Swept areas of paths whose area is known. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { circle, line, point } from '../../geometry/segment.ts';
import { areaOfLoop, lengthOfLoop, united } from './metal.ts';
import { discOf, sweepOf } from './sweep.ts';

describe('swept areas', () => {
  it('of a straight cut is a bar with two round ends', () => {
    const [loop] = united([sweepOf([line(point(0, 0), point(10, 0))], 0.155)]);
    expect(Math.abs(areaOfLoop(there(loop)) - (10 * 0.31 + Math.PI * 0.155 ** 2))).toBeLessThan(lengthOfLoop(there(loop)) * 2.5e-4);
  });

  it('of a full circle is a ring', () => {
    const loops = united([sweepOf([circle(point(3, -2), 4)], 0.155)]);
    const areas = loops.map(areaOfLoop).sort((a, b) => b - a);
    expect(areas).toHaveLength(2);
    expect(Math.abs(there(areas[0]) - Math.PI * 4.155 ** 2)).toBeLessThan(2 * Math.PI * 4.155 * 2.5e-4);
    expect(Math.abs(there(areas[1]) + Math.PI * 3.845 ** 2)).toBeLessThan(2 * Math.PI * 3.845 * 2.5e-4);
  });

  it('of a circle tighter than the wire is a disc without a core', () => {
    const loops = united([sweepOf([circle(point(0, 0), 0.1)], 0.155)]);
    expect(loops).toHaveLength(1);
    expect(Math.abs(areaOfLoop(there(loops[0])) - Math.PI * 0.255 ** 2)).toBeLessThan(2 * Math.PI * 0.255 * 2.5e-4);
  });

  it('of a wire that stands still is a disc', () => {
    const [loop] = united([sweepOf([line(point(1, 1), point(1, 1))], 0.15)]);
    expect(areaOfLoop(there(loop))).toBeCloseTo(areaOfLoop(there(united([[discOf(point(1, 1), 0.15)]])[0])), 9);
  });
});
