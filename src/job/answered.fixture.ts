/** For tests: a job run to its answer, and the parts of that answer that the test cannot do without. */

import { cutOf, hoursOf, type JobFacts, programOf } from '../result/facts.ts';
import type { CutFacts, HoursFacts, ProgramFacts } from '../result/outcome-facts.ts';
import { printPlain } from '../text/print/print.ts';
import type { JobRun } from './job-run.ts';
import type { Answered, ProvenProgram } from './pipeline/answer.ts';
import { runUpTo } from './pipeline/pipeline.ts';

export const answered = (run: JobRun): Answered => {
  const answer = runUpTo(run, 'answer');
  if (answer.kind !== 'answered') throw new Error(answer.kind);
  return answer;
};

export const factsOf = (run: JobRun): JobFacts => answered(run).facts;

const there = <T>(part: T | undefined, facts: JobFacts): T => {
  if (part === undefined) throw new Error(printPlain(facts.sentence));
  return part;
};

export const cut = (facts: JobFacts): CutFacts => there(cutOf(facts), facts);
export const program = (facts: JobFacts): ProgramFacts => there(programOf(facts), facts);
export const hours = (facts: JobFacts): HoursFacts => there(hoursOf(facts), facts);
export const proven = ({ facts, proven: made }: Answered): ProvenProgram => there(made, facts);
