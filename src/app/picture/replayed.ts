/** The wire's moves for the replay: in bundles that are drawn at once, and the block that a place belongs to. */

import { nearestOn } from '../../geometry/measure.ts';
import { type BoxIndex, boxIndexOf } from '../../geometry/near/box-index.ts';
import type { Point } from '../../geometry/segment.ts';
import type { ProgramView } from '../work/views.ts';
import { boxOf, countOf, segmentAt } from './chain-segments.ts';
import type { ChainStretch } from './chain-strokes.ts';

export type Moves = ProgramView['moves'];

/** Moves that are drawn in one stroke once all of them are done. */
export const PER_STROKE = 256;

/** Cutting moves from `from` up to but not including `to`, as stretches without the travels between them. */
export const cutStretches = ({ segments, cutting }: Moves, from: number, to: number): readonly ChainStretch[] => {
  const found: ChainStretch[] = [];
  let start = -1;
  const end = Math.min(to, countOf(segments));
  for (let i = from; i <= end; i += 1) {
    const cuts = i < end && cutting[i] === 1;
    if (cuts && start < 0) start = i;
    if (cuts || start < 0) continue;
    found.push({ numbers: segments, from: start, to: i, closed: false });
    start = -1;
  }
  return found;
};

/** Moves that one block makes. */
export const movesOfBlock = ({ block, segments }: Moves, wanted: number): readonly ChainStretch[] => {
  const found: ChainStretch[] = [];
  for (let i = 0; i < block.length; i += 1) if (block[i] === wanted) found.push({ numbers: segments, from: i, to: i + 1, closed: false });
  return found;
};

/** The block whose move comes nearest to a place, within `reach` mm; cutting moves before travels, the first of equals. */
export const blockNear = (moves: Moves, index: BoxIndex<number>, p: Point, reach: number): number | undefined => {
  let best: { block: number; distance: number } | undefined;
  for (const i of index.search({ minX: p.x - reach, minY: p.y - reach, maxX: p.x + reach, maxY: p.y + reach }).sort((a, b) => a - b)) {
    const distance = nearestOn(segmentAt(moves.segments, i), p).distance + (moves.cutting[i] === 1 ? 0 : reach / 2);
    const block = moves.block[i];
    if (block !== undefined && distance <= reach && (best === undefined || distance < best.distance - 1e-9)) best = { block, distance };
  }
  return best?.block;
};

export const indexOfMoves = ({ segments }: Moves): BoxIndex<number> =>
  boxIndexOf(
    Array.from({ length: countOf(segments) }, (_, i) => i),
    (i) => boxOf(segments, i),
  );
