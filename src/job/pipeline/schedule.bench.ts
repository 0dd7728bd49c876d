/** What laying a job on the schedule costs, and what the advice costs which run to take. */
import type { BenchRow } from '../../../tools/bench-row.ts';
import { jobRun } from '../../cli/inputs.ts';
import type { JobRun } from '../job-run.ts';
import { adviseRun } from '../what-if/both-orders.ts';
import { runUpTo } from './pipeline.ts';
import { scheduleFindings, scheduleOf } from './schedule.ts';

const timed = (run: () => void, times: number): number => {
  const all = Array.from({ length: times }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return all.toSorted((a, b) => a - b)[times >> 1] as number;
};

export const rows = async (): Promise<readonly BenchRow[]> => {
  const run: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
  const lay = layingOf(run);
  timed(lay, 5);
  return [
    {
      name: 'laying the die plate on the schedule, with the search for a better start',
      ours: timed(lay, 15),
      unit: 'ms',
      peers: [{ name: 'the budget', value: 5, atLeast: 1 }],
    },
    {
      name: 'advice which run to take for the die plate, both planned anew',
      ours: timed(() => void adviseRun(run), 5),
      unit: 'ms',
      peers: [
        {
          name: 'an answer with its proof and one without',
          value: timed(() => void runUpTo(run, 'answer'), 5) + timed(() => void runUpTo(run, 'hours'), 5),
          atLeast: 1,
        },
      ],
    },
  ];
};

/** Only the clock: drawing, plan, program and hours are made before. */
const layingOf = (run: JobRun): (() => void) => {
  const hours = runUpTo(run, 'hours');
  if (hours.kind !== 'timed') throw new Error(hours.kind);
  return () => void scheduleFindings(run, scheduleOf(run, hours));
};
