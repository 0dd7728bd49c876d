/** What papers, page and command line may show of one job: worked out elsewhere, and of a shape that cannot say what is not so. */

import type { Drawing } from '../drawing/drawing.ts';
import type { Point } from '../geometry/segment.ts';
import type { Material } from '../physics/material/material.ts';
import type { WireResult } from '../plan/plan.ts';
import type { FinishRule } from '../quantity/finish-rule.ts';
import type { Shape } from '../shapes/shape.ts';
import { type ControlUnit, INCHES, MILLIMETRES } from '../text/control-unit.ts';
import type { Finding } from '../text/finding.ts';
import type { Text } from '../text/text.ts';
import type { CutFacts, HoursFacts, MadeFacts, ProgramFacts, RefusedFacts } from './outcome-facts.ts';

export interface JobFacts {
  readonly head: Head;
  readonly asked: Asked;
  readonly drawing: Drawing;
  /** Where the job is by numbers: what it is called, and the sizes one would measure. */
  readonly shape?: Pick<Shape, 'name' | 'sizes'> | undefined;
  readonly outcome: JobOutcome;
  /** The answer in one sentence. */
  readonly sentence: Text;
  /** Of all layers, the gravest first. */
  readonly findings: readonly Finding[];
}

/** What stands at the head of every paper. */
export interface Head {
  readonly name: string;
  readonly customer?: string | undefined;
  readonly shop: string;
  /** Nobody has set the rates of this shop yet. */
  readonly inventedRates: boolean;
  /** Day of the answer, ISO 8601. */
  readonly day: string;
  readonly drawingName: string;
}

/** What nobody said and the house took for granted. */
export interface Assumption {
  readonly text: Text;
  /** Key of the job file that says otherwise; none where another file has to. */
  readonly field?: string | undefined;
}

/** What was asked. Lengths in mm, Ra in µm. */
export interface Asked {
  readonly material: Material;
  readonly height: number;
  readonly quantity: number;
  readonly finish: number;
  readonly tolerance: number;
  /** What the finish limits. */
  readonly finishRule: FinishRule;
  /** k: standard deviations of what is random that are promised. */
  readonly confidence: number;
  readonly insideCorner: number;
  /** Zero of the program in the drawing; left out where it is the zero of the drawing. */
  readonly datum?: Point | undefined;
  /** What was set by hand in place of what the planner would choose; left out where nothing was. */
  readonly overrides?: OverridesMade | undefined;
  /** What nobody said and the house took for granted, each as a sentence. */
  readonly assumed: readonly Assumption[];
}

export interface OverridesMade {
  /** By id of loop or line: 'entry', 'hole', 'tab', 'kept', 'start', 'core', 'order'. */
  readonly contours: Readonly<Record<string, readonly string[]>>;
  /** 'wire', 'passes', 'offsets', 'order', 'datum', 'clamps', 'holes'. */
  readonly whole: readonly string[];
}

/** How far the job came: only what is cut has an accuracy and a wire, only a program has a proof, and without both there is no yes. */
export type JobOutcome =
  | Yes
  /** Not proven, without hours, or with something else against it. */
  | (MadeFacts & { readonly answer: 'no'; readonly kind: 'program'; readonly hours?: HoursFacts | undefined })
  /** The dialect cannot spell what was planned. */
  | { readonly answer: 'no'; readonly kind: 'plan'; readonly cut: CutFacts }
  | { readonly answer: 'no'; readonly kind: 'refused'; readonly refused: RefusedFacts }
  | { readonly answer: 'no'; readonly kind: 'nothing to cut' };

export interface Yes extends MadeFacts {
  readonly answer: 'yes';
  readonly kind: 'program';
  readonly hours: HoursFacts;
}

type Reached = Pick<JobFacts, 'outcome'>;

export const cutOf = ({ outcome }: Reached): CutFacts | undefined => ('cut' in outcome ? outcome.cut : undefined);

export const programOf = ({ outcome }: Reached): ProgramFacts | undefined => (outcome.kind === 'program' ? outcome.program : undefined);

export const hoursOf = ({ outcome }: Reached): HoursFacts | undefined => (outcome.kind === 'program' ? outcome.hours : undefined);

/** The plan, whether it can be cut or not; its findings, block and clamps are known either way. */
export const plannedOf = ({ outcome }: Reached): CutFacts | RefusedFacts | undefined =>
  outcome.kind === 'refused' ? outcome.refused : cutOf({ outcome });

/** How well the wire would do: that of the cut, or of what comes nearest to it where the job was refused. */
export const resultOf = (facts: Reached): WireResult | undefined => {
  const plan = plannedOf(facts)?.plan;
  return plan?.kind === 'refused' ? plan.nearest : plan;
};

/** A place of the drawing as the program counts it, mm. */
export const fromDatum = ({ datum }: Pick<Asked, 'datum'>, { x, y }: Point): Point =>
  datum === undefined ? { x, y } : { x: x - datum.x, y: y - datum.y };

/** The unit of the program, in which whoever runs it thinks; mm while there is none. */
export const controlUnit = (facts: Reached): ControlUnit => (programOf(facts)?.units === 'inch' ? INCHES : MILLIMETRES);
