/** What the pipeline comes to at each stage: what the stage gave on top of those before it, or why the run stopped short of it. */

import type { Drawing } from '../../drawing/drawing.ts';
import type { Estimate } from '../../estimate/estimate.ts';
import type { Schedule, ScheduleQuestion } from '../../estimate/schedule/schedule.ts';
import type { ReadProgram } from '../../nc/read/program.ts';
import type { WrittenProgram } from '../../nc/write/write.ts';
import type { Material } from '../../physics/material/material.ts';
import type { CutPlan, RefusedPlan } from '../../plan/plan.ts';
import type { Finding } from '../../text/finding.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { CutRequest } from '../request/request.ts';

/** The drawing is read, the material known, and it is settled what is to be cut. */
export interface Requested {
  readonly kind: 'requested';
  readonly drawing: Drawing;
  readonly material: Material;
  readonly request: CutRequest;
  readonly findings: readonly Finding[];
}

/** A program that could be written. */
export type Written = Extract<WrittenProgram, { kind: 'written' }>;

/** The cut is planned, with the wire that makes the whole job cheapest where none is named, and written as a program. */
export interface Programmed {
  readonly kind: 'programmed';
  readonly asked: Requested;
  readonly plan: CutPlan;
  readonly written: Written;
}

/** The program is read back as its control would read it, and its hours and price are known. */
export interface Timed {
  readonly kind: 'timed';
  readonly made: Programmed;
  readonly program: ReadProgram;
  readonly estimate: Estimate;
}

/** The run is scheduled of the shop; with what the clock was asked, so that other starts can be tried. */
export interface Scheduled {
  readonly kind: 'scheduled';
  readonly timed: Timed;
  readonly question: ScheduleQuestion;
  readonly schedule: Schedule;
}

/** The inputs cannot be used: no drawing, or names that nothing goes by. The drawing can be shown all the same. */
export interface BadInput {
  readonly kind: 'bad input';
  readonly drawing: Drawing;
  readonly findings: readonly Finding[];
}

/** Nobody knows the hours: no rates hold on the day. The program can be proven all the same. */
export interface NoHours {
  readonly kind: 'no hours';
  readonly made: Programmed;
  readonly program: ReadProgram;
  readonly findings: readonly Finding[];
}

/** Why a run stopped; the findings say what would have to change. */
export type Stopped = NotRequested | Refused | NotWritten | NoHours | NoSchedule;

/** Of inputs, material and drawing alone. */
export type NotRequested =
  | BadInput
  /** The wire cannot cut this at all, whatever the drawing: a non-conductor. */
  | { readonly kind: 'non-conductor'; readonly drawing: Drawing; readonly findings: readonly Finding[] }
  | { readonly kind: 'nothing to cut'; readonly drawing: Drawing; readonly material: Material; readonly findings: readonly Finding[] };

/** It cannot be cut as asked. */
export interface Refused {
  readonly kind: 'refused';
  readonly asked: Requested;
  readonly plan: RefusedPlan;
}

/** The dialect cannot spell what was planned; `findings` are those of the writer. */
export interface NotWritten {
  readonly kind: 'not written';
  readonly asked: Requested;
  readonly plan: CutPlan;
  readonly findings: readonly Finding[];
}

/** The shop has no shift to start in. */
export interface NoSchedule {
  readonly kind: 'no schedule';
  readonly timed: Timed;
  readonly findings: readonly Finding[];
}

/** What stands against the job where it stopped. */
export const againstOf = (stopped: Stopped): readonly Finding[] => {
  if (stopped.kind === 'refused') return stopped.plan.findings;
  return stopped.kind === 'not written' ? [...stopped.plan.findings, ...stopped.findings] : stopped.findings;
};

/** The gravest of it. */
export const reasonOf = (stopped: Stopped): Text => {
  const findings = againstOf(stopped);
  return (findings.find((f) => f.severity === 'refusal') ?? findings[0])?.text ?? say('stopped')`It cannot be cut.`;
};
