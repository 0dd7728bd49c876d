/** Other processes beside the wire: the honest no to the wire, the honest only-the-wire, and a reason with numbers for each. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { printPlain } from '../../text/print/print.ts';
import { findMaterial } from '../material/find-material.ts';
import type { Material } from '../material/material.ts';
import { materials } from '../material/materials.ts';
import { otherFindings, otherProcesses } from './other-processes.ts';
import type { OtherQuestion, OtherWay } from './other-question.ts';

const material = (id: string): Material => {
  const found = findMaterial(id);
  if (found.kind !== 'material') throw new Error(id);
  return found.material;
};

const question = (changes: Partial<OtherQuestion> = {}): OtherQuestion => ({
  thickness: 10,
  tolerance: 0.01,
  finish: 0.8,
  material: material('4140'),
  length: 600,
  contours: 3,
  insideRadius: 2,
  wire: { minutes: 240, deviation: 0.004, ra: 0.79, formError: 2 },
  ...changes,
});

const kinds = (changes: Partial<OtherQuestion>): Record<string, OtherWay['kind']> =>
  Object.fromEntries(otherProcesses(question(changes)).ways.map((w) => [w.process, w.kind]));

describe('other processes', () => {
  it('leave fine work to the wire and say what comes nearest', () => {
    const ways = otherProcesses(question());
    expect(ways.kind).toBe('only the wire');
    expect(printPlain(ways.verdict)).toMatch(/^Of these processes only wire EDM holds ±0\.01 mm and Ra 0\.8 µm at 10 mm\. Nearest is /);
    expect(otherFindings(ways)).toEqual([]);
  });

  it('take coarse work from the wire, with both times', () => {
    const ways = otherProcesses(question({ tolerance: 0.5, finish: 25 }));
    expect(ways.kind).toBe('not for the wire');
    expect(printPlain(ways.verdict)).toMatch(
      /^Not a job for wire EDM: a plasma cut holds ±0\.5 mm and Ra 25 µm in about .*; wire EDM takes 4 h\./,
    );
    expect(otherFindings(ways).map((f) => f.code)).toEqual(['another-process-would-do']);
  });

  it('fail for the first thing that is not good enough', () => {
    expect(kinds({ tolerance: 0.5, finish: 25 })).toMatchObject({
      oxyfuel: 'out of size',
      plasma: 'would do',
      laser: 'would do',
      'water jet': 'would do',
    });
    expect(kinds({ tolerance: 0.5, finish: 25, insideRadius: 0.3 })).toMatchObject({
      plasma: 'corners too round',
      laser: 'would do',
      'water jet': 'corners too round',
    });
    expect(kinds({ tolerance: 0.5, finish: 8 })).toMatchObject({ laser: 'too rough', 'water jet': 'would do' });
    expect(kinds({ tolerance: 0.05, finish: 25 })).toMatchObject({ plasma: 'out of square', laser: 'out of size' });
    expect(kinds({ thickness: 40, tolerance: 1, finish: 25 })).toMatchObject({ laser: 'out of scope' });
    expect(kinds({ material: material('wc-6co'), tolerance: 1, finish: 25 })).toEqual({
      oxyfuel: 'cannot cut it',
      plasma: 'cannot cut it',
      laser: 'cannot cut it',
      'water jet': 'cannot cut it',
    });
  });

  it('never pass or fail for sure on Ra where only Rz is known', () => {
    const laser = there(otherProcesses(question({ tolerance: 0.5, finish: 10 })).ways.find((w) => w.process === 'laser'));
    expect(there(laser.edge).ra.low).toBeLessThan(10);
    expect(there(laser.edge).ra.high).toBeGreaterThan(10);
    expect(laser?.kind).toBe('too rough');
    expect(printPlain(there(laser).sentence)).toContain('cannot be promised');
  });

  it('say so when nothing holds what is asked', () => {
    const { wire: _, ...without } = question();
    expect(otherProcesses(without).kind).toBe('none of them');
  });

  it.each(materials.map((m) => m.id))('have a sentence with numbers or a reason for %s at any thickness', (id) => {
    for (const thickness of [0.2, 1, 12, 60, 250, 400])
      for (const way of otherProcesses(question({ material: material(id), thickness, tolerance: 0.4, finish: 12 })).ways) {
        expect(printPlain(way.sentence)).toMatch(/^[A-Z].*\.$/);
        expect(printPlain(way.sentence)).not.toMatch(/NaN|undefined|Infinity/);
        if (way.edge !== undefined) expect(way.edge.minutes.value).toBeGreaterThan(0);
      }
  });
});
