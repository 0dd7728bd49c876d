/** What a roughness on a drawing limits: most values of a face, or every one; and how far below the limit the mean is planned for it. */

import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';

/** `16%`: of all values on a face 16 in 100 may exceed it. `maximum`: none may. `mean`: it is no limit, but what is aimed at. */
export type FinishRule = '16%' | 'maximum' | 'mean';

export const usualFinishRule = '16%' satisfies FinishRule;

/**
 * Standard deviations of ln Ra between the mean and the limit. 0.9945 leaves 16 % of a normal spread above it. Of the maximum rule no
 * planner can make sure: 1.6449 leaves 5 %.
 */
export const finishDistance: Readonly<Record<FinishRule, number>> = { '16%': 0.9945, maximum: 1.6449, mean: 0 };

/** The mean Ra to plan for a limit. @param spread one standard deviation of ln Ra. */
export const aimedFinish = (limit: number, rule: FinishRule, spread: number): number => limit * Math.exp(-finishDistance[rule] * spread);

export const finishRuleWords: Readonly<Record<FinishRule, Text>> = phrases('finish-rule', {
  '16%': say`16 % rule`,
  maximum: say`maximum rule`,
  mean: say`mean`,
});
