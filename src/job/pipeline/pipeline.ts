/** The one pipeline of a job, from drawing to answer: every route goes through it, as far as it needs, and runs no stage by itself. */

import { phrases, say } from '../../text/say.ts';
import { materialOf } from '../job-material.ts';
import type { JobRun } from '../job-run.ts';
import { requestOf } from '../request/request.ts';
import { unusable } from '../request/unusable.ts';
import type { Answer } from './answer.ts';
import { answerOf, refusedAnswer } from './answer-of.ts';
import type { NotRequested, NotWritten, Programmed, Refused, Requested, Scheduled, Stopped, Timed } from './outcomes.ts';
import { scheduleOf } from './schedule.ts';
import { drawingOf, type Made } from './stages.ts';
import { timed } from './timed.ts';
import { chosenProgram } from './wire-choice.ts';

/** What the pipeline comes to, by the stage it is run up to. An answer tells itself what stands against the job. */
export interface Outcomes {
  readonly request: Requested | Stopped;
  readonly program: Programmed | Stopped;
  readonly hours: Timed | Stopped;
  readonly schedule: Scheduled | Stopped;
  readonly answer: Answer;
}

export type Stage = keyof Outcomes;

/** Stages that ran before for the same inputs are remembered where the run has a memory. */
export const runUpTo = <S extends Stage>(run: JobRun, stage: S): Outcomes[S] => STAGES[stage](run);

const toRequest = (run: JobRun): Requested | NotRequested => {
  const drawing = drawingOf(run);
  const faults = unusable(run, drawing);
  const found = materialOf(run.job.material, run.shop);
  if (faults.length > 0 || found.kind === 'unknown') return { kind: 'bad input', drawing, findings: faults };
  if (found.kind === 'non-conductor') return { kind: 'non-conductor', drawing, findings: [found.finding] };
  const { material } = found;
  const request = requestOf(drawing, run, material);
  if (request.kind === 'nothing') return { kind: 'nothing to cut', drawing, material, findings: [...found.findings, ...request.findings] };
  return { kind: 'requested', drawing, material, request: request.request, findings: [...found.findings, ...request.request.findings] };
};

const toProgram = (run: JobRun): Programmed | Stopped => {
  const asked = toRequest(run);
  return asked.kind === 'requested' ? programmed(asked, chosenProgram(run, asked.request, 'program').made) : asked;
};

const programmed = (asked: Requested, made: Made): Programmed | Refused | NotWritten =>
  made.kind === 'made' ? { kind: 'programmed', asked, plan: made.plan, written: made.written } : { ...made, asked };

const toHours = (run: JobRun): Timed | Stopped => {
  const made = toProgram(run);
  return made.kind === 'programmed' ? timed(run, made) : made;
};

const toSchedule = (run: JobRun): Scheduled | Stopped => {
  const hours = toHours(run);
  if (hours.kind !== 'timed') return hours;
  const laid = scheduleOf(run, hours);
  return laid.kind === 'laid'
    ? { kind: 'scheduled', timed: hours, question: laid.question, schedule: laid.schedule }
    : { kind: 'no schedule', timed: hours, findings: laid.findings };
};

const toAnswer = (run: JobRun): Answer => {
  const tell = run.progress ?? (() => undefined);
  tell(stages.reading, 0);
  const asked = toRequest(run);
  if (asked.kind !== 'requested') return refusedAnswer(run, asked);
  tell(stages.planning, 0.15);
  const choice = chosenProgram(run, asked.request, 'table');
  const made = programmed(asked, choice.made);
  if (made.kind !== 'programmed') return refusedAnswer(run, made, choice);
  tell(stages.hours, 0.4);
  const hours = timed(run, made, choice.program);
  tell(stages.proving, 0.45);
  return answerOf(run, hours, choice);
};

/** What is told while it runs. */
const stages = phrases('stage', {
  reading: say`reading the drawing`,
  planning: say`planning the cut`,
  hours: say`working out hours and price`,
  proving: say`proving the program`,
});

const STAGES: { readonly [S in Stage]: (run: JobRun) => Outcomes[S] } = {
  request: toRequest,
  program: toProgram,
  hours: toHours,
  schedule: toSchedule,
  answer: toAnswer,
};
