/** The stages of a job that its what-ifs run as well: drawing, program, reading back, hours and price. */
import type { Drawing } from '../drawing/drawing.ts';
import { readDrawing } from '../drawing/read.ts';
import { type Estimated, estimateJob } from '../estimate/estimate.ts';
import type { Finding } from '../finding/finding.ts';
import type { ReadProgram } from '../nc/read/program.ts';
import { readProgram } from '../nc/read/read.ts';
import { type WrittenProgram, writeProgram } from '../nc/write/write.ts';
import type { Plan } from '../plan/plan.ts';
import { planCut } from '../plan/plan-cut.ts';
import { noMemory } from './memory.ts';
import { metalFor } from './metal.ts';
import type { JobRun } from './run.ts';
import type { Shop } from './shop.ts';
import type { Wish } from './wish.ts';

export const drawingOf = ({ drawing, drawingName, job, memory = noMemory }: JobRun): Drawing =>
  memory.recall('drawing', `${drawingName} ${job.units ?? ''} ${job.join}`, () =>
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

/** All that plan and program depend on; the drawing is the same in all runs that share a memory. */
export const programKey = (run: JobRun, wish: Wish): string =>
  JSON.stringify([run.job.ease, run.job.layers, wish.scaled ?? 1, run.dialect, { ...wish.question, loops: [] }]);

/** The same made anew and not remembered. */
export const madeOf = (run: JobRun, wish: Wish): Made => {
  const plan = planCut(wish.question);
  if (plan.kind === 'refused') return { kind: 'refused', plan, findings: [] };
  const notes = wish.scaled === undefined ? [] : [`Scaled by ${wish.scaled.factor.toFixed(7)} for a part of ${wish.scaled.temperature} C`];
  const written = writeProgram(plan, run.dialect, { name: run.job.name ?? run.drawingName, date: run.day, notes });
  if (written.kind === 'refused') return { kind: 'refused', plan, findings: written.findings };
  return { kind: 'made', plan, written };
};

/** The program as its control would read it: proof, hours and price all start from here. */
export const readBack = (run: JobRun, written: Written): ReadProgram => readProgram(written.text, run.dialect, written.registers);

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

export const machineOf = (shop: Shop): Shop['machines'][number] => shop.machines[0] as Shop['machines'][number];
