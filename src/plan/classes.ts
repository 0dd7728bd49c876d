/** What a plan says of one contour where contours are asked different things. */
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

/** Contours on which less comes out than is asked of them, by passes alone; none where all contours are asked the same. */
export const fallingShort = ({ classes }: Result): readonly PlannedClass[] =>
  (classes ?? []).filter(({ asked, accuracy, finish }) => accuracy.value > asked.tolerance * SLACK || finish.value > asked.finish * SLACK);

/** Each family of passes once, in the order of the plan. */
export const familiesIn = (plan: Result): NonEmpty<NonEmpty<Pass>> => {
  const { passes, classes } = plan;
  const own = [...new Set(classes?.map((c) => c.passes) ?? [passes])];
  return [itemAt(own, 0), ...own.slice(1)];
};
