/** A program scaled for temperature: back at 20 °C it is the drawing, and a factor that is not right is not proven. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { jobRun } from '../../cli/inputs.ts';
import { boundsOfChain } from '../../geometry/area.ts';
import { contour } from '../../geometry/contour.ts';
import { arc, point } from '../../geometry/segment.ts';
import { scaling, transformChain } from '../../geometry/transform.ts';
import type { Material } from '../../physics/material/material.ts';
import { materials } from '../../physics/material/materials.ts';
import { sortLoops } from '../../plan/kept-side.ts';
import { answered, cut, program, proven } from '../answered.fixture.ts';
import type { JobRun } from '../job-run.ts';
import type { Answered } from '../pipeline/answer.ts';
import { runUpTo } from '../pipeline/pipeline.ts';
import { proveAgain } from '../pipeline/prove-again.ts';
import { drawingOf } from '../pipeline/stages.ts';
import { requestOf } from './request.ts';

const die = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const at = (cutting: number, scale: boolean): JobRun => ({
  ...die,
  job: { ...die.job, temperature: { cutting, measuring: 20, swing: 0.2, scale } },
});
const material = (id: string): Material => there(materials.find((m) => m.id === id));
const wished = (run: JobRun, of: Material) => {
  const found = requestOf(drawingOf(run), run, of);
  if (found.kind !== 'request') throw new Error('the die plate has contours');
  return found.request;
};
const codesOf = ({ facts }: Answered): readonly string[] => facts.findings.map((f) => f.code);
const thermal = ({ facts }: Answered): number =>
  there(there(cut(facts).budgets).profile.rows.find((r) => r.figure.key === 'budget.thermal')).figure.value;

const warm = answered(at(30, true));
const drawn = answered(at(30, false));
const plain = answered(die);
const warmSetup = proven(warm).setup;

describe('a program scaled for temperature', () => {
  it('is planned for contours that, cooled to 20 °C, are those of the drawing to a millionth of a micrometre', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), fc.constantFrom(...materials), (temperature, of) => {
        const request = wished(at(temperature, true), of);
        const cooled = 1 / (1 + of.expansion.value * 1e-6 * (temperature - 20));
        for (const { loop, contour: drawn } of request.wanted) {
          const asked = there(request.question.loops.find((l) => l.id === loop)).contour;
          transformChain(scaling(cooled), asked).segments.forEach((s, i) => {
            const wanted = there(drawn.segments[i]);
            const off = Math.hypot(s.from.x - wanted.from.x, s.from.y - wanted.from.y);
            expect(off).toBeLessThan(1e-9);
          });
        }
      }),
      { seed: 30, numRuns: 25 },
    );
  });

  it('programs contours that, cooled, reach as far as those of the unscaled program, with the same registers', () => {
    const { factor } = there(warmSetup.scaled);
    // Where a contour is begun may change, since equal spots are no longer equal to the last bit: how far it reaches may not.
    const reached = ({ facts }: Answered, by: number) => {
      const all = cut(facts).plan.contours.map((c) => boundsOfChain(there(c.courses.at(-1)).programmed));
      return all.flatMap(({ minX, minY, maxX, maxY }) => [minX / by, minY / by, maxX / by, maxY / by]);
    };
    const [hot, cold] = [reached(warm, factor), reached(plain, 1)];
    expect(hot).toHaveLength(32);
    expect(Math.max(...hot.map((place, i) => Math.abs(place - there(cold[i]))))).toBeLessThan(1e-9);
    expect(reached(warm, 1).some((place, i) => Math.abs(place - there(cold[i])) > 0.005)).toBe(true);
    expect(warmSetup.registers).toEqual(proven(plain).setup.registers);
  });

  it('takes a drawn circle of 3 mm for a start hole also where it has grown', () => {
    const circle = (diameter: number) => contour([arc(point(diameter, 0), point(diameter, 0), point(diameter / 2, 0), 2 * Math.PI)]);
    const sorted = (diameter: number) => {
      const loops = [{ id: 'L1', contour: circle(diameter), depth: 2 }];
      return sortLoops({ loops, outline: 'cut', kept: {}, startHole: 2 }).drawnHoles.length;
    };
    expect([sorted(3), sorted(3 * 1.0005), sorted(3.02)]).toEqual([1, 1, 0]);
  });

  it('is the same to the last character at 20 °C, which is said', () => {
    const made = (run: JobRun): string => {
      const made = runUpTo(run, 'program');
      return made.kind === 'programmed' ? made.written.text : '';
    };
    expect(made(at(20, true)).length).toBeGreaterThan(1000);
    expect(made(at(20, true))).toBe(made(at(20, false)));
    expect(wished(at(20, true), material('d2')).findings.map((f) => f.code)).toEqual(['scale-below-resolution']);
  });

  it('states its factor, leaves the budget only the doubt about the expansion, and is asked for where heat is noticed', () => {
    expect(program(warm.facts).proof.verdict).toBe('proven');
    expect(codesOf(warm)).toContain('program-scaled');
    expect(program(warm.facts).text).toContain('SCALED BY 1.000');
    expect(codesOf(drawn)).toContain('thermal-growth-large');
    expect(codesOf(plain)).not.toContain('thermal-growth-large');
    expect(thermal(drawn)).toBeGreaterThan(1);
    const { expansion } = material(die.job.material);
    const doubt = (expansion.high - expansion.low) / 2 / expansion.value;
    expect(thermal(warm)).toBeCloseTo(thermal(drawn) * doubt, 3);
  });

  const again = (answer: Answered, setup = proven(answer).setup) => {
    const judged = proveAgain({ program: program(answer.facts).text, drawing: die.drawing, drawingName: die.drawingName, setup });
    if (judged.kind !== 'judged') throw new Error(JSON.stringify(judged.findings));
    return judged.proof;
  };
  const worst = (answer: Answered, setup = proven(answer).setup): number =>
    Math.max(...again(answer, setup).contours.flatMap((c) => [c.leftMost.amount, -c.gougeMost.amount]));

  it('is proven again from its set-up file, and nearer to the warm drawing than to the cold one', () => {
    expect(again(warm).verdict).toBe('proven');
    const { scaled: _, ...cold } = warmSetup;
    expect(worst(warm, cold)).toBeGreaterThan(worst(warm) + 0.004);
  });

  it('is refused with a factor that is not that of its temperature, and where the program was scaled by another', () => {
    const { factor, ...basis } = there(warmSetup.scaled);
    const codes = (scaled: NonNullable<(typeof warmSetup)['scaled']>) => again(warm, { ...warmSetup, scaled }).findings.map((f) => f.code);
    expect(codes({ ...basis, factor: factor + 1e-7 })).toContain('scale-not-of-temperature');
    expect(codes({ ...basis, factor: 2 - factor })).toContain('scale-not-of-temperature');
    // Consistent in itself, but the program is not for that temperature: 90 °C would move the far corner by another 0.07 mm.
    const hot = { expansion: basis.expansion, temperature: 90, factor: 1 + basis.expansion * 1e-6 * 70 };
    expect(again(warm, { ...warmSetup, scaled: hot }).verdict).toBe('not proven');
  });
});
