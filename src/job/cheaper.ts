/** What would make the job cheaper: the job run again under small changes, those that save something first. */
import type { Cheaper } from '../documents/quotation.ts';
import { readDrawing } from '../drawing/read.ts';
import type { Estimate } from '../estimate/estimate.ts';
import { findMaterial } from '../physics/find-material.ts';
import { printMoney } from '../quantity/money.ts';
import type { Job } from './job.ts';
import { estimateOf, type JobRun, makeProgram } from './run.ts';
import { wishOf } from './wish.ts';

interface Change {
  readonly sentence: string;
  readonly job: Partial<Job>;
}

/** Savings below this share of the price are not worth a sentence. */
const WORTH_SAYING = 0.02;

const changes = (job: Job): readonly Change[] => [
  { sentence: `A finish of Ra ${job.finish * 2} µm instead of ${job.finish} µm`, job: { finish: job.finish * 2 } },
  { sentence: `A tolerance of ±${job.tolerance * 2} mm instead of ±${job.tolerance} mm`, job: { tolerance: job.tolerance * 2 } },
  {
    sentence: `A finish of Ra ${job.finish * 2} µm and a tolerance of ±${job.tolerance * 2} mm together`,
    job: { finish: job.finish * 2, tolerance: job.tolerance * 2 },
  },
  {
    sentence: `Inside corners with a radius of ${Number((job.insideCorner + 0.1).toFixed(3))} mm allowed`,
    job: { insideCorner: Number((job.insideCorner + 0.1).toFixed(3)) },
  },
];

/**
 * Runs plan, program and estimate again for each change; the proof is left to the job that is really asked for. Of changes that
 * save the same the first, which asks the least, is enough.
 */
export const cheaperWays = (run: JobRun, now: Estimate): readonly Cheaper[] =>
  changes(run.job)
    .flatMap((change) => {
      const estimate = estimateUnder({ ...run, job: { ...run.job, ...change.job } });
      const saves = estimate === undefined ? 0 : now.each.value - estimate.each.value;
      return saves < WORTH_SAYING * now.each.value ? [] : [{ sentence: change.sentence, saves, printed: printMoney(saves, now.currency) }];
    })
    .filter((way, i, all) => all.findIndex((other) => Math.abs(other.saves - way.saves) < 1) === i)
    .toSorted((a, b) => b.saves - a.saves);

/** Everything but the proof: what the job would take and cost under these inputs, or nothing where it cannot be cut. */
export const estimateUnder = (run: JobRun): Estimate | undefined => {
  const drawing = readDrawing(run.drawing, run.drawingName, {
    join: run.job.join,
    ...(run.job.units === undefined ? {} : { units: run.job.units }),
  });
  const found = findMaterial(run.job.material);
  if (found.kind !== 'material') return undefined;
  const wish = wishOf(drawing, run, found.material);
  if (wish.kind !== 'wish') return undefined;
  const made = makeProgram(run, wish.wish);
  if (made.kind !== 'made') return undefined;
  const estimated = estimateOf(run, made.plan, made.written, run.day);
  return estimated.kind === 'estimate' ? estimated.estimate : undefined;
};
