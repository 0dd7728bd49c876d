/** The stages of a job that its what-ifs run as well: drawing, program, reading back, hours and price. */
import type { Drawing } from '../../drawing/drawing.ts';
import { readDrawing } from '../../drawing/read/read-drawing.ts';
import { type Estimated, estimateJob } from '../../estimate/estimate.ts';
import type { Point } from '../../geometry/segment.ts';
import { placedProgram } from '../../nc/read/placed-program.ts';
import type { ReadProgram } from '../../nc/read/program.ts';
import { readProgram } from '../../nc/read/read.ts';
import { type WrittenProgram, writeProgram } from '../../nc/write/write.ts';
import { planCut } from '../../plan/cut/plan-cut.ts';
import { movedSteps } from '../../plan/path/moved.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Finding } from '../../text/finding.ts';
import type { Job } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { noMemory } from '../memory.ts';
import type { Wish } from '../request/request.ts';
import { machineOf } from '../shop.ts';
import { metalFor } from './metal.ts';

export const drawingOf = ({ drawing, drawingName, job, memory = noMemory }: JobRun): Drawing =>
  memory.recall('drawing', `${drawingName} ${job.units ?? ''} ${job.join} ${shapeKey(job)}`, () =>
    readDrawing(drawing, drawingName, { join: job.join, ...(job.units === undefined ? {} : { units: job.units }) }),
  );

/** A program that could be written. */
export type Written = Extract<WrittenProgram, { kind: 'written' }>;

export type Made =
  | { readonly kind: 'made'; readonly plan: Plan; readonly written: Written }
  | { readonly kind: 'refused'; readonly plan: Plan; readonly findings: readonly Finding[] };

/** Plan and program of a wish with the wire that it names or that was settled on. */
export const programOf = (run: JobRun, wish: Wish, make = () => madeOf(run, wish)): Made =>
  (run.memory ?? noMemory).recall('program', programKey(run, wish), make);

/** A drawing made of numbers is another one with every other number. */
const shapeKey = ({ shape }: Pick<Job, 'shape'>): string => (shape === undefined ? '' : JSON.stringify(shape));

/** All that plan and program depend on; a drawing that was brought in is the same in all runs that share a memory. */
export const programKey = (run: JobRun, wish: Wish): string =>
  JSON.stringify([
    shapeKey(run.job),
    run.job.ease,
    run.job.layers,
    wish.scaled ?? 1,
    wish.datum ?? 0,
    run.dialect,
    { ...wish.question, loops: [] },
  ]);

/** The same made anew and not remembered. */
export const madeOf = (run: JobRun, wish: Wish): Made => {
  const plan = planCut(wish.question);
  if (plan.kind === 'refused') return { kind: 'refused', plan, findings: [] };
  const notes = wish.scaled === undefined ? [] : [`Scaled by ${wish.scaled.factor.toFixed(7)} for a part of ${wish.scaled.temperature} C`];
  const header = { name: run.job.name ?? run.drawingName, date: run.day, notes: [...notes, ...datumNotes(wish.datum)] };
  const written = writeProgram(fromDatum(plan, wish.datum), run.dialect, header);
  if (written.kind === 'refused') return { kind: 'refused', plan, findings: written.findings };
  return { kind: 'made', plan, written };
};

const datumNotes = (datum: Point | undefined): readonly string[] =>
  datum === undefined ? [] : [`Zero at X ${Number(datum.x.toFixed(4))} Y ${Number(datum.y.toFixed(4))} mm of the drawing`];

/** The program counts from its datum; the plan stays where the drawing has it. */
const fromDatum = (plan: Plan, datum: Point | undefined): Pick<Plan, 'steps' | 'passes'> =>
  datum === undefined ? plan : { passes: plan.passes, steps: movedSteps(plan.steps, { x: -datum.x, y: -datum.y }) };

/** The program as its control would read it, moved to where its zero lies in the drawing: proof, hours and price all start from here. */
export const readBack = (run: JobRun, written: Written, datum?: Point): ReadProgram =>
  placedProgram(readProgram(written.text, run.dialect, written.registers), datum);

export const estimateOf = (run: JobRun, plan: Plan, program: ReadProgram): Estimated =>
  estimateJob({
    program,
    plan,
    machine: machineOf(run.shop),
    rates: run.shop.rates,
    day: run.day,
    quantity: run.job.quantity,
    breaks: run.job.quantityBreaks,
    ...(run.job.stack === 1 ? {} : { stack: run.job.stack }),
    ...metalFor(run, plan),
  });
