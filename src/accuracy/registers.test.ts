/** Corrections as a shop meets them: what can be saved, what is safe, what is suspicious. */

import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { findMaterial } from '../physics/material/find-material.ts';
import { insideArcs } from '../plan/inside-arcs.ts';
import { loop, planned, plate, questionFor, rectangle } from '../plan/plan.fixture.ts';
import type { PlanQuestion } from '../plan/question.ts';
import { printPlain } from '../text/print/print.ts';
import { type Correction, correctionOf } from './correction.ts';
import { correctionFindings } from './correction-safety.ts';
import { deviationOfMeasured, type Measured, newRegisters } from './registers.ts';
import { salvageOf } from './salvage.ts';

const found = findMaterial('d2');
if (found.kind !== 'material') throw new Error('the list of materials has no d2');
const { expansion } = found.material;

const of = (measured: readonly Partial<Measured>[], question: PlanQuestion = questionFor(plate()), tolerance = 0.004): Correction => {
  const plan = planned(question);
  const registers = new Map(plan.passes.map((p) => [p.register, p.offset.value]));
  const whole = measured.map((m): Measured => {
    const { kept } = there(plan.contours.find((c) => c.loop === (m.loop ?? 'L2')));
    return { loop: 'L2', kept, size: 20, expected: 20, temperature: 20, sides: 2, ...m };
  });
  return correctionOf({ plan, registers, measured: whole, expansion, tolerance });
};

const codes = (c: Correction): readonly string[] => c.findings.map((f) => f.code);

describe('a measured piece', () => {
  it('that is within tolerance is good, with what is left or gone', () => {
    expect(there(of([{ size: 19.996 }]).sizes[0]).salvage).toMatchObject({ kind: 'good as it is' });
    expect(printPlain(there(of([{ size: 19.996 }]).sizes[0]).salvage.sentence)).toMatch(/2\.0 µm stock left per side/);
  });

  it('with metal left is saved by another skim, and cleaned when enough is taken', () => {
    const much = there(of([{ size: 19.984 }]).sizes[0]).salvage;
    expect(much).toMatchObject({ kind: 'another skim', cleans: true });
    expect(much.kind === 'another skim' && much.takes).toBeCloseTo(8, 6);
    const little = there(of([{ size: 19.998 }], questionFor(plate()), 0.0005).sizes[0]).salvage;
    expect(little).toMatchObject({ kind: 'another skim', cleans: false, from: planned(questionFor(plate())).passes.length });
    const part = there(of([{ loop: 'L1', size: 120.016, expected: 120 }]).sizes[0]).salvage;
    expect(printPlain(part.sentence)).toMatch(/is still on its tab/);
  });

  it('with more left than the last skim bites is begun again with the pass before', () => {
    const plan = planned(questionFor(plate(), { finish: 0.5 }));
    const measured: Measured = { loop: 'L2', kept: 'die', size: 19.95, expected: 20, temperature: 20, sides: 2 };
    const deviation = deviationOfMeasured(measured, expansion);
    const registers = newRegisters(plan.passes, new Map(), deviation.left);
    // A finer wire, so that the gap does not stand against it.
    const wire = { ...plan.wire, diameter: plan.wire.diameter - 0.1 };
    const salvage = salvageOf(deviation, { plan: { passes: plan.passes, wire }, registers, tolerance: 0.004 });
    expect(salvage).toMatchObject({ kind: 'another skim', from: 2, cleans: true });
    expect(printPlain(salvage.sentence)).toMatch(/repeat passes 2 to \d .* D2 at 0\.\d{4} mm, D3 at/);
  });

  it('takes half as much again with the last skim as it usually does, and no more', () => {
    const plan = planned(questionFor(plate(), { finish: 0.5 }));
    const [before, last] = plan.passes.slice(-2).map((pass) => pass.stock.value);
    const wire = { ...plan.wire, diameter: plan.wire.diameter - 0.1 };
    const from = (bites: number): unknown => {
      const size = 20 - 2 * bites * (there(before) - there(last));
      const deviation = deviationOfMeasured({ loop: 'L2', kept: 'die', size, expected: 20, temperature: 20, sides: 2 }, expansion);
      const registers = newRegisters(plan.passes, new Map(), deviation.left);
      return salvageOf(deviation, { plan: { passes: plan.passes, wire }, registers, tolerance: 0.0005 });
    };
    expect([from(1.45), from(1.55)]).toMatchObject([{ from: plan.passes.length }, { from: plan.passes.length - 1 }]);
  });

  it('with more metal left than the wire can reach is looked into first', () => {
    const far = there(of([{ size: 19.9 }]).sizes[0]).salvage;
    expect(far.kind).toBe('out of reach');
    expect(printPlain(far.sentence)).toMatch(/50\.0 µm stock left per side, but/);
  });

  it('with metal gone is not', () => {
    expect(there(of([{ size: 20.02 }]).sizes[0]).salvage).toMatchObject({ kind: 'metal gone' });
    expect(there(of([{ loop: 'L1', size: 119.98, expected: 120 }]).sizes[0]).salvage).toMatchObject({ kind: 'metal gone' });
  });

  it('is read at 20 °C: what was measured warm is smaller than it looks', () => {
    const warm = of([{ size: 20.00624, temperature: 50 }]);
    expect(warm.left.value).toBeCloseTo(0, 7);
    expect(warm.worth).toBe(false);
  });
});

