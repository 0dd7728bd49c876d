/** A job planned both ways, each opening to the end and all roughs first, and scheduled: for the advice which to run. */

import { ratesOn } from '../../estimate/rates.ts';
import { type BestStart, bestStart } from '../../estimate/schedule/best-start.ts';
import { DAY } from '../../text/moment.ts';
import type { Text } from '../../text/text.ts';
import type { JobRun } from '../job-run.ts';
import { memoryOf } from '../memory.ts';
import { type BadInput, reasonOf, type Scheduled, type Stopped } from '../pipeline/outcomes.ts';
import { runUpTo } from '../pipeline/pipeline.ts';
import { settledRun } from '../pipeline/settled-run.ts';
import { type RunAdvice, type RunKind, type RunOption, recommendRun } from './recommend-order.ts';

export type AdvisedRun =
  | {
      readonly kind: 'advised';
      readonly advice: RunAdvice;
      readonly options: Readonly<Record<RunKind, Scheduled>>;
      /** Best of both runs and of the starts within a day. */
      readonly start: BestStart<RunKind>;
    }
  | { readonly kind: 'cannot'; readonly reason: Text }
  | BadInput;

/** Takes about as long as an answer with its proof and one without; a shared memory saves what is there already. */
export const adviseRun = (asked: JobRun): AdvisedRun => {
  const run = settledRun({ ...asked, memory: asked.memory ?? memoryOf() });
  const [attended, alone] = [scheduledAs(run, 'attended'), scheduledAs(run, 'unattended first')];
  if (attended.kind !== 'scheduled') return notAdvised(attended);
  if (alone.kind !== 'scheduled') return notAdvised(alone);
  const onDay = ratesOn(run.shop.rates, run.day);
  if (onDay.kind !== 'rates') return { kind: 'cannot', reason: onDay.finding.text };
  const options = { attended, 'unattended first': alone };
  const { tolerance } = run.job;
  const { material } = attended.timed.made.asked;
  const advice = recommendRun({
    options: { attended: optionOf(attended), 'unattended first': optionOf(alone) },
    material,
    tolerance,
    rates: onDay.rates,
  });
  return { kind: 'advised', advice, options, start: startOf(run.job.run, options) };
};

const notAdvised = (stopped: Stopped): AdvisedRun =>
  stopped.kind === 'bad input' ? stopped : { kind: 'cannot', reason: reasonOf(stopped) };

const optionOf = ({ timed, schedule }: Scheduled): RunOption => ({ plan: timed.made.plan, schedule });

/** The run that the job asks for stands first: started at once it is what the proposal is held against. */
const startOf = (asked: RunKind, options: Readonly<Record<RunKind, Scheduled>>): BestStart<RunKind> => {
  const other = asked === 'attended' ? 'unattended first' : 'attended';
  const { start } = options[asked].question;
  const candidate = (name: RunKind) => ({ name, question: options[name].question });
  return bestStart([candidate(asked), candidate(other)], { from: start, to: start + DAY });
};

const scheduledAs = (run: JobRun, kind: RunKind): Scheduled | Stopped => runUpTo({ ...run, job: { ...run.job, run: kind } }, 'schedule');
