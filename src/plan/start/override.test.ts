/** What is set by hand is followed, or refused with the field that asked for it; what the planner would choose anyway changes nothing. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { planCut } from '../cut/plan-cut.ts';
import { disc, faultsOf, loop, planned, plate, questionFor, rectangle, slot } from '../plan.fixture.ts';
import type { CutPlan, Plan } from '../plan.ts';
import type { Override, PlanQuestion } from '../question.ts';

const plateBlock = (): PlanQuestion => questionFor(plate(), { outline: 'block' });
const free = planned(plateBlock());

const setBy = (id: string, overrides: Override): Plan => planCut({ ...plateBlock(), overrides: { [id]: overrides } });
const cutBy = (id: string, overrides: Override, more: Partial<PlanQuestion> = {}): CutPlan =>
  planned({ ...plateBlock(), overrides: { [id]: overrides }, ...more });
const contourOf = (plan: CutPlan, id: string) => there(plan.contours.find((c) => c.loop === id));
const refusals = (plan: Plan) => plan.findings.filter((f) => f.severity === 'refusal').map((f) => [f.code, f.place]);

describe('an entry set by hand', () => {
  it('is taken at the nearest place of its contour, and the plan is sound', () => {
    const plan = cutBy('L2', { entry: { x: 14, y: 10.4 } });
    const { entry, overrides, hole } = contourOf(plan, 'L2');
    expect(entry.at.x).toBeCloseTo(14, 9);
    expect(entry.at.y).toBeCloseTo(10, 9);
    expect(overrides).toEqual(['entry']);
    expect(hole.at).not.toEqual(contourOf(free, 'L2').hole.at);
    expect(faultsOf(plan, plateBlock())).toEqual([]);
    expect(sentenceOf(plan.findings.find((f) => f.code === 'set-by-hand'))).toContain('entry at (14.000, 10.000)');
  });

  it('is refused where it is not on the contour', () => {
    expect(refusals(setBy('L2', { entry: { x: 20, y: 17 } }))).toEqual([
      ['entry-off-contour', { kind: 'field', path: 'overrides.L2.entry' }],
    ]);
  });

  it('is refused where no way leads in, as in a corner', () => {
    expect(refusals(setBy('L2', { entry: { x: 10, y: 10 } }))).toEqual([['no-way-by-hand', { kind: 'field', path: 'overrides.L2.entry' }]]);
  });

  it('leaves equal openings where they are', () => {
    const pair = [loop('L1', rectangle(0, 0, 90, 50)), loop('L2', slot(10, 20, 20, 8), 1, 'L1'), loop('L3', slot(50, 20, 20, 8), 1, 'L1')];
    const question = questionFor(pair, { outline: 'block' });
    const before = planned(question);
    const after = planned({ ...question, overrides: { L3: { entry: { x: 55, y: 24 } } } });
    expect(contourOf(after, 'L2').entry).toEqual(contourOf(before, 'L2').entry);
    expect(contourOf(after, 'L3').entry.at.x).toBeCloseTo(55, 9);
    expect(faultsOf(after, question)).toEqual([]);
  });
});

describe('a hole set by hand', () => {
  it('is where the wire is threaded, with its own diameter', () => {
    const plan = cutBy('L2', { hole: { at: { x: 16, y: 18 }, diameter: 3 } });
    expect(contourOf(plan, 'L2').hole).toEqual({ at: { x: 16, y: 18 }, diameter: 3, origin: 'placed' });
    expect(faultsOf(plan, plateBlock())).toEqual([]);
  });

  it('is refused in metal that stays and too near to the contour, and told where a drill may wander into it', () => {
    expect(refusals(setBy('L2', { hole: { at: { x: 5, y: 5 } } }))).toEqual([
      ['hand-hole-unusable', { kind: 'field', path: 'overrides.L2.hole' }],
    ]);
    expect(refusals(setBy('L2', { hole: { at: { x: 20, y: 10.9 } } }))).toEqual([
      ['hand-hole-unusable', { kind: 'field', path: 'overrides.L2.hole' }],
    ]);
    expect(cutBy('L2', { hole: { at: { x: 20, y: 11.2 } } }).findings.some((f) => f.code === 'hand-hole-near')).toBe(true);
  });

  it('has nothing to do for a contour begun from the edge of the block', () => {
    const plan = planned(
      questionFor([loop('L1', rectangle(0, 0, 30, 20))], { start: { L1: 'edge' }, overrides: { L1: { hole: { at: { x: -5, y: 10 } } } } }),
    );
    expect(plan.findings.find((f) => f.code === 'by-hand-idle')?.place).toEqual({ kind: 'field', path: 'overrides.L1.hole' });
  });
});

describe('a tab set by hand', () => {
  it('is as long as it is set, for openings and parts', () => {
    expect(contourOf(cutBy('L2', { tab: 4.5 }), 'L2').tab?.length).toBe(4.5);
    const part = planned(questionFor([loop('L1', rectangle(0, 0, 30, 20))], { overrides: { L1: { tab: 5 } } }));
    expect(contourOf(part, 'L1').tab?.length).toBe(5);
    expect(faultsOf(part, questionFor([loop('L1', rectangle(0, 0, 30, 20))]))).toEqual([]);
  });

  it('is refused where it is more than half of the contour', () => {
    expect(refusals(setBy('L2', { tab: 36 }))).toEqual([['tab-by-hand', { kind: 'field', path: 'overrides.L2.tab' }]]);
  });

  it('has nothing to hold in an opening that is cut without a core', () => {
    const tiny = questionFor([loop('L1', rectangle(0, 0, 30, 20)), loop('L2', disc(15, 10, 2), 1, 'L1')], {
      outline: 'block',
      core: { L2: 'no-core' },
    });
    const plan = planned({ ...tiny, overrides: { L2: { tab: 1 } } });
    expect(plan.findings.map((f) => f.code)).toContain('by-hand-idle');
  });
});

describe('what is set by hand as the planner chose it', () => {
  it.each(['attended', 'unattended first'] as const)('gives the same steps, run %s', (run) => {
    const question: PlanQuestion = { ...plateBlock(), run };
    const plan = planned(question);
    const overrides = Object.fromEntries(
      plan.contours.map((c) => [c.loop, { entry: c.entry.at, hole: c.hole, ...(c.tab && { tab: c.tab.length }) }]),
    );
    const again = planned({
      ...question,
      overrides,
      order: plan.order,
      passes: plan.passes.length,
      offsets: plan.passes.map((p) => p.offset.value),
    });
    expect(again.steps).toEqual(plan.steps);
    expect(again.passes.map((p) => p.offset)).toEqual(plan.passes.map((p) => p.offset));
    expect(again.accuracy).toEqual(plan.accuracy);
    expect(again.contours.every((c) => c.overrides?.includes('entry'))).toBe(true);
  });

  it('of a loop that is not cut is told', () => {
    expect(cutBy('L9', { tab: 2 }).findings.find((f) => f.code === 'by-hand-of-unknown-loop')?.place).toEqual({
      kind: 'field',
      path: 'overrides.L9',
    });
  });
});

describe('passes and registers set by hand', () => {
  it('are as many as asked, and what falls short is said with what comes out', () => {
    for (const passes of [1, 2, 3, 5]) expect(planned({ ...plateBlock(), passes }).passes).toHaveLength(passes);
    const one = planned({ ...plateBlock(), passes: 1 });
    const short = one.findings.find((f) => f.code === 'passes-fall-short');
    expect(short?.severity).toBe('warning');
    expect(sentenceOf(short)).toContain(
      `Ra ${one.finish.value.toFixed(2)} µm and ±${Math.ceil(one.accuracy.value * 1e4) / 1e4} mm are expected`,
    );
    const settings = plateBlock().machine.energySettings.length;
    expect(refusals(planCut({ ...plateBlock(), passes: settings + 1 }))).toEqual([['passes-too-many', { kind: 'field', path: 'passes' }]]);
  });

  it('are cut with, told when far off, and counted in what is to be expected', () => {
    const offsets = free.passes.map((p) => Number(p.offset.value.toFixed(4)));
    const off = offsets.map((o, i) => (i === offsets.length - 1 ? o + 0.01 : o));
    const plan = planned({ ...plateBlock(), wire: free.wire.id, offsets: off });
    expect(plan.passes.map((p) => p.offset.value)).toEqual(off);
    expect(plan.shift?.value).toBeCloseTo(there(off.at(-1)) - there(free.passes.at(-1)).offset.value, 9);
    expect(plan.accuracy.value - free.accuracy.value).toBeCloseTo(there(plan.shift).value, 9);
    expect(plan.findings.find((f) => f.code === 'offset-far')?.place).toEqual({ kind: 'field', path: `offsets.${off.length - 1}` });
  });

  it('that do not fall from pass to pass are told of: the pass takes nothing', () => {
    const [rough = 0, ...skims] = free.passes.map((p) => p.offset.value);
    const plan = planCut({ ...plateBlock(), wire: free.wire.id, offsets: [rough, rough, ...skims.slice(1)] });
    const idle = plan.findings.filter((f) => f.code === 'pass-takes-nothing');
    expect(idle.map((f) => [f.severity, f.place])).toEqual([['warning', { kind: 'field', path: 'offsets.1' }]]);
  });

  it('are refused when fewer than passes or within half the wire', () => {
    expect(refusals(planCut({ ...plateBlock(), passes: 3, offsets: [0.2] }))).toEqual([
      ['offsets-not-for-passes', { kind: 'field', path: 'offsets' }],
    ]);
    const low = planCut({ ...plateBlock(), wire: free.wire.id, offsets: [0.3, 0.1] });
    expect(refusals(low)).toEqual([['offset-below-wire', { kind: 'field', path: 'offsets.1' }]]);
  });
});
