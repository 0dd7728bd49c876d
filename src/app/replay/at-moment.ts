/** What the picture shows at a moment of the replay: where the wire is, what is cut, what has fallen, which block runs. */
import type { ProgramView } from '../work/views.ts';
import { type Standing, standingAt, type Timeline } from './timeline.ts';

export interface AtMoment {
  readonly standing: Standing;
  readonly wire: { readonly x: number; readonly y: number; readonly kerf: number };
  /** So many moves are done. */
  readonly cutUpTo: number;
  readonly block?: number;
  /** Contours whose piece has come loose. */
  readonly fallen: readonly string[];
}

export const atMoment = (timeline: Timeline, program: Pick<ProgramView, 'kerf' | 'falls'>, moment: number): AtMoment | undefined => {
  const standing = standingAt(timeline, moment);
  if (standing === undefined) return undefined;
  const { moves } = timeline;
  const count = moves.begins.length;
  const cutUpTo = moment >= timeline.length ? count : standing.share >= 1 ? standing.move + 1 : standing.move;
  const done = cutUpTo >= count ? Number.POSITIVE_INFINITY : moves.block[cutUpTo];
  return {
    standing,
    cutUpTo,
    wire: { ...placeOn(moves.segments, standing.move, standing.share), kerf: program.kerf },
    ...(standing.block === undefined ? {} : { block: standing.block }),
    fallen: program.falls.flatMap((f) => (f.loop !== undefined && f.block < done ? [f.loop] : [])),
  };
};

/** A place on one of the moves, eight numbers each; `share` from 0 at its beginning to 1 at its end. */
export const placeOn = (segments: Float64Array, index: number, share: number): { readonly x: number; readonly y: number } => {
  const at = index * 8;
  const [x1, y1, x2, y2, cx, cy, radius, sweep] = segments.subarray(at, at + 8);
  if (radius === 0 || sweep === 0) return { x: x1 + share * (x2 - x1), y: y1 + share * (y2 - y1) };
  const angle = Math.atan2(y1 - cy, x1 - cx) + share * sweep;
  return { x: cx + radius * Math.cos(angle), y: cy + radius * Math.sin(angle) };
};
