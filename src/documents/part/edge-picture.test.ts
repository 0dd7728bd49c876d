/** The cut faces side by side: drawn to scale, the same each time, one face for each process that cuts it. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { findMaterial } from '../../physics/material/find-material.ts';
import { otherProcesses } from '../../physics/other-process/other-processes.ts';
import { edgePicture } from './edge-picture.ts';
import { otherWaysLines } from './other-ways-text.ts';

const waysOf = (thickness: number, id = '4140') => {
  const found = findMaterial(id);
  if (found.kind !== 'material') throw new Error(id);
  return otherProcesses({
    thickness,
    tolerance: 0.01,
    finish: 0.8,
    material: found.material,
    length: 500,
    contours: 2,
    insideRadius: 1,
    wire: { minutes: 100, deviation: 0.004, ra: 0.79, formError: 2 },
  });
};

/** Where each face ends at the bottom, px from the dashed straight. */
const strays = (svg: string): number[] =>
  [...svg.matchAll(/<path d="M(\d+) 72V348"[^>]*>\n<path d="M([^"]*)"/g)].map(([, straight, points]) => {
    const last = there(there(points).split('L').at(-1)).split(' ');
    return Number(last[0]) - Number(straight);
  });

describe('the picture of cut faces', () => {
  it('states the factor by which it is larger sideways, and draws every face by it', () => {
    const svg = edgePicture(waysOf(20));
    expect(svg).toBe(edgePicture(waysOf(20)));
    const factor = Number(/sideways × (\d+) /.exec(svg)?.[1]);
    expect([1, 2, 5, 10, 20, 50, 100, 200, 500]).toContain(factor);
    const perMillimetre = (260 / 20) * factor;
    const [wire, oxyfuel, , laser] = strays(svg);
    const roughOf = { oxyfuel: 0.056, laser: 0.056 };
    expect(Math.abs(there(oxyfuel) - 0.29 * perMillimetre)).toBeLessThan(0.5 * roughOf.oxyfuel * perMillimetre);
    expect(Math.abs(there(laser) - 0.11 * perMillimetre)).toBeLessThan(0.5 * roughOf.laser * perMillimetre);
    expect(Math.abs(there(wire))).toBeLessThan(0.01 * perMillimetre);
  });

  it('says why a process is not there', () => {
    const svg = edgePicture(waysOf(40, 'wc-6co'));
    expect(strays(svg)).toHaveLength(1);
    expect(svg).toContain('Laser does not cut');
    expect(otherWaysLines(waysOf(40, 'wc-6co')).join('\n')).toContain('Laser does not cut');
  });
});
