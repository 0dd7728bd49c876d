/** The whole answer to a job: the facts of every layer, and every figure by its key so that it can be asked why. */

import type { Figure } from '../quantity/figure.ts';
import type { JobFacts } from '../result/facts.ts';
import type { Finding } from '../text/finding.ts';
import type { Job } from './job.ts';

export type Answer =
  /** The job could be judged; `facts.answer` is yes or no. */
  | { readonly kind: 'answered'; readonly facts: JobFacts; readonly job: Job; readonly figures: ReadonlyMap<string, Figure> }
  /** The wire cannot cut this at all, whatever the drawing: a non-conductor. */
  | { readonly kind: 'cannot'; readonly sentence: string; readonly findings: readonly Finding[] }
  /** The job could not be judged: the findings say which input is bad, and where. */
  | { readonly kind: 'bad input'; readonly findings: readonly Finding[] };
