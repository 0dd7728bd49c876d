/** All that the papers and the terminal may print of one job: results of every layer, computed elsewhere. */
import type { Drawing } from '../drawing/drawing.ts';
import type { Estimate } from '../estimate/estimate.ts';
import type { Finding } from '../finding/finding.ts';
import type { Material } from '../physics/material.ts';
import type { OtherWays } from '../physics/other-ways.ts';
import type { PlanBudgets } from '../plan/budget-of-plan.ts';
import type { Plan } from '../plan/plan.ts';
import type { Proof } from '../proof/proof.ts';

export interface JobFacts {
  readonly answer: 'yes' | 'no';
  /** The answer in one sentence. */
  readonly sentence: string;
  readonly name: string;
  readonly customer?: string;
  readonly shop: string;
  /** Day of the answer, ISO 8601. */
  readonly day: string;
  readonly material: Material;
  readonly height: number;
  readonly quantity: number;
  readonly asked: { readonly finish: number; readonly tolerance: number; readonly insideCorner: number };
  /** What nobody said and the house took for granted, each as a sentence. */
  readonly assumed: readonly string[];
  readonly drawingName: string;
  readonly drawing: Drawing;
  readonly plan?: Plan;
  readonly program?: Program;
  readonly proof?: Proof;
  readonly estimate?: Estimate;
  /** Where the error of the profile, and of the sizes that the job names, comes from. */
  readonly budgets?: PlanBudgets;
  /** The same job by flame, plasma, laser and water jet. */
  readonly otherWays?: OtherWays;
  /** Of all layers, the gravest first. */
  readonly findings: readonly Finding[];
}

export interface Program {
  readonly text: string;
  readonly dialect: string;
  /** Offset registers to be set in the control, mm, by number. */
  readonly registers: ReadonlyMap<number, number>;
  /** Gaps the proof took for granted, mm, by condition. */
  readonly gaps: ReadonlyMap<number, number>;
}
