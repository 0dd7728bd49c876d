/** A job planned both ways, each opening to the end and all roughs first, and laid on the clock: for the advice which to run. */

import { type BestStart, bestStart } from '../../estimate/clock/best-start.ts';
import { type ClockQuestion, layOnClock } from '../../estimate/clock/clock.ts';
import { DAY } from '../../estimate/clock/moment.ts';
import { ratesOn } from '../../estimate/rates.ts';
import type { Finding } from '../../text/finding.ts';
import { printPlain } from '../../text/print/print.ts';
import { materialOf } from '../job-material.ts';
import type { JobRun } from '../job-run.ts';
import { memoryOf } from '../memory.ts';
import { clockQuestion } from '../pipeline/clock-of.ts';
import { drawingOf, estimateOf, readBack } from '../pipeline/stages.ts';
import { makeProgram } from '../pipeline/wire-choice.ts';
import { wishOf } from '../request/request.ts';
import { type RunAdvice, type RunKind, type RunOption, recommendRun } from './recommend-order.ts';

export type AdvisedRun =
  | {
      readonly kind: 'advised';
      readonly advice: RunAdvice;
      readonly options: Readonly<Record<RunKind, LaidOption>>;
      /** Best of both runs and of the starts within a day. */
      readonly start: BestStart<RunKind>;
    }
  | { readonly kind: 'cannot'; readonly reason: string };

/** With what its clock was asked, so that other starts can be tried. */
export type LaidOption = RunOption & { readonly question: ClockQuestion };
type Laid = { readonly kind: 'laid'; readonly option: LaidOption } | { readonly kind: 'cannot'; readonly reason: string };

/** Takes about as long as two answers without their proof; a shared memory saves the run that is there already. */
export const adviseRun = (asked: JobRun): AdvisedRun => {
  const run: JobRun = { ...asked, memory: asked.memory ?? memoryOf() };
  const found = materialOf(run.job.material, run.shop);
  const onDay = ratesOn(run.shop.rates, run.day);
  if (found.kind !== 'material') return { kind: 'cannot', reason: printPlain(found.finding.text) };
  if (onDay.kind !== 'rates') return { kind: 'cannot', reason: printPlain(onDay.finding.text) };
  const [attended, alone] = [laidAs(run, 'attended'), laidAs(run, 'unattended first')];
  if (attended.kind === 'cannot') return attended;
  if (alone.kind === 'cannot') return alone;
  const options = { attended: attended.option, 'unattended first': alone.option };
  const { tolerance } = run.job;
  const advice = recommendRun({ options, material: found.material, tolerance, rates: onDay.rates });
  return { kind: 'advised', advice, options, start: startOf(run.job.run, options) };
};

/** The run that the job asks for stands first: started at once it is what the proposal is held against. */
const startOf = (asked: RunKind, options: Readonly<Record<RunKind, LaidOption>>): BestStart<RunKind> => {
  const other = asked === 'attended' ? 'unattended first' : 'attended';
  const { start } = options[asked].question;
  const candidate = (name: RunKind) => ({ name, question: options[name].question });
  return bestStart([candidate(asked), candidate(other)], { from: start, to: start + DAY });
};

const laidAs = (asked: JobRun, kind: RunKind): Laid => {
  const run: JobRun = { ...asked, job: { ...asked.job, run: kind } };
  const found = materialOf(run.job.material, run.shop);
  if (found.kind !== 'material') return { kind: 'cannot', reason: printPlain(found.finding.text) };
  const wish = wishOf(drawingOf(run), run, found.material);
  if (wish.kind === 'nothing') return cannot(wish.findings);
  const made = makeProgram(run, wish.wish);
  if (made.kind === 'refused') return cannot([...made.plan.findings, ...made.findings]);
  const program = readBack(run, made.written);
  const estimated = estimateOf(run, made.plan, program);
  if (estimated.kind === 'refused') return cannot([estimated.finding]);
  const question = clockQuestion(run, made.plan, program, estimated.estimate);
  if (question === undefined) return { kind: 'cannot', reason: 'no rates hold on the day' };
  const laid = layOnClock(question);
  return laid.kind === 'clock' ? { kind: 'laid', option: { plan: made.plan, clock: laid.clock, question } } : cannot([laid.finding]);
};

const cannot = (findings: readonly Finding[]): Laid => {
  const told = findings.find((f) => f.severity === 'refusal') ?? findings[0];
  return { kind: 'cannot', reason: told === undefined ? 'it cannot be cut' : printPlain(told.text) };
};
