/** What was measured on a job, turned into new offset registers; and the reverse, what a change of the registers does to sizes. */

import { type Correction, correctionOf } from '../../accuracy/correction.ts';
import { sizeAfter } from '../../accuracy/registers.ts';
import type { PassTable } from '../../physics/cut/pass-table.ts';
import type { CutPlan, Kept } from '../../plan/plan.ts';
import { writtenTighter } from '../../plan/wire/register-room.ts';
import { isFilled, sideBySide } from '../../sequence/sequence.ts';
import { type ControlUnit, INCHES, MILLIMETRES } from '../../text/control-unit.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { contour, count, list, name, type Part } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { JobRun } from '../job-run.ts';
import { inDrawingUnits } from '../places-in-drawing.ts';
import { type MeasuredText, readMeasured } from '../request/read-measured.ts';
import { measuredDoubts } from './measured-doubt.ts';
import { againstOf, type Programmed, type Stopped } from './outcomes.ts';
import { runUpTo } from './pipeline.ts';

export interface CorrectQuestion {
  /** As typed: 'L2: 24.006 of 24 at 22'. */
  readonly measured: readonly string[];
  /** mm by which all registers would change. */
  readonly change?: number | undefined;
}

export type CorrectAnswer =
  | {
      readonly kind: 'corrected';
      /** None when nothing was measured. */
      readonly correction?: Correction | undefined;
      /** What would come of the change asked about; sizes at 20 °C of what was measured, mm. */
      readonly changed?:
        | { readonly change: number; readonly sizes: readonly { readonly loop: string; readonly size: number }[] }
        | undefined;
      /** Registers as the program was written for, mm by number. */
      readonly registers: ReadonlyMap<number, number>;
      /** Not where the dialect writes the wire's centre out: then the program must be written anew. */
      readonly inControl: boolean;
      /** In which the program counts: registers are told as they are typed into the control. */
      readonly unit: ControlUnit;
      /** The corrected passes as the shop file takes them, for a program written anew; none when nothing was measured or no gap is left. */
      readonly passTable?: PassTable | undefined;
    }
  | { readonly kind: 'cannot'; readonly sentence: Text }
  | { readonly kind: 'bad input'; readonly findings: readonly Finding[] };

/** The proof is not asked: the program it is about has been cut already. */
export const correctJob = (asked: JobRun, question: CorrectQuestion): CorrectAnswer => {
  const run = atReference(asked);
  const read = question.measured.map(readMeasured);
  const unreadable = read.flatMap((r) => (r.kind === 'bad' ? [r.finding] : []));
  if (unreadable.length > 0) return { kind: 'bad input', findings: unreadable };
  const made = runUpTo(run, 'program');
  if (made.kind === 'bad input') return made;
  if (made.kind !== 'programmed') return cannot(made);
  const { plan, written } = made;
  const measured = read.flatMap((r) => (r.kind === 'measured' ? [asAimed(r.measured, made)] : []));
  const unknown = measured.filter((m) => keptOf(plan, m.loop) === undefined).map((m) => unknownLoop(m, plan));
  if (unknown.length > 0) return { kind: 'bad input', findings: unknown };
  const doubts = measuredDoubts(run, plan, measured);
  if (doubts.length > 0) return { kind: 'bad input', findings: doubts };
  const { registers } = written;
  const correction = measuredCorrection(run, made, measured);
  return {
    kind: 'corrected',
    correction,
    ...(correction && passTableOf(run, plan, correction)),
    changed: question.change === undefined ? undefined : changedBy(question.change, correction),
    registers,
    inControl: run.dialect.compensation === 'control',
    unit: run.dialect.units === 'inch' ? INCHES : MILLIMETRES,
  };
};

/** What was measured of a size with a fit is held against the middle of its limits: that was aimed at. */
const asAimed = (measured: MeasuredText, { asked }: Programmed): MeasuredText => {
  const aim = asked.request.aims?.get(measured.loop);
  return aim === undefined || Math.abs(measured.expected - aim.nominal) > LAST_DIGIT ? measured : { ...measured, expected: aim.aimed };
};

/** mm: as a nominal size is typed. */
const LAST_DIGIT = 5e-4;

/** What was measured is brought to 20 °C and held against the drawing, so the plan is that of the drawing; registers know no scale. */
const atReference = (run: JobRun): JobRun => {
  const { temperature } = run.job;
  return temperature === undefined ? run : { ...run, job: { ...run.job, temperature: { ...temperature, scale: false } } };
};

const changedBy = (change: number, correction: Correction | undefined) => ({
  change,
  sizes: (correction?.sizes ?? []).map(({ deviation }) => ({ loop: deviation.measured.loop, size: sizeAfter(deviation, change) })),
});

const measuredCorrection = (
  run: JobRun,
  { asked, plan, written }: Programmed,
  measured: readonly MeasuredText[],
): Correction | undefined => {
  if (measured.length === 0) return undefined;
  const sizes = measured.map((m) => ({ ...m, kept: keptOf(plan, m.loop) as Kept }));
  const { registers } = written;
  const { expansion } = asked.material;
  const correction = correctionOf({
    plan,
    registers,
    measured: sizes,
    expansion,
    tolerance: run.job.tolerance,
    slack: writtenTighter(asked.request.question.resolution),
  });
  return { ...correction, findings: inDrawingUnits(correction.findings, asked.drawing.units) };
};

/** A hundredth of a micrometre is finer than any control takes. */
const rounded = (value: number): number => Number(value.toFixed(5));

/** No program helps against registers that leave the wire no gap: then there is no table. */
const passTableOf = (
  { job }: JobRun,
  plan: CutPlan,
  { registers, findings }: Correction,
): { readonly passTable?: PassTable | undefined } => {
  // A table of the shop is one family of passes.
  if (plan.passes.length !== registers.length || findings.some((f) => f.code === 'register-below-gap')) return {};
  const passes = sideBySide(plan.passes, registers).map(([pass, register]) => {
    const offset = rounded(register.after.value);
    const gap = rounded(offset - pass.stock.value - plan.wire.diameter / 2);
    return { offset, feed: rounded(pass.feed.value), ra: rounded(pass.ra.value), gap };
  });
  const { height } = plan;
  if (!isFilled(passes)) return {};
  return {
    passTable: { wire: plan.wire.id, material: job.material, height: { low: height, high: height }, flush: job.flush, spread: 0.1, passes },
  };
};

const keptOf = (plan: CutPlan, loop: string): Kept | undefined => plan.contours.find((c) => c.loop === loop)?.kept;

const cannot = (stopped: Stopped): CorrectAnswer => ({
  kind: 'cannot',
  sentence: sentences([words.noProgram, reasonIn(againstOf(stopped))]),
});

const NAMED = 12;

const unknownLoop = ({ loop }: MeasuredText, plan: CutPlan): Finding => {
  const named = list(plan.contours.slice(0, NAMED).map((c) => contour(c.loop)));
  const more = plan.contours.length - NAMED;
  return find(
    'measured-loop-unknown',
    say`No contour ${{ loop: name(loop) }} is cut in this job; there are ${{ loops: more > 0 ? words.more(named, more) : named }}.`,
    { place: atField('measured') },
  );
};

const reasonIn = (findings: readonly Finding[]): Text => findings.find((f) => f.severity === 'refusal')?.text ?? words.cannot;

const words = phrases('correct-job', {
  noProgram: say`There is no program to correct.`,
  cannot: say`The job cannot be cut as specified.`,
  more: (named: Part, more: number) => say`${{ named }} and ${{ more: count(more) }} more`,
});
