/** What is known of a job by how far it came: planned, refused, written as a program, its hours. */

import type { PlanBudgets } from '../accuracy/budget-of-plan.ts';
import type { Inspection } from '../accuracy/inspection.ts';
import type { Estimate } from '../estimate/estimate.ts';
import type { Schedule } from '../estimate/schedule/schedule.ts';
import type { OtherWays } from '../physics/other-process/other-question.ts';
import type { NumberedContour } from '../plan/numbered.ts';
import type { CutPlan, RefusedPlan } from '../plan/plan.ts';
import type { Proof } from '../proof/proof.ts';
import type { WireTable } from './wires.ts';

/** What stands beside a plan. */
interface BesidePlan {
  /** The same job by flame, plasma, laser and water jet; left out where only open lines are cut. */
  readonly otherWays?: OtherWays | undefined;
  /** Every wire of the shop carried through the job; left out where no rates hold on the day. */
  readonly wires?: WireTable | undefined;
}

export interface CutFacts extends BesidePlan {
  readonly plan: CutPlan;
  /** In the order and under the numbers that every table and picture uses. */
  readonly contours: readonly NumberedContour[];
  /** How far the profile is to be expected from the drawing, with everything counted, mm. */
  readonly within: number;
  /** Where the error of the profile, and of the sizes that the job names, comes from; left out where only open lines are cut. */
  readonly budgets?: PlanBudgets | undefined;
}

export interface RefusedFacts extends BesidePlan {
  readonly plan: RefusedPlan;
}

export interface ProgramFacts {
  readonly text: string;
  readonly dialect: string;
  readonly units: 'mm' | 'inch';
  /** Offset registers to be set in the control, mm, by number. */
  readonly registers: ReadonlyMap<number, number>;
  /** How far each may be raised in this program, mm. */
  readonly registerLimits: ReadonlyMap<number, number>;
  /** Gaps the proof took for granted, mm, by condition. */
  readonly gaps: ReadonlyMap<number, number>;
  /** It was scaled for the temperature of the work piece, °C. */
  readonly scaled?: { readonly factor: number; readonly temperature: number } | undefined;
  readonly proof: Proof;
  /** What is to be measured of a finished piece. */
  readonly inspection: Inspection;
}

/** What was planned and written as a program. */
export interface MadeFacts {
  readonly cut: CutFacts;
  readonly program: ProgramFacts;
}

export interface HoursFacts {
  readonly estimate: Estimate;
  /** The run by the shop's schedule; left out where it cannot be laid. */
  readonly schedule?: Schedule | undefined;
}
