/** The whole cut as a list of what happens: which visit to which contour comes when, and the travel between them. */

import type { Point } from '../../geometry/segment.ts';
import { itemAt, lastItem } from '../../sequence/sequence.ts';
import { contour } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Visit, Visited, VisitsOf } from '../path/contour-layout.ts';
import { movedPoint, movedStep } from '../path/moved.ts';
import type { Step } from '../plan.ts';
import type { DrawnWork, OverridesAsked, WayAsked } from '../question.ts';
import { batchesOf } from './order-override.ts';
import { travelOrder } from './travel-order.ts';

/** One visit when its turn has come. */
export interface Stay {
  readonly loop: Visited;
  readonly by: Point;
  readonly visit: Visit;
  readonly hole: Point;
}

/**
 * Inner loops before those around them, open lines in no loop last, all from one datum. Within a level each opening to the end, or, alone at night, first
 * every rough, then every tab, then every skim; nearest next hole first. An order set by hand rules when each is first visited.
 */
export const itineraryOf = (all: readonly VisitsOf[], question: DrawnWork & WayAsked & OverridesAsked): readonly Stay[] => {
  const stays: Stay[] = [];
  const { batches, rank } = batchesOf(all, question);
  for (const batch of batches) {
    phasesOf(question).forEach((kind, phase) => {
      const due = batch.flatMap((v) => v.visits.filter((visit) => visit.kind === kind).map((visit) => ({ ...v, visit })));
      const holes = due.map((d) => holeOf(d.visit, d.by));
      const ranks = due.map((d) => (phase === 0 ? rank.get(d.loop.loop.id) : undefined));
      for (const i of wayThrough(holes, ranks, stays.at(-1)?.hole)) {
        const { loop, by, visit } = itemAt(due, i);
        stays.push({ loop, by, visit, hole: itemAt(holes, i) });
      }
    });
  }
  return stays;
};

/** Numbers of the holes: those with a rank first, by it, then the others with little travel. */
const wayThrough = (holes: readonly Point[], ranks: readonly (number | undefined)[], start: Point | undefined): readonly number[] => {
  const numbers = holes.map((_, i) => i);
  const first = numbers.filter((i) => ranks[i] !== undefined).sort((a, b) => itemAt(ranks, a) - itemAt(ranks, b));
  const rest = numbers.filter((i) => ranks[i] === undefined);
  const from = first.length === 0 ? start : holes[lastItem(first)];
  return [
    ...first,
    ...travelOrder(
      rest.map((i) => itemAt(holes, i)),
      from,
    ).map((i) => itemAt(rest, i)),
  ];
};

/** The itinerary written out step by step. */
export const stepsFor = (itinerary: readonly Stay[]): readonly Step[] => {
  const steps: Step[] = [];
  for (const { loop, by, visit, hole } of itinerary) {
    steps.push({ kind: 'contour begins', loop: loop.loop.id, name: nameOf(loop, visit) }, { kind: 'travel', to: hole });
    for (const step of visit.steps) {
      if (step.kind === 'stop') steps.push({ ...step, loop: loop.loop.id });
      else steps.push(movedStep(step, by) as Step);
    }
  }
  steps.push({ kind: 'end' });
  return steps;
};

/** Openings beside a thin web are roughed first in any run. */
const phasesOf = ({ run }: WayAsked): readonly Visit['kind'][] =>
  run === 'attended' ? ['whole', 'rough', 'tab', 'skims'] : ['rough', 'tab', 'skims'];

const holeOf = (visit: Visit, by: Point): Point => {
  const thread = visit.steps.find((s) => s.kind === 'thread');
  if (thread === undefined) throw new Error('a visit to a contour threads the wire');
  return movedPoint(thread.at, by);
};

const nameOf = ({ loop, kept }: Visited, { kind }: Visit): Text =>
  visits[kind](loop.id, { die: wanted.opening, punch: wanted.part, slit: wanted.slit, left: wanted.line, right: wanted.line }[kept]);

const wanted = phrases('contour-wanted', { opening: say`opening`, part: say`part`, slit: say`slit`, line: say`open line` });

const visits = phrases('contour-visit', {
  whole: (loop: string, what: Text) => say`${{ loop: contour(loop) }}, ${{ what }}`,
  rough: (loop: string, what: Text) => say`${{ loop: contour(loop) }}, ${{ what }}, up to the tab`,
  tab: (loop: string, what: Text) => say`${{ loop: contour(loop) }}, ${{ what }}, the tab`,
  skims: (loop: string, what: Text) => say`${{ loop: contour(loop) }}, ${{ what }}, finishing`,
});
