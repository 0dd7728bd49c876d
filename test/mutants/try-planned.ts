/** Faults put into the programs of planned jobs, each judged by the proof and by what it changes. */
import { readProgram } from '../../src/nc/read/read.ts';
import { limitsFor, proveProgram } from '../../src/proof/prove/prove.ts';
import { changeOf, type Good, goodOf, hangsOnLittle } from './change.ts';
import { textOf } from './good-programs.ts';
import { type Mutant, mutantsOf } from './mutate.ts';
import type { PlannedJob } from './planned-jobs.ts';
import { mayBeOff } from './truth.ts';

/** mm: the change is sampled, and so may be wrong by this much. */
const TOO_NEAR = 6e-4;

export type Result = 'caught' | 'passed' | 'refused by the reader' | 'too near to tell' | 'missed' | 'blamed wrongly';

export interface Tried {
  readonly result: Result;
  /** The fault, and what the change and the proof say of it. */
  readonly what: string;
}

export const tryFaults = (job: PlannedJob, count: number, seed: number): readonly Tried[] => {
  const read = readProgram(textOf(job.lines), job.question.dialect, job.question.registers);
  if (read.state === 'refused') throw new Error(`${job.name} cannot be read`);
  const good = goodOf(job, read.actions);
  const half = Math.ceil(count / 2);
  return [...mutantsOf(job, half, seed), ...mutantsOf({ ...job, stretches: job.passes }, count - half, seed + 7919)].map((m) =>
    judged(good, m),
  );
};

const judged = (good: Good, mutant: Mutant): Tried => {
  const { job } = good;
  const question = { ...job.question, program: textOf(mutant.lines), registers: mutant.registers };
  const proof = proveProgram(question);
  const proven = proof.verdict === 'proven';
  const read = readProgram(question.program, question.dialect, question.registers, limitsFor(question));
  const tell = (result: Result, more = ''): Tried => ({
    result,
    what: `${job.name}, ${mutant.name}: ${more} proof: ${proof.findings
      .filter((f) => f.severity !== 'note')
      .map((f) => f.code)
      .join(' ')}`,
  });
  if (read.state === 'refused') return tell(proven ? 'missed' : 'refused by the reader');
  const change = changeOf(good, read.actions);
  const off = Math.max(change.left, change.gouge);
  const said = `left ${change.left.toFixed(4)} gouge ${change.gouge.toFixed(4)} ${change.faults.join('; ')}`;
  const ended = read.actions.some((a) => a.kind === 'end');
  const wrong = off > mayBeOff(question) || change.faults.length > 0 || !ended;
  const near = Math.abs(off - mayBeOff(question)) < TOO_NEAR || (change.unclear && off <= mayBeOff(question));
  if (change.faults.length === 0 && near) return tell('too near to tell', said);
  if (proven) return tell(wrong ? 'missed' : 'passed', said);
  if (!wrong && hangsOnLittle(good, read.actions)) return tell('too near to tell', said);
  return tell(wrong ? 'caught' : 'blamed wrongly', said);
};
