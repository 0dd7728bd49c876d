/** Openings that are entered from beside the block: their visits, led in from there. */

import type { Point } from '../../geometry/segment.ts';
import type { Visit } from '../path/contour-layout.ts';
import type { DesignStep } from '../path/design-step.ts';
import { plain } from '../path/leads.ts';

/**
 * Visits of an opening whose wire comes in from beside the block: threaded there, and led to where a hole would be, through the
 * contour at its entry.
 */
export const enteredFrom = (visits: readonly Visit[], from: Point, inside: Point): readonly Visit[] =>
  visits.map((visit) => ({ ...visit, steps: visit.steps.flatMap((step, i) => ledIn(step, visit.steps[i - 1], from, inside)) }));

const ledIn = (step: DesignStep, before: DesignStep | undefined, from: Point, inside: Point): readonly DesignStep[] => {
  if (step.kind === 'thread') return [{ kind: 'thread', at: from }];
  if (step.kind === 'condition' && before?.kind === 'thread') return [step, ...plain(step.pass, from, inside, 'approach')];
  return [step];
};
