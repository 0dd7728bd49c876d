/** What an answer says beyond the plan itself: where its error comes from, and whether another process would do. */

import { budgetFindings, budgetsOf } from '../../accuracy/budget-of-plan.ts';
import { chilled } from '../../accuracy/budget-question.ts';
import type { Estimate } from '../../estimate/estimate.ts';
import { perimeterOf } from '../../geometry/area.ts';
import type { Material } from '../../physics/material/material.ts';
import { otherFindings, otherProcesses } from '../../physics/other-process/other-processes.ts';
import type { WireOwn } from '../../physics/other-process/other-question.ts';
import { smallestInsideRadius } from '../../plan/inside-arcs.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wanted } from '../../proof/proof.ts';
import type { JobFacts } from '../../result/facts.ts';
import type { Finding } from '../../text/finding.ts';
import type { Job } from '../job.ts';
import type { Shop } from '../shop.ts';

export interface WiderQuestion {
  readonly job: Job;
  readonly machine: Shop['machines'][number];
  readonly material: Material;
  readonly plan: Plan;
  readonly estimate?: Estimate;
  /** Loops that are cut. */
  readonly wanted: readonly Wanted[];
}

export interface Wider {
  readonly facts: Pick<JobFacts, 'budgets' | 'otherWays'>;
  readonly findings: readonly Finding[];
}

export const nothingWider: Wider = { facts: {}, findings: [] };

export const widerFacts = (question: WiderQuestion): Wider => {
  const { job, machine, material, plan, wanted } = question;
  if (wanted.length === 0) return nothingWider;
  const otherWays = otherProcesses(otherQuestion(question));
  if (plan.kind !== 'cut') return { facts: { otherWays }, findings: otherFindings(otherWays) };
  const budgets = budgetsOf(plan, {
    machine,
    material,
    tolerance: job.tolerance,
    temperatures: { ...chilled, ...job.temperature },
    sizes: job.sizes ?? [],
  });
  return { facts: { budgets, otherWays }, findings: [...budgetFindings(budgets), ...otherFindings(otherWays)] };
};

const otherQuestion = ({ job, material, plan, estimate, wanted }: WiderQuestion) => {
  const own = wireOwn(plan, estimate);
  const smallest = wanted.reduce((least, w) => Math.min(least, smallestInsideRadius(w.contour, w.kept)), Number.POSITIVE_INFINITY);
  return {
    thickness: job.height,
    tolerance: job.tolerance,
    finish: job.finish,
    material,
    length: wanted.reduce((sum, w) => sum + perimeterOf(w.contour), 0),
    contours: wanted.length,
    // A corner drawn sharper may come out with the radius that the job accepts.
    insideRadius: Math.max(smallest, job.insideCorner),
    ...(own === undefined ? {} : { wire: own }),
  };
};

const wireOwn = (plan: Plan, estimate: Estimate | undefined): WireOwn | undefined => {
  const last = plan.passes.at(-1);
  if (plan.kind !== 'cut' || estimate === undefined || last === undefined) return undefined;
  return {
    minutes: estimate.total.value / (estimate.stack ?? 1),
    deviation: plan.accuracy.value,
    ra: plan.finish.value,
    formError: last.formError.value,
  };
};
