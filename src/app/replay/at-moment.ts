/** What the picture shows at a moment of the replay: where the wire is, what is cut, what has fallen, which block runs. */

import { pointAt } from '../../geometry/measure.ts';
import { segmentAt } from '../picture/chain-segments.ts';
import type { ProgramView } from '../work/views.ts';
import { type Standing, standingAt, type Timeline } from './timeline.ts';

export interface AtMoment {
  readonly standing: Standing;
  readonly wire: { readonly x: number; readonly y: number; readonly kerf: number };
  /** So many moves are done. */
  readonly cutUpTo: number;
  readonly block?: number | undefined;
  /** Contours whose piece has come loose. */
  readonly fallen: readonly string[];
}

export const atMoment = (timeline: Timeline, program: Pick<ProgramView, 'kerf' | 'falls'>, moment: number): AtMoment | undefined => {
  const standing = standingAt(timeline, moment);
  if (standing === undefined) return undefined;
  const { moves } = timeline;
  const count = moves.begins.length;
  const cutUpTo = moment >= timeline.length ? count : standing.share >= 1 ? standing.move + 1 : standing.move;
  const done = moves.block[cutUpTo] ?? Number.POSITIVE_INFINITY;
  return {
    standing,
    cutUpTo,
    wire: { ...pointAt(segmentAt(moves.segments, standing.move), standing.share), kerf: program.kerf },
    block: standing.block,
    fallen: program.falls.flatMap((f) => (f.loop !== undefined && f.block < done ? [f.loop] : [])),
  };
};
