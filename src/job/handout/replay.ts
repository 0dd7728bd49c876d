/** The wire's moves as the program was read back, with the minutes at which each begins: what a replay shows. */

import { passOf } from '../../estimate/tally.ts';
import { lengthOf } from '../../geometry/measure.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { ReadProgram } from '../../nc/read/program.ts';
import type { CutPlan } from '../../plan/plan.ts';
import { kerfOf } from '../../plan/rough-cut.ts';

export interface ReplayMove {
  readonly block: number;
  /** Way of the wire's centre, mm. */
  readonly centre: Segment;
  /** 0 where it travels without the wire. */
  readonly pass: number;
  /** Minutes of machine time since the start, stops and threading left out. */
  readonly begins: number;
}

export interface Replay {
  readonly lines: readonly string[];
  readonly moves: readonly ReplayMove[];
  /** Machine time of all moves together, min. */
  readonly minutes: number;
  /** Width of the rough cut, mm. */
  readonly kerf: number;
}

/** `travelFeed` in mm/min. Moves of a pass that nobody planned have no feed and take no time. */
export const replayOf = (program: ReadProgram, plan: CutPlan, travelFeed: number): Replay => {
  const moves: ReplayMove[] = [];
  let minutes = 0;
  for (const action of program.actions) {
    if (action.kind !== 'move') continue;
    const pass = action.rapid ? undefined : passOf(action, plan.passes);
    moves.push({ block: action.block, centre: action.centre, pass: pass?.number ?? 0, begins: minutes });
    minutes += lengthOf(action.centre) / (pass?.feed.value ?? (action.rapid ? travelFeed : Number.POSITIVE_INFINITY));
  }
  return { lines: program.blocks.map((b) => b.text), moves, minutes, kerf: kerfOf({ wire: plan.wire, rows: plan.passes }) };
};
