/** What would it cost if: the whole job run again under changes, ranked by what each saves; the proof stays with the job asked for. */

import type { Estimate } from '../../estimate/estimate.ts';
import { mainPasses } from '../../plan/classes.ts';
import { wholeMinor } from '../../quantity/minor-units.ts';
import type { Compared, ComparedOutcome, Comparison, PricePoint } from '../../result/comparison.ts';
import type { Job } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { memoryOf } from '../memory.ts';
import { type BadInput, reasonOf, type Timed } from '../pipeline/outcomes.ts';
import { runUpTo } from '../pipeline/pipeline.ts';
import { settledRun } from '../pipeline/settled-run.ts';
import { machineOf } from '../shop.ts';
import { type WhatIf, whatIfs } from './what-if.ts';
import { pathChanges } from './what-if-paths.ts';

/** The job as asked, and each change that can be made, the one that saves most first; those that cannot come last with their reason. */
export const compareJob = (asked: JobRun, which: 'all' | 'the likeliest' = 'all'): Comparison | BadInput => {
  const run = settledRun({ ...asked, memory: asked.memory ?? memoryOf() });
  const now = runUpTo(run, 'hours');
  if (now.kind === 'bad input') return now;
  if (now.kind !== 'timed') return { kind: 'cannot', reason: reasonOf(now) };
  const { plan } = now.made;
  const changes = [...whatIfs(run.job, run.shop, machineOf(run.shop).height), ...pathChanges(run.job, plan)].filter(
    (change) => change.job.wire !== plan.wire.id,
  );
  const rows = (which === 'all' ? changes : changes.filter((c) => c.likely)).map((change) => compared(run, change, now));
  const able = rows.filter((r) => r.kind === 'can').toSorted((a, b) => b.saves - a.saves);
  return {
    kind: 'compared',
    currency: now.estimate.currency,
    now: outcomeOf(now, false),
    rows: [...able, ...rows.filter((r) => r.kind === 'cannot')],
  };
};

const compared = (run: JobRun, change: WhatIf, now: Timed): Compared => {
  const job = PASSES_FOLLOW.has(change.kind) ? passesFree(run.job) : run.job;
  const then = runUpTo({ ...run, job: { ...job, ...change.job } }, 'hours');
  const said = { what: change.kind, sentence: change.sentence };
  if (then.kind !== 'timed') return { kind: 'cannot', ...said, reason: reasonOf(then) };
  const outcome = outcomeOf(then, change.holesDrilled === true);
  return {
    kind: 'can',
    ...said,
    outcome,
    saves: outcomeOf(now, false).each - outcome.each,
    change: Object.keys(change.job).length === 0 ? undefined : change.job,
  };
};

/** Changes for which passes and registers set by hand would be the wrong ones: the planner has its say again. */
const PASSES_FOLLOW: ReadonlySet<WhatIf['kind']> = new Set(['finish', 'tolerance', 'wire', 'stack']);

const passesFree = ({ passes: _, offsets: __, ...job }: Job): Job => job;

/** Price and hours of one piece: the sheets of a stack share the run. Holes that the customer brings cost nothing. */
const outcomeOf = ({ made: { plan }, estimate }: Timed, drilled: boolean): ComparedOutcome => {
  const markup = markupOf(estimate);
  const sheets = estimate.stack ?? 1;
  const drilling = drilled ? (estimate.lines.find((l) => l.cost.key === 'price.drilling')?.cost.value ?? 0) * markup : 0;
  return {
    each: wholeMinor(estimate.each.value - drilling / sheets),
    minutes: estimate.total.value / sheets,
    unattended: estimate.unattended.value / sheets,
    wire: plan.wire.name,
    passes: mainPasses(plan).length,
    accuracy: plan.accuracy,
    finish: plan.finish,
  };
};

/** What the price is above the cost, as a factor. */
const markupOf = (estimate: Estimate): number => 1 + (estimate.each.from.find((f) => f.key === 'shop.markup')?.value ?? 0);

const FINISHES = [3.2, 2.4, 1.6, 1.2, 0.8, 0.6, 0.4, 0.3, 0.2, 0.15, 0.1] as const;

/** Price and passes over the finish asked for, from coarse to fine, as far as it can be reached, with the finest finish of each number of passes. */
export const priceCurve = (asked: JobRun): readonly PricePoint[] => {
  const run = settledRun({ ...asked, memory: asked.memory ?? memoryOf() });
  const points = FINISHES.flatMap((finish) => pointAt(run, finish));
  return points.flatMap((point, i) => {
    const finer = points[i + 1];
    return finer === undefined || finer.passes === point.passes ? [point] : [point, ...lastOfStep(run, point, finer)];
  });
};

const pointAt = (run: JobRun, finish: number): readonly PricePoint[] => {
  const point = runUpTo({ ...run, job: { ...passesFree(run.job), finish } }, 'hours');
  if (point.kind !== 'timed') return [];
  const { plan } = point.made;
  return [{ finish, each: point.estimate.each.value, passes: mainPasses(plan).length, reached: plan.finish.value }];
};

/** Halves the way between two finishes until they lie within a hundredth of each other; the coarser of them is the last of its step. */
const lastOfStep = (run: JobRun, coarse: PricePoint, fine: PricePoint): readonly PricePoint[] => {
  let [last, next] = [coarse, fine];
  while (last.finish > 1.01 * next.finish) {
    const finish = Number(Math.sqrt(last.finish * next.finish).toPrecision(3));
    const [point] = finish < last.finish && finish > next.finish ? pointAt(run, finish) : [];
    if (point === undefined) break;
    if (point.passes === coarse.passes) last = point;
    else next = point;
  }
  const step: readonly PricePoint[] = last === coarse ? [] : [{ ...last, lastOfStep: true }];
  // Where the fixed finishes jump over a number of passes, its own step lies between.
  return next === fine || next.passes === fine.passes ? step : [...step, next, ...lastOfStep(run, next, fine)];
};