describe('corrected registers', () => {
  it('may always go down a little, and are refused where a program has arcs that fit the old ones', () => {
    expect(of([{ size: 19.99 }])).toMatchObject({ safe: true, worth: true });
    const up = of([{ size: 20.01 }]);
    expect(up.safe).toBe(false);
    expect(codes(up)).toContain('correction-arc-too-tight');
  });

  it('may come as near to an inside arc as the last digit of a program, a nanometre, and no nearer', () => {
    const plan = planned(questionFor(plate()));
    const arcs = plan.contours.flatMap((c) => c.courses.flatMap((course) => insideArcs(course.programmed, c.kept)));
    const tightest = Math.min(...arcs.map((arc) => arc.radius));
    const left = deviationOfMeasured({ loop: 'L2', kept: 'die', size: 20.01, expected: 20, temperature: 20, sides: 2 }, expansion).left;
    const tight = (under: number): boolean => {
      const registers = newRegisters(plan.passes, new Map(), left).map((r) => ({
        ...r,
        before: tightest - 1,
        after: { ...r.after, value: tightest - under },
      }));
      return correctionFindings(plan, registers).some((f) => f.code === 'correction-arc-too-tight');
    };
    expect([1.1e-6, 0.9e-6].map(tight)).toEqual([false, true]);
  });

  it('may go up where no inside corner stands against it', () => {
    const outside = questionFor([loop('L1', rectangle(0, 0, 40, 30))]);
    const up = of([{ loop: 'L1', size: 39.99, expected: 40 }], outside);
    expect(up).toMatchObject({ safe: true });
    expect(there(up.registers[0]).after.value - there(up.registers[0]).before).toBeCloseTo(0.005, 9);
  });

  it('are refused where no gap is left, and doubted when the change is large', () => {
    expect(codes(of([{ size: 19.9 }]))).toEqual(expect.arrayContaining(['correction-suspicious', 'register-below-gap']));
    expect(codes(of([{ size: 19.99 }]))).toEqual([]);
  });

  it('are doubted from 20 µm per side on, and refused from where the wire has less than 3 µm of gap', () => {
    const outside = questionFor([loop('L1', rectangle(0, 0, 40, 30))]);
    const up = (size: number) => codes(of([{ loop: 'L1', size, expected: 40 }], outside));
    expect([39.9604, 39.9596].map((size) => up(size).includes('correction-suspicious'))).toEqual([false, true]);
    const last = there(planned(outside).passes.at(-1));
    const room = last.offset.value - planned(outside).wire.diameter / 2 - 0.003;
    const down = (beyond: number) => codes(of([{ loop: 'L1', size: 40 + 2 * (room + beyond), expected: 40 }], outside));
    expect([-2e-4, 2e-4].map((beyond) => down(beyond).includes('register-below-gap'))).toEqual([false, true]);
  });

  it('cannot serve contours that want different ones', () => {
    expect(codes(of([{ size: 19.99 }, { loop: 'L3', size: 16, expected: 16 }]))).toContain('corrections-disagree');
  });
});
