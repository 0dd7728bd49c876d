/** An order set by hand is followed as far as nothing is cut in loose metal. */

import { describe, expect, it } from 'vitest';
import { polyline } from '../../geometry/contour.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { planCut } from '../cut/plan-cut.ts';
import { faultsOf, loop, planned, plate, questionFor, rectangle } from '../plan.fixture.ts';
import type { CutPlan } from '../plan.ts';
import type { PlanQuestion } from '../question.ts';

/** Two parts side by side, each with an opening. */
const twoParts = (): PlanQuestion =>
  questionFor([
    loop('L1', rectangle(0, 0, 40, 40)),
    loop('L2', rectangle(10, 10, 20, 20), 1, 'L1'),
    loop('L3', rectangle(80, 0, 40, 40)),
    loop('L4', rectangle(90, 10, 20, 20), 1, 'L3'),
  ]);

const ordered = (order: readonly string[], more: Partial<PlanQuestion> = {}): CutPlan => planned({ ...twoParts(), order, ...more });

describe('an order set by hand', () => {
  it('is that in which contours are first cut', () => {
    const question = questionFor(plate(), { outline: 'block', order: ['L5', 'L2', 'L4', 'L3'] });
    const plan = planned(question);
    expect(plan.order).toEqual(['L5', 'L2', 'L4', 'L3']);
    expect(faultsOf(plan, question)).toEqual([]);
  });

  it('lets the planner go on from where it ends', () => {
    const plan = planned(questionFor(plate(), { outline: 'block', order: ['L5'] }));
    expect(plan.order[0]).toBe('L5');
    expect(plan.order.toSorted()).toEqual(['L2', 'L3', 'L4', 'L5']);
  });

  it('may finish one part before the next is begun', () => {
    const plan = ordered(['L4', 'L3', 'L2', 'L1']);
    expect(plan.order).toEqual(['L4', 'L3', 'L2', 'L1']);
    expect(faultsOf(plan, twoParts())).toEqual([]);
  });

  it('pulls what lies inside before what is named, and says so', () => {
    const plan = ordered(['L3']);
    expect(plan.order.slice(0, 2)).toEqual(['L4', 'L3']);
    expect(sentenceOf(plan.findings.find((f) => f.code === 'order-pulled-forward'))).toContain('L4, not named in the order, comes before');
  });

  it('is refused where an opening would come after its part', () => {
    const plan = planCut({ ...twoParts(), order: ['L3', 'L2', 'L4'] });
    expect(plan.kind).toBe('refused');
    const refusal = plan.findings.find((f) => f.code === 'order-impossible');
    expect(refusal?.place).toEqual({ kind: 'field', path: 'order.2' });
    expect(sentenceOf(refusal)).toContain('L4 lies inside L3');
  });

  it('holds within each depth alone at night, and says so', () => {
    const plan = ordered(['L4', 'L3', 'L2', 'L1'], { run: 'unattended first' });
    expect(plan.order).toEqual(['L4', 'L2', 'L3', 'L1']);
    expect(sentenceOf(plan.findings.find((f) => f.code === 'order-pulled-forward'))).toContain('L2 is started before L3');
  });

  it('tells names that nothing goes by', () => {
    expect(ordered(['L9', 'L4']).findings.find((f) => f.code === 'order-of-unknown')?.place).toEqual({ kind: 'field', path: 'order.0' });
  });

  it('puts an open line that may part the block behind every contour', () => {
    const line = {
      id: 'C1',
      kept: 'left' as const,
      path: polyline([
        { x: 60, y: -10 },
        { x: 60, y: 50 },
      ]),
    };
    expect(planCut({ ...twoParts(), order: ['C1', 'L2'], open: [line] }).findings.map((f) => f.code)).toContain('order-impossible');
    expect(ordered(['L4'], { open: [line] }).order.at(-1)).toBe('C1');
  });
});
