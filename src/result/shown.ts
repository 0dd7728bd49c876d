/** What papers lay out, under the names of those who worked it out: nothing else of those rooms is for a paper. */
export { allHeld, type Budget, isOver } from '../accuracy/budget.ts';
export type { PlanBudgets } from '../accuracy/budget-of-plan.ts';
export type { Correction } from '../accuracy/correction.ts';
export type { Inspection, InspectionRow } from '../accuracy/inspection.ts';
export type { Estimate, EstimatedHours, EstimatedPrice } from '../estimate/estimate.ts';
export type { Schedule, ScheduleEvent } from '../estimate/schedule/schedule.ts';
export type { Contour } from '../geometry/contour.ts';
export type { Point } from '../geometry/segment.ts';
export type { Caution, Material } from '../physics/material/material.ts';
export type { OtherEdge, OtherWay, OtherWays } from '../physics/other-process/other-question.ts';
export { fallingShort, isTooRough } from '../plan/classes.ts';
export type { NumberedContour } from '../plan/numbered.ts';
export type { OpenCutPlan, OpenEnd } from '../plan/open-line.ts';
export type { ContourPlan, CutPlan, Pass } from '../plan/plan.ts';
export { usedOn } from '../proof/share.ts';
export { confidenceTold } from '../quantity/confidence.ts';
export { type Basis, deviationOf, type Figure } from '../quantity/figure.ts';
export type { ShapeSize } from '../shapes/shape.ts';
