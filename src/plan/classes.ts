/** What a plan says of one contour where contours are asked different things. */
import { deviationOf, type Figure } from '../quantity/figure.ts';
import { aimedFinish, type FinishRule } from '../quantity/finish-rule.ts';
import { itemAt, type NonEmpty } from '../sequence/sequence.ts';
import type { Pass, PlannedClass, WireResult } from './plan.ts';

type Result = Pick<WireResult, 'passes' | 'classes'>;

/** None where all contours are asked the same. */
export const classOf = ({ classes }: Result, loop: string): PlannedClass | undefined => classes?.find((c) => c.loops.includes(loop));

/** The passes that run on a contour. */
export const passesOn = (plan: Result, loop: string): NonEmpty<Pass> => classOf(plan, loop)?.passes ?? mainPasses(plan);

/** The passes whose accuracy and finish are the headline: those of the first class. */
export const mainPasses = ({ passes, classes }: Result): NonEmpty<Pass> => classes?.[0].passes ?? passes;

const SLACK = 1 + 1e-9;

/** What a yes is judged by, beside the passes. */
export interface JudgedBy {
  readonly finishRule: FinishRule;
  /** mm of the tolerance that the program itself takes on some contours. */
  readonly usedOn: (loops: readonly string[]) => number;
}

/** Contours on which less is to be expected than is asked of them, with everything counted; none where all contours are asked the same. */
export const fallingShort = ({ classes }: Result, { finishRule, usedOn }: JudgedBy): readonly PlannedClass[] =>
  (classes ?? []).filter(
    ({ loops, asked, accuracy, finish }) =>
      accuracy.value + usedOn(loops) > asked.tolerance * SLACK || isRougher(finish, asked.finish, finishRule),
  );

/** Whether passes that somebody insists on leave a coarser face than the job asks of all contours alike. */
export const isTooRough = (
  { classes, finish }: Pick<WireResult, 'classes' | 'finish'>,
  asked: { readonly finish: number; readonly finishRule: FinishRule },
): boolean => classes === undefined && isRougher(finish, asked.finish, asked.finishRule);

/** Under the rule asked: a mean just below the limit leaves half of a face above it. */
const isRougher = (finish: Figure, limit: number, rule: FinishRule): boolean =>
  finish.value > aimedFinish(limit, rule, deviationOf(finish) / finish.value) * SLACK;

/** Each family of passes once, in the order of the plan. */
export const familiesIn = (plan: Result): NonEmpty<NonEmpty<Pass>> => {
  const { passes, classes } = plan;
  const own = [...new Set(classes?.map((c) => c.passes) ?? [passes])];
  return [itemAt(own, 0), ...own.slice(1)];
};
