/** The doors of the layers as a job calls them, each remembered where its inputs can come again: drawing, program, reading back, hours, proof. */
import type { Drawing } from '../../drawing/drawing.ts';
import { takenOf } from '../../drawing/left-out.ts';
import { readDrawing } from '../../drawing/read/read-drawing.ts';
import { type Estimated, estimateJob } from '../../estimate/estimate.ts';
import type { Point } from '../../geometry/segment.ts';
import { placedProgram } from '../../nc/read/placed-program.ts';
import type { ReadProgram } from '../../nc/read/program.ts';
import { readProgram } from '../../nc/read/read.ts';
import { writeProgram } from '../../nc/write/write.ts';
import type { Material } from '../../physics/material/material.ts';
import { planCut } from '../../plan/cut/plan-cut.ts';
import { movedSteps } from '../../plan/path/moved.ts';
import type { CutPlan, RefusedPlan } from '../../plan/plan.ts';
import type { Proof } from '../../proof/proof.ts';
import { proveRead } from '../../proof/prove/prove.ts';
import type { Finding } from '../../text/finding.ts';
import { asGiven, fixed, number, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Job } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { noMemory } from '../memory.ts';
import { fromDrawingOrigin } from '../places-in-drawing.ts';
import type { CutRequest } from '../request/request.ts';
import type { Scaled } from '../request/scale.ts';
import { machineOf } from '../shop.ts';
import type { ProvenProgram } from './answer.ts';
import { metalFor } from './metal.ts';
import type { Written } from './outcomes.ts';
import { withStopsTold } from './stops-told.ts';

export const drawingOf = (run: JobRun): Drawing => {
  const { drawing, drawingName, job, memory = noMemory } = run;
  // A part by numbers is drawn by us: letters of one height are no views of each other.
  const options = { join: job.join, units: job.units, alone: job.shape !== undefined };
  return takenOf(
    memory.recall('drawing', drawingKey(run), () => readDrawing(drawing, drawingName, options)),
    job,
  );
};

const drawingKey = ({ drawingName, job }: JobRun): string => `${drawingName} ${job.units ?? ''} ${job.join} ${shapeKey(job)}`;

export type Made =
  | { readonly kind: 'made'; readonly plan: CutPlan; readonly written: Written }
  | { readonly kind: 'refused'; readonly plan: RefusedPlan }
  /** `findings` are those of the writer. */
  | { readonly kind: 'not written'; readonly plan: CutPlan; readonly findings: readonly Finding[] };

/** What planner and writer say against a program that was not made. */
export const refusalsOf = (made: Exclude<Made, { kind: 'made' }>): readonly Finding[] =>
  made.kind === 'refused' ? made.plan.findings : [...made.plan.findings, ...made.findings];

/** Plan and program of a request with the wire that it names or that was settled on. */
export const programOf = (run: JobRun, request: CutRequest, make = () => madeOf(run, request)): Made =>
  (run.memory ?? noMemory).recall('program', programKey(run, request), make);

/** A drawing made of numbers is another one with every other number. */
const shapeKey = ({ shape }: Pick<Job, 'shape'>): string => (shape === undefined ? '' : JSON.stringify(shape));

/** All that plan and program depend on; a drawing that was brought in is the same in all runs that share a memory. */
export const programKey = (run: JobRun, request: CutRequest): string =>
  JSON.stringify([
    shapeKey(run.job),
    run.job.ease,
    run.job.layers,
    run.job.without,
    request.scaled ?? 1,
    request.datum ?? 0,
    [...(request.aims ?? [])],
    run.dialect,
    { ...request.question, loops: [] },
  ]);

/** The same made anew and not remembered. */
export const madeOf = (run: JobRun, request: CutRequest): Made => {
  const plan = planCut(request.question);
  if (plan.kind === 'refused') return { kind: 'refused', plan };
  const notes = request.scaled === undefined ? [] : [words.scaled(request.scaled)];
  const header = { name: run.job.name ?? run.drawingName, date: run.day, notes: [...notes, ...datumNotes(request.datum)] };
  const written = writeProgram(fromDatum(plan, request.datum), run.dialect, header);
  if (written.kind === 'refused') return { kind: 'not written', plan, findings: fromDrawingOrigin(written.findings, request.datum) };
  return { kind: 'made', plan, written };
};

const datumNotes = (datum: Point | undefined): readonly Text[] => (datum === undefined ? [] : [words.zero(datum)]);

const words = phrases('program-note', {
  scaled: ({ factor, temperature }: Scaled) =>
    say`Scaled by ${{ factor: number(factor, fixed(7)) }} for a part of ${{ celsius: asGiven(temperature) }} C`,
  zero: ({ x, y }: Point) => say`Program zero at X ${{ x: number(x, upTo(4)) }} Y ${{ y: number(y, upTo(4)) }} mm of drawing`,
});

/** The program counts from its datum; the plan stays where the drawing has it. */
const fromDatum = (plan: CutPlan, datum: Point | undefined): Pick<CutPlan, 'steps' | 'passes'> =>
  datum === undefined ? plan : { passes: plan.passes, steps: movedSteps(plan.steps, { x: -datum.x, y: -datum.y }) };

/** The program as its control would read it, moved to where its zero lies in the drawing: proof, hours and price all start from here. */
export const readBack = (run: JobRun, written: Written, { datum }: Pick<CutRequest, 'datum'>): ReadProgram =>
  withStopsTold(placedProgram(readProgram(written.text, run.dialect, written.registers), datum), written.stops);

/** Proofs that are remembered: they weigh much, and only inputs that leave the program as it is ask for one again. */
const PROOFS = 2;

/** Drawing, program and set-up are all that a proof goes by. */
export const provenOf = (run: JobRun, { read, setup, question }: ProvenProgram): Proof =>
  (run.memory ?? noMemory).recall(
    'proof',
    `${drawingKey(run)} ${JSON.stringify(setup)} ${question.program}`,
    () => proveRead(read, question),
    PROOFS,
  );

export const estimateOf = (run: JobRun, plan: CutPlan, program: ReadProgram, material: Material): Estimated =>
  estimateJob({
    material,
    program,
    plan,
    machine: machineOf(run.shop),
    rates: run.shop.rates,
    day: run.day,
    quantity: run.job.quantity,
    breaks: run.job.quantityBreaks,
    stack: run.job.stack === 1 ? undefined : run.job.stack,
    ...metalFor(run, plan),
  });
