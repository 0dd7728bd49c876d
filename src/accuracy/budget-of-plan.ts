/** The error budget of a plan: its profile, and the sizes that a job names. */

import type { Material } from '../physics/material/material.ts';
import { mainPasses } from '../plan/classes.ts';
import type { CutPlan } from '../plan/plan.ts';
import type { PlanQuestion } from '../plan/question.ts';
import { tightestPath } from '../plan/wire/deviation-of-passes.ts';
import { lastOf } from '../sequence/sequence.ts';
import { atField, type Finding } from '../text/finding.ts';
import { fixed, limit, mm, name, um } from '../text/part.ts';
import { say } from '../text/say.ts';
import { type Taken, wanted } from '../text/wanted.ts';
import { type Budget, errorBudget, isOver } from './budget.ts';
import type { BudgetQuestion, Temperatures } from './budget-question.ts';
import type { Around } from './errors-around.ts';
import { find } from './findings.ts';

/** A size that a job wants looked at, mm. */
export interface NamedSize {
  readonly name: string;
  readonly length: number;
  readonly tolerance: number;
  readonly sides: 1 | 2;
}

export interface PlanBudgetQuestion extends Pick<PlanQuestion, 'machine' | 'tolerance' | 'confidence'> {
  readonly material: Material;
  readonly temperatures?: Temperatures | undefined;
  readonly sizes: readonly NamedSize[];
  readonly around: Around;
}

export interface PlanBudgets {
  readonly profile: Budget;
  /** One for each size named, in that order; figures of the first are called 'budget.size.1.…'. */
  readonly sizes: readonly Budget[];
}

/** The plan must have passes and contours, as every plan that can be cut has. */
export const budgetsOf = (plan: CutPlan, question: PlanBudgetQuestion): PlanBudgets => {
  const { around } = question;
  const passes = mainPasses(plan);
  const common: Omit<BudgetQuestion, 'of' | 'tolerance'> = {
    passes,
    machine: question.machine,
    material: question.material,
    opened: around.opened,
    shift: plan.shift,
    temperatures: question.temperatures,
    confidence: question.confidence,
  };
  const tightest = tightestPath(around.insideRadii, plan.wire.diameter / 2 + lastOf(passes).gap.value);
  return {
    profile: errorBudget({
      ...common,
      of: { kind: 'profile', extent: around.extent, tightestPath: tightest },
      tolerance: question.tolerance,
    }),
    sizes: question.sizes.map(({ tolerance, ...size }, i) =>
      errorBudget({ ...common, of: { kind: 'size', ...size }, tolerance, key: `budget.size.${i + 1}` }),
    ),
  };
};

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
  const expected = um(Math.ceil(total.value * 10 - 1e-6) / 10, fixed(1));
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
