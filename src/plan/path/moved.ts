/** A design moved to where another loop of the same shape stands. */

import type { Contour } from '../../geometry/contour.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { mapFilled } from '../../sequence/sequence.ts';
import type { Step } from '../plan.ts';
import type { DesignStep } from './design-step.ts';

export const movedPoint = (p: Point, by: Point): Point => ({ x: p.x + by.x, y: p.y + by.y });

export const movedSegment = (s: Segment, by: Point): Segment => {
  const ends = { from: movedPoint(s.from, by), to: movedPoint(s.to, by) };
  if (s.kind === 'line') return { kind: 'line', ...ends };
  return { kind: 'arc', ...ends, centre: movedPoint(s.centre, by), radius: s.radius, sweep: s.sweep };
};

/** Ends that were one point stay one point, so a contour stays joined exactly. */
export const movedContour = (contour: Contour, by: Point): Contour =>
  isNothing(by) ? contour : { closed: true, segments: mapFilled(contour.segments, (s) => movedSegment(s, by)) };

export const movedStep = (step: DesignStep, by: Point): DesignStep => {
  if (isNothing(by)) return step;
  if (step.kind === 'thread') return { kind: 'thread', at: movedPoint(step.at, by) };
  if (step.kind !== 'cut') return step;
  return {
    kind: 'cut',
    programmed: step.programmed && movedSegment(step.programmed, by),
    centre: step.centre && movedSegment(step.centre, by),
    pass: step.pass,
    part: step.part,
  };
};

/** Steps of a whole plan, travel included. */
export const movedSteps = (steps: readonly Step[], by: Point): readonly Step[] =>
  steps.map((step): Step => {
    if (step.kind === 'travel') return { kind: 'travel', to: movedPoint(step.to, by) };
    return step.kind === 'cut' || step.kind === 'thread' ? (movedStep(step, by) as Step) : step;
  });

const isNothing = (by: Point): boolean => by.x === 0 && by.y === 0;
