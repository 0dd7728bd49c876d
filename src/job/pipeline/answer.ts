/** The whole answer to a job: the facts of every layer, and every figure by its key so that it can be asked why. */

import type { Drawing } from '../../drawing/drawing.ts';
import type { ReadProgram } from '../../nc/read/program.ts';
import type { ProofQuestion } from '../../proof/proof.ts';
import type { Figure } from '../../quantity/figure.ts';
import type { JobFacts } from '../../result/facts.ts';
import type { Finding } from '../../text/finding.ts';
import type { Text } from '../../text/text.ts';
import type { SetupFile } from '../files/setup-file.ts';
import type { Job } from '../job.ts';
import type { BadInput } from './outcomes.ts';

/** The job could be judged; `facts.outcome` says yes or no. */
export interface Answered {
  readonly kind: 'answered';
  readonly facts: JobFacts;
  readonly job: Job;
  readonly figures: ReadonlyMap<string, Figure>;
  /** Where the job came as far as a program. */
  readonly proven?: ProvenProgram;
}

/** A program with all that it takes to prove it again. */
export interface ProvenProgram {
  readonly setup: SetupFile;
  /** As its control reads it. */
  readonly read: ReadProgram;
  /** What the proof was asked. */
  readonly question: ProofQuestion;
}

export type Answer =
  | Answered
  /** The wire cannot cut this at all, whatever the drawing: a non-conductor. */
  | { readonly kind: 'cannot'; readonly sentence: Text; readonly findings: readonly Finding[]; readonly drawing: Drawing }
  /** The job could not be judged: the findings say which input is bad, and where. */
  | BadInput;
