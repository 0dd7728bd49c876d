/** Contours that are asked different things: passes of their own, numbers of their own, and nothing left for passes that never come. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { Figure } from '../../quantity/figure.ts';
import { printPlain } from '../../text/print/print.ts';
import { planCut } from '../cut/plan-cut.ts';
import { disc, faultsOf, loop, planned, plate, questionFor, rectangle } from '../plan.fixture.ts';
import type { PlanQuestion } from '../question.ts';
import { nothingBeside } from '../sureness.ts';
import { familyFindings } from './families.ts';

const fine = { finish: 0.4, tolerance: 0.006 };
const rough = { finish: 3.2, tolerance: 0.1 };
const asked = (requirements: PlanQuestion['requirements'], changes: Partial<PlanQuestion> = {}): PlanQuestion =>
  questionFor(plate(), { tolerance: 0.03, requirements, ...changes });

const passesOn = (question: PlanQuestion, id: string): readonly number[] => {
  const plan = planned(question);
  const numbers: number[] = [];
  let at = '';
  for (const step of plan.steps) {
    if (step.kind === 'contour begins') at = step.loop;
    if (at === id && step.kind === 'compensate' && !numbers.includes(step.register)) numbers.push(step.register);
  }
  return numbers;
};

describe('contours that are asked different things', () => {
  it('get as many passes as each needs, with registers and energy settings of their own', () => {
    const question = asked({ L3: fine, L4: rough });
    const plan = planned(question);
    expect(plan.passes.map((p) => p.register)).toEqual([...new Set(plan.passes.map((p) => p.register))]);
    expect(plan.passes.every((p) => p.condition === p.number && p.register === p.number)).toBe(true);
    expect(plan.classes?.map((c) => c.loops.toSorted())).toEqual([['L1', 'L2', 'L5'], ['L3'], ['L4']]);
    expect(passesOn(question, 'L4')).toEqual([21]);
    expect(passesOn(question, 'L3').length).toBeGreaterThan(passesOn(question, 'L2').length);
    expect(passesOn(question, 'L3').every((n) => n > 10 && n < 20)).toBe(true);
    expect(there(plan.contours.find((c) => c.loop === 'L4')).courses.map((c) => c.pass)).toEqual([21]);
    const of = (id: string) => there(plan.classes?.find((c) => c.loops.includes(id)));
    expect(of('L3').finish.value).toBeLessThanOrEqual(0.4);
    expect(of('L3').accuracy.value).toBeLessThanOrEqual(0.006);
    expect(of('L4').finish.value).toBeGreaterThan(of('L2').finish.value);
  });

  it('leave no stock for passes that never come: one that is cut once runs at half a wire and its gap', () => {
    const plan = planned(asked({ L4: rough }));
    const [only] = there(plan.classes?.find((c) => c.loops.includes('L4'))).passes;
    expect(only.stock.value).toBe(0);
    expect(only.offset.value).toBeCloseTo(plan.wire.diameter / 2 + only.gap.value, 12);
    expect(only.offset.value).toBeLessThan(plan.passes[0].offset.value);
  });

  it.each(['attended', 'unattended first'] as const)('make a plan without a fault when run %s', (run) => {
    const question = asked({ L3: fine, L4: rough }, { run });
    const plan = planned(question);
    for (const { loops, passes } of there(plan.classes))
      for (const { courses } of plan.contours.filter((c) => loops.includes(c.loop)))
        expect(courses.map((c) => c.pass)).toEqual(passes.map((p) => p.number));
    expect(faultsOf(plan, question)).toEqual([]);
  });

  it('share passes that meet both, and have none of their own where they ask what the job asks', () => {
    const plain = planned(asked(undefined));
    const shared = planned(asked({ L3: { finish: 0.8, tolerance: 0.031 } }));
    expect(shared.passes).toEqual(plain.passes);
    expect(shared.classes).toHaveLength(2);
    expect(plain.classes).toBeUndefined();
  });

  it('of one shape are laid out apart where they are asked differently', () => {
    const loops = [loop('L1', rectangle(0, 0, 100, 60)), loop('L2', disc(20, 20, 6), 1, 'L1'), loop('L3', disc(60, 20, 6), 1, 'L1')];
    const question = questionFor(loops, { tolerance: 0.03, requirements: { L3: rough } });
    expect(passesOn(question, 'L2').length).toBeGreaterThan(1);
    expect(passesOn(question, 'L3')).toEqual([11]);
  });

  it('are refused by name, at their own field', () => {
    const plan = planCut(asked({ L3: { finish: 0.4, tolerance: 0.0001 } }));
    const finding = there(plan.findings.find((f) => f.code === 'tolerance-out-of-reach'));
    expect(plan.kind).toBe('refused');
    expect(printPlain(finding.text)).toMatch(/^For L3: ±0.0001 mm required/);
    expect(finding.place).toEqual({ kind: 'field', path: 'contours.L3.tolerance' });
    expect(finding.remedy?.field).toBe('contours.L3.tolerance');
  });

  it('are refused where a register of four digits would be needed', () => {
    const row = there(planned(questionFor(plate(), { tolerance: 0.03 })).passes[0]);
    const taken = { ...row, number: 1001, taken: row.gap, recast: row.ra };
    const family = { classes: [{ loops: ['L2'], asked: fine, ofJob: false }], rows: [taken], base: 1000, minutes: 1 } as const;
    expect(familyFindings([family]).map((f) => f.code)).toEqual(['families-too-many']);
    expect(familyFindings([{ ...family, rows: [{ ...taken, number: 999 }] }])).toEqual([]);
  });

  it('call each figure by a name of its own', () => {
    const plan = planned(asked({ L3: fine, L4: rough }));
    const keys = plan.passes.flatMap((p) => [p.offset.key, p.feed.key, p.ra.key]);
    expect(new Set(keys).size).toBe(keys.length);
    const fed = there(plan.passes.find((p) => p.number === 12));
    expect(fed.feed.key).toBe('pass.12.feed');
    expect(fed.offset.value).toBeGreaterThanOrEqual(fed.offset.low);
  });

  it('mean the same by a key wherever it stands, in what is expected of them too', () => {
    const beside = { ...nothingBeside, growth: 1, stress: 3, stressLeft: 0.3, insideRadii: [0.4, 1, 6] };
    const free = planned(asked({ L3: fine, L4: rough }, { beside }));
    const offsets = there(free.classes?.[1]).passes.map((p) => p.offset.value + 0.001);
    const plan = planned(asked({ L3: { ...fine, tolerance: 0.02, offsets }, L4: rough }, { beside }));
    const values = new Map<string, Set<number>>();
    const look = (figure: Figure): void => {
      values.set(figure.key, (values.get(figure.key) ?? new Set()).add(figure.value));
      figure.from.forEach(look);
    };
    for (const { accuracy, finish, shift } of there(plan.classes)) for (const f of [accuracy, finish, shift]) if (f !== undefined) look(f);
    expect([...values].filter(([, own]) => own.size > 1).map(([key]) => key)).toEqual([]);
    for (const key of ['plan.accuracy', 'plan.accuracy.11', 'plan.accuracy.21', 'offset.shift.11', 'accuracy.stress.11', 'gap.doubt.21'])
      expect(values.has(key) ? key : `no ${key}`).toBe(key);
  });
});
