/**
 * Room that the inside arcs of a program leave for a larger register: raising D1 a little is the commonest act at the machine, and an arc
 * that is hardly larger than the register stops it.
 */
import type { Contour } from '../../geometry/contour.ts';
import type { Arc } from '../../geometry/segment.ts';
import type { NonEmpty } from '../../sequence/sequence.ts';
import { arcsOn, insideArcs } from '../inside-arcs.ts';
import { wireSide } from '../open-line.ts';
import type { CutPlan, Kept, Pass } from '../plan.ts';
import type { WayAsked } from '../question.ts';

/** mm by which a register may be raised at least, where corners have room for it; more is rarely due to gap or wire. Common practice is 15 to 20 µm. */
export const REGISTER_ROOM = 0.016;

/**
 * Programmed inside arcs must stay larger than the register after both are rounded to the last digit of the program:
 * ends, centre and register are off by half a digit each, which adds to at most two and a half; four leaves room.
 */
export const leastRoom = ({ resolution }: Pick<WayAsked, 'resolution'>): number => (DIGITS + 1) * digitOf(resolution);

/** Last digits by which a written arc may be tighter than the planned one. */
const DIGITS = 3;

const digitOf = ({ unit, decimals }: WayAsked['resolution']): number => unit * 10 ** -decimals;

/** mm of room, the best first: as much as is asked for, and the least without which the program itself would not run. */
export const roomsTried = (question: WayAsked): NonEmpty<number> => {
  const [least, more] = [leastRoom(question), question.registerRoom ?? 0];
  return more > 0 ? [least + more, least] : [least];
};

/** As much of the room as rounds no inside arc that is drawn and that this offset can follow. */
export const roomBeside = (contour: Contour, kept: Kept, offset: number, room: number, question: WayAsked): number => {
  const least = leastRoom(question);
  return insideArcs(contour, kept).reduce((most, { radius }) => {
    const beside = radius - offset;
    return beside >= least && beside < most ? beside : most;
  }, room);
};

/** mm by which a written arc may be tighter than the planned one. */
export const writtenTighter = (resolution: WayAsked['resolution']): number => DIGITS * digitOf(resolution);

/** An inside arc of the program, and the contour or line that it belongs to. */
export interface ProgrammedArc {
  readonly of: string;
  readonly arc: Arc;
}

/** Inside arcs that the program of a pass follows. */
export const programmedArcs = (
  { contours, openCuts = [] }: Pick<CutPlan, 'contours' | 'openCuts'>,
  pass: number,
): readonly ProgrammedArc[] => [
  ...contours.flatMap(({ loop, kept, courses }) =>
    courses.filter((c) => c.pass === pass).flatMap((c) => insideArcs(c.programmed, kept).map((arc) => ({ of: loop, arc }))),
  ),
  ...openCuts.flatMap(({ chain, kept, courses }) =>
    kept === 'slit'
      ? []
      : courses.filter((c) => c.pass === pass).flatMap((c) => arcsOn(c.programmed, wireSide(kept)).map((arc) => ({ of: chain, arc }))),
  ),
];

/** mm: a register is not to be raised by more in one program, whatever the arcs allow: leads and turns are laid for the planned one. */
const MOST_RAISED = 0.02;

/** mm by register: how far each may be raised in this program, as every inside arc allows. */
export const registerLimits = (
  plan: Pick<CutPlan, 'contours' | 'openCuts'> & { readonly passes: readonly Pick<Pass, 'number' | 'register' | 'offset'>[] },
  resolution: WayAsked['resolution'],
): ReadonlyMap<number, number> => {
  const slack = writtenTighter(resolution);
  const limits = new Map<number, number>();
  for (const { number, register, offset } of plan.passes) {
    const tightest = programmedArcs(plan, number).reduce(
      (least, { arc }) => Math.min(least, arc.radius - slack),
      offset.value + MOST_RAISED,
    );
    limits.set(register, Math.min(limits.get(register) ?? tightest, tightest));
  }
  return limits;
};
