/** The error budget of a plan: its profile, and the sizes that a job names. */

import { areaOf, boundsOfChain } from '../geometry/area.ts';
import type { Material } from '../physics/material/material.ts';
import { insideArcs } from '../plan/inside-arcs.ts';
import type { ContourPlan, CutPlan } from '../plan/plan.ts';
import type { PlanQuestion } from '../plan/question.ts';
import { REGISTER_ROOM } from '../plan/wire/register-room.ts';
import { lastOf } from '../sequence/sequence.ts';
import { atField, type Finding } from '../text/finding.ts';
import { fixed, limit, mm, name, um } from '../text/part.ts';
import { say } from '../text/say.ts';
import { type Taken, wanted } from '../text/wanted.ts';
import { type Budget, errorBudget, isOver } from './budget.ts';
import type { BudgetQuestion, Temperatures, Toleranced } from './budget-question.ts';
import { find } from './findings.ts';

/** A size that a job wants looked at, mm. */
export interface NamedSize {
  readonly name: string;
  readonly length: number;
  readonly tolerance: number;
  readonly sides: 1 | 2;
}

export interface PlanBudgetQuestion extends Pick<PlanQuestion, 'machine' | 'factors' | 'tolerance'> {
  readonly material: Material;
  readonly temperatures?: Temperatures | undefined;
  readonly sizes: readonly NamedSize[];
}

export interface PlanBudgets {
  readonly profile: Budget;
  /** One for each size named, in that order; figures of the first are called 'budget.size.1.…'. */
  readonly sizes: readonly Budget[];
}

/** The plan must have passes and contours, as every plan that can be cut has. */
export const budgetsOf = (plan: CutPlan, question: PlanBudgetQuestion): PlanBudgets => {
  const common: Omit<BudgetQuestion, 'of' | 'tolerance'> = {
    passes: plan.passes,
    machine: question.machine,
    material: question.material,
    factors: question.factors,
    opened: openedShare(plan),
    shift: plan.shift,
    temperatures: question.temperatures,
  };
  return {
    profile: errorBudget({ ...common, of: profileOf(plan), tolerance: question.tolerance }),
    sizes: question.sizes.map(({ tolerance, ...size }, i) =>
      errorBudget({ ...common, of: { kind: 'size', ...size }, tolerance, key: `budget.size.${i + 1}` }),
    ),
  };
};

/** mm: how far the profile is to be expected from the drawing, with everything counted where a budget is drawn up; never less than the passes leave. */
export const expectedWithin = (plan: CutPlan, budgets: PlanBudgets | undefined): number =>
  Math.max(plan.accuracy.value, (budgets?.profile.total.value ?? 0) / 1000);

/**
 * The passes alone hold the tolerance, or there would be no plan: this says where the rest of the error takes it away again. Limits of a
 * size are always asked for, the tolerance of the profile may be `assumed`.
 */
export const budgetFindings = ({ profile, sizes }: PlanBudgets, assumed = false): readonly Finding[] =>
  [profile, ...sizes].flatMap((budget) => {
    return isOver(budget) ? [overTolerance(budget, assumed)] : [];
  });

const ONLY_ASSUMED: Taken = { assumed: ['tolerance'] };

const overTolerance = ({ of, total, tolerance, biggest }: Budget, assumed: boolean): Finding => {
  const expected = um(total.value, fixed(1));
  const asked = limit(tolerance * 1000, 'µm', fixed(1));
  if (of.kind === 'profile')
    return find(
      'budget-over-tolerance/profile',
      say`All errors together: ${{ expected }} expected on the profile, ${{ asked: wanted(assumed ? ONLY_ASSUMED : {}, 'tolerance', asked) }}. ${{ biggest: biggest.sentence }}`,
      { place: atField('tolerance') },
    );
  return find(
    'budget-over-tolerance/size',
    say`All errors together: ${{ expected }} expected on ${{ size: name(of.name) }}, ${{ length: mm(of.length, { as: 'given' }) }}; ${{ asked }} required. ${{ biggest: biggest.sentence }}`,
    { place: atField('sizes') },
  );
};

const profileOf = (plan: CutPlan): Toleranced => {
  const tightest = tightestPath(plan);
  const extent = plan.contours.reduce((most, c) => Math.max(most, extentOf(c)), 0);
  return { kind: 'profile', extent, tightestPath: Number.isFinite(tightest) ? tightest : undefined };
};

const extentOf = ({ comesOut }: ContourPlan): number =>
  comesOut.reduce((most, c) => {
    const { minX, minY, maxX, maxY } = boundsOfChain(c);
    return Math.max(most, maxX - minX, maxY - minY);
  }, 0);

/**
 * Wire paths tighter than this (mm) go round corners that the wire itself leaves round, with room for a larger register: those are told
 * as corners and are no part of the profile.
 */
const OWN_ROUND = REGISTER_ROOM + 0.002;

const tightestPath = (plan: CutPlan): number => {
  const offset = lastOf(plan.passes).offset.value;
  let least = Number.POSITIVE_INFINITY;
  for (const { comesOut, kept } of plan.contours)
    for (const c of comesOut)
      for (const { radius } of insideArcs(c, kept)) if (radius - offset > OWN_ROUND && radius - offset < least) least = radius - offset;
  return least;
};

/** What is cut loose of the block; a part cut out of it leaves the rest loose about as much. */
const openedShare = (plan: CutPlan): number => {
  const block = Math.abs(areaOf(plan.block));
  const loose = plan.contours.reduce((sum, c) => sum + c.piece.area, 0);
  return block > 0 ? Math.min(1, loose / block) : 0;
};
