/** The whole answer to a job: what every layer said, and the sentence that sums it up. */
import type { Drawing } from '../drawing/drawing.ts';
import type { Estimate } from '../estimate/estimate.ts';
import type { Finding } from '../finding/finding.ts';
import type { Plan } from '../plan/plan.ts';
import type { Proof } from '../proof/proof.ts';
import type { Figure } from '../quantity/figure.ts';
import type { Job } from './job.ts';

export interface Answer {
  readonly kind: 'yes' | 'no' | 'bad input';
  readonly sentence: string;
  readonly job: Job;
  /** What nobody said and the house took for granted, each as a sentence. */
  readonly assumed: readonly string[];
  readonly drawing: Drawing;
  readonly plan?: Plan;
  readonly program?: string;
  readonly proof?: Proof;
  readonly estimate?: Estimate;
  readonly findings: readonly Finding[];
  /** Every figure by its key, for `why`. */
  readonly figures: ReadonlyMap<string, Figure>;
}
