/** Takes out what the file itself draws closed: circles, closed polylines and paths, each a loop for itself. */

import { distanceBetween, line } from '../../geometry/segment.ts';
import { lastOf, type NonEmpty, neighbours, roundPairs } from '../../sequence/sequence.ts';
import { pieceBetween } from '../piece/part-of-piece.ts';
import type { DrawnPiece, Step } from '../piece/piece.ts';
import { fromOf, pieceLength, toOf } from '../piece/piece.ts';
import type { Gap } from './nodes.ts';

/** One closed entity, with the straight piece it needed to close, if any. */
export interface ClosedEntity {
  readonly steps: readonly Step[];
  /** The straight stretch that was put in because the entity says it is closed and its last piece ends short. */
  readonly closing?: Gap;
}

export interface SortedEntities {
  readonly closed: readonly ClosedEntity[];
  readonly loose: readonly DrawnPiece[];
}

/**
 * Pieces of one entity stand one after the other. It is closed where its last end meets its first start, or where the file
 * says so; everything else stays loose.
 *
 * @param within mm: ends this near are the same but for rounding
 */
export const sortEntities = (pieces: readonly DrawnPiece[], within: number): SortedEntities => {
  const closed: ClosedEntity[] = [];
  const loose: DrawnPiece[] = [];
  for (const group of groupsOf(pieces)) {
    const entity = closedEntity(group, within);
    if (entity === 'open') loose.push(...group);
    else closed.push(entity);
  }
  return { closed, loose };
};

const groupsOf = (pieces: readonly DrawnPiece[]): readonly NonEmpty<DrawnPiece>[] => {
  const groups: [DrawnPiece, ...DrawnPiece[]][] = [];
  for (const piece of pieces) {
    const last = groups.at(-1);
    if (last && last[0].entity === piece.entity) last.push(piece);
    else groups.push([piece]);
  }
  return groups;
};

const closedEntity = (group: NonEmpty<DrawnPiece>, within: number): ClosedEntity | 'open' => {
  if (neighbours(group).some(([before, after]) => distanceBetween(toOf(before), fromOf(after)) > within)) return 'open';
  const [first, last] = [group[0], lastOf(group)];
  const [start, end] = [fromOf(first), toOf(last)];
  const gap = distanceBetween(end, start);
  if (gap <= within) return isMoreThanAGap(group, within) ? { steps: exactly(group) } : 'open';
  if (!first.closes) return 'open';
  const closing: DrawnPiece = { ...last, segments: [line(end, start)], deviation: 0, excess: 0 };
  return { steps: exactly([...group, closing]), closing: { a: end, b: start, size: gap } };
};

/** The pieces as a closed round of steps, each ending in the very point where the next one starts. */
const exactly = (group: readonly DrawnPiece[]): Step[] =>
  roundPairs(group).map(([piece, next]) => ({ piece: pieceBetween(piece, fromOf(piece), fromOf(next)), forward: true }));

/** A piece hardly longer than rounding ends where it starts without being closed. */
const isMoreThanAGap = (group: readonly DrawnPiece[], within: number): boolean => {
  let total = 0;
  for (const piece of group) total += pieceLength(piece);
  return total > 4 * within;
};
