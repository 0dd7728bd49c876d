/** All figures of an answer by their keys, leaves included, so that each can be asked why. */

import { passesOn } from '../../plan/classes.ts';
import { cornerFigures } from '../../plan/lay/corner-lag.ts';
import type { CutPlan, NearestWire } from '../../plan/plan.ts';
import type { Figure } from '../../quantity/figure.ts';
import { cutOf, hoursOf, type JobFacts, plannedOf } from '../../result/facts.ts';
import { wireFigures } from './wire-table.ts';

export const figuresOf = (facts: JobFacts): ReadonlyMap<string, Figure> => {
  const planned = plannedOf(facts);
  const { material } = facts.asked;
  const beside = [cutOf(facts)?.budgets, planned?.otherWays];
  return new Map([
    ...figuresIn(...planRoots(planned?.plan), hoursOf(facts)?.estimate, material, ...beside, facts.shape?.sizes),
    ...wireFigures(planned?.wires),
  ]);
};

type Planned = NonNullable<ReturnType<typeof plannedOf>>['plan'];

const planRoots = (plan: Planned | undefined): readonly unknown[] => {
  if (plan === undefined) return [];
  return plan.kind === 'cut' ? cutRoots(plan) : nearestRoots(plan.nearest);
};

/** Where a plan keeps its figures: paths and steps hold none, and there are very many of them. */
const cutRoots = ({ passes, accuracy, finish, classes, contours, openCuts = [] }: CutPlan): readonly unknown[] => [
  passes,
  accuracy,
  finish,
  classes?.map((c) => [c.accuracy, c.finish]),
  contours.map((c) => c.piece),
  openCuts.map((o) => o.piece),
  contours.slice(0, MOST_CORNERS).map((c) => cornerFigures(c, passesOn({ passes, classes }, c.loop))),
];

const nearestRoots = (nearest: NearestWire | undefined): readonly unknown[] =>
  nearest === undefined ? [] : [nearest.passes, nearest.accuracy, nearest.finish];

/** Corner errors can be asked why for as many contours; of thousands of openings nobody asks. */
const MOST_CORNERS = 200;

/** Walks results of any shape for figures, and each figure for what it was made of. The first of a key wins. */
const figuresIn = (...results: readonly unknown[]): ReadonlyMap<string, Figure> => {
  const found = new Map<string, Figure>();
  const seen = new Set<object>();
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || seen.has(value)) return;
    seen.add(value);
    if (isFigure(value)) {
      if (!found.has(value.key)) found.set(value.key, value);
      value.from.forEach(visit);
    } else if (Array.isArray(value)) value.forEach(visit);
    else if (!(value instanceof Map)) Object.values(value).forEach(visit);
  };
  results.forEach(visit);
  return found;
};

const isFigure = (value: object): value is Figure => 'key' in value && 'shares' in value && 'basis' in value;
