/** What an answer says beyond the plan itself: where its error comes from, and whether another process would do. */

import { budgetFindings, budgetsOf } from '../../accuracy/budget-of-plan.ts';
import { chilled } from '../../accuracy/budget-question.ts';
import type { Around } from '../../accuracy/errors-around.ts';
import type { Estimate } from '../../estimate/estimate.ts';
import { perimeterOf } from '../../geometry/area.ts';
import type { Material } from '../../physics/material/material.ts';
import { otherFindings, otherProcesses } from '../../physics/other-process/other-processes.ts';
import type { OtherQuestion, WireOwn } from '../../physics/other-process/other-question.ts';
import { mainPasses } from '../../plan/classes.ts';
import { smallestInsideRadius } from '../../plan/inside-arcs.ts';
import type { CutPlan } from '../../plan/plan.ts';
import type { Wanted } from '../../proof/proof.ts';
import type { CutFacts, RefusedFacts } from '../../result/outcome-facts.ts';
import { lastOf } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import type { Job } from '../job.ts';
import { takenOf } from '../request/taken.ts';
import type { Shop } from '../shop.ts';

export interface BesideAsked {
  readonly job: Job;
  /** Top-level keys of the job that somebody gave. */
  readonly said: ReadonlySet<string>;
  readonly machine: Shop['machines'][number];
  readonly material: Material;
  readonly around: Around;
  /** Loops that are cut; of open lines alone nothing is said. */
  readonly wanted: readonly Wanted[];
}

export interface Beside<Facts> {
  readonly facts: Facts;
  readonly findings: readonly Finding[];
}

/** Beside what can be cut: its error budgets, and the other processes against what the wire does. */
export const besideCut = (asked: BesideAsked, plan: CutPlan, estimate?: Estimate): Beside<Pick<CutFacts, 'budgets' | 'otherWays'>> => {
  const { job, said, machine, material, wanted, around } = asked;
  if (wanted.length === 0) return { facts: {}, findings: [] };
  const otherWays = otherProcesses(otherQuestion(asked, estimate && wireOwn(plan, estimate)));
  const budgets = budgetsOf(plan, {
    machine,
    material,
    tolerance: job.tolerance,
    temperatures: { ...chilled, ...job.temperature },
    sizes: job.sizes ?? [],
    confidence: job.confidence,
    around,
  });
  return { facts: { budgets, otherWays }, findings: [...budgetFindings(budgets, !said.has('tolerance')), ...otherFindings(otherWays)] };
};

/** Beside what the wire cannot cut as asked there are only the other processes. */
export const besideRefused = (asked: BesideAsked): Beside<Pick<RefusedFacts, 'otherWays'>> => {
  if (asked.wanted.length === 0) return { facts: {}, findings: [] };
  const otherWays = otherProcesses(otherQuestion(asked, undefined));
  return { facts: { otherWays }, findings: otherFindings(otherWays) };
};

const otherQuestion = (asked: BesideAsked, own: WireOwn | undefined): OtherQuestion => {
  const { job, material, wanted } = asked;
  const smallest = wanted.reduce((least, w) => Math.min(least, smallestInsideRadius(w.contour, w.kept)), Number.POSITIVE_INFINITY);
  return {
    assumed: takenOf(asked),
    thickness: job.height,
    tolerance: job.tolerance,
    finish: job.finish,
    material,
    length: wanted.reduce((sum, w) => sum + perimeterOf(w.contour), 0),
    contours: wanted.length,
    // A corner drawn sharper may come out with the radius that the job accepts.
    insideRadius: Math.max(smallest, job.insideCorner),
    wire: own,
  };
};

const wireOwn = (plan: CutPlan, estimate: Estimate): WireOwn => ({
  minutes: estimate.total.value / (estimate.stack ?? 1),
  deviation: plan.accuracy.value,
  ra: plan.finish.value,
  formError: lastOf(mainPasses(plan)).formError.value,
});
