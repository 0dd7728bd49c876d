/** All that the papers and the terminal may print of one job: results of every layer, computed elsewhere. */

import type { PlanBudgets } from '../accuracy/budget-of-plan.ts';
import type { Inspection } from '../accuracy/inspection.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Clock } from '../estimate/clock/clock.ts';
import type { Estimate } from '../estimate/estimate.ts';
import type { Point } from '../geometry/segment.ts';
import type { Material } from '../physics/material/material.ts';
import type { OtherWays } from '../physics/other-process/other-question.ts';
import type { Plan } from '../plan/plan.ts';
import type { Proof } from '../proof/proof.ts';
import type { Shape } from '../shapes/shape.ts';
import { type ControlUnit, INCHES, MILLIMETRES } from '../text/control-unit.ts';
import type { Finding } from '../text/finding.ts';
import type { WireTable } from './wires.ts';

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
  /** The program was scaled for the temperature of the work piece, °C. */
  readonly scaled?: { readonly factor: number; readonly temperature: number };
  readonly asked: { readonly finish: number; readonly tolerance: number; readonly insideCorner: number };
  /** Zero of the program in the drawing, mm; left out where it is the zero of the drawing. */
  readonly datum?: Point;
  /** What was set by hand in place of what the planner would choose; left out where nothing was. */
  readonly byHand?: SetByHand;
  /** What nobody said and the house took for granted, each as a sentence. */
  readonly assumed: readonly string[];
  readonly drawingName: string;
  readonly drawing: Drawing;
  /** Where the job is by numbers: what it is called, and the sizes one would measure. */
  readonly shape?: Pick<Shape, 'name' | 'sizes'>;
  readonly plan?: Plan;
  readonly program?: Program;
  readonly proof?: Proof;
  readonly estimate?: Estimate;
  /** The run on the clock of the shop. */
  readonly clock?: Clock;
  /** Where the error of the profile, and of the sizes that the job names, comes from. */
  readonly budgets?: PlanBudgets;
  /** What is to be measured of a finished piece. */
  readonly inspection?: Inspection;
  /** The same job by flame, plasma, laser and water jet. */
  readonly otherWays?: OtherWays;
  /** Every wire of the shop carried through the job. */
  readonly wires?: WireTable;
  /** Of all layers, the gravest first. */
  readonly findings: readonly Finding[];
}

export interface SetByHand {
  /** By id of loop or line: 'entry', 'hole', 'tab', 'kept', 'start', 'core', 'order'. */
  readonly contours: Readonly<Record<string, readonly string[]>>;
  /** 'wire', 'passes', 'offsets', 'order', 'datum', 'clamps', 'holes'. */
  readonly whole: readonly string[];
}

/** A place of the drawing as the program counts it, mm. */
export const fromDatum = ({ datum }: Pick<JobFacts, 'datum'>, { x, y }: Point): Point =>
  datum === undefined ? { x, y } : { x: x - datum.x, y: y - datum.y };

/** The unit of the program, in which whoever runs it thinks; mm while there is none. */
export const controlUnit = ({ program }: Pick<JobFacts, 'program'>): ControlUnit => (program?.units === 'inch' ? INCHES : MILLIMETRES);

export interface Program {
  readonly text: string;
  readonly dialect: string;
  readonly units: 'mm' | 'inch';
  /** Offset registers to be set in the control, mm, by number. */
  readonly registers: ReadonlyMap<number, number>;
  /** Gaps the proof took for granted, mm, by condition. */
  readonly gaps: ReadonlyMap<number, number>;
}
