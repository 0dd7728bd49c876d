/** Hours and price of a program that is written. */

import type { JobRun } from '../job-run.ts';
import type { NoHours, Programmed, Timed } from './outcomes.ts';
import { estimateOf, readBack } from './stages.ts';

export const timed = (run: JobRun, made: Programmed, program = readBack(run, made.written, made.asked.request)): Timed | NoHours => {
  const estimated = estimateOf(run, made.plan, program, made.asked.material);
  return estimated.kind === 'estimate'
    ? { kind: 'timed', made, program, estimate: estimated.estimate }
    : { kind: 'no hours', made, program, findings: [estimated.finding] };
};
