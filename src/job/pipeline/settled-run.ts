/** A job as its answer settled it: where the proof refused the first plan, what it is held against is begun elsewhere too. */
import type { JobRun } from '../job-run.ts';
import { runUpTo } from './pipeline.ts';
import { settledPlan } from './plan-again.ts';

/** The same run where the first plan is proven, or none is. The proof is remembered where the run has a memory. */
export const settledRun = (run: JobRun): JobRun => {
  const hours = runUpTo(run, 'hours');
  if (hours.kind !== 'timed') return run;
  const { refused } = settledPlan(run, hours);
  return refused === undefined ? run : { ...run, refused };
};
