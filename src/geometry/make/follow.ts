/** Directed pieces followed round to closed rounds: what lies on their left stays in as many parts as it has. */
import { grouped } from '../../sequence/sequence.ts';
import { turnAt } from '../joints.ts';
import { curvatureOf } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';
import type { CutPiece } from './cut-pieces.ts';

export type Followed =
  | { readonly kind: 'rounds'; readonly rounds: readonly (readonly Segment[])[] }
  | { readonly kind: 'broken'; readonly at: Point };

/** Where several pieces go on from a corner the sharpest turn to the left is taken, so that parts that touch there stay apart. */
export const followed = (pieces: readonly CutPiece[]): Followed => {
  const leaving = grouped(pieces, (p) => p.from);
  const used = new Set<CutPiece>();
  const rounds: Segment[][] = [];
  for (const first of pieces) {
    if (used.has(first)) continue;
    const round: Segment[] = [];
    let piece = first;
    do {
      used.add(piece);
      round.push(piece.segment);
      const next = nextAfter(piece, leaving.get(piece.to)?.filter((p) => p === first || !used.has(p)) ?? []);
      if (next === undefined) return { kind: 'broken', at: piece.segment.to };
      piece = next;
    } while (piece !== first);
    rounds.push(round);
  }
  return { kind: 'rounds', rounds };
};

const nextAfter = ({ segment }: CutPiece, [way, ...others]: readonly CutPiece[]): CutPiece | undefined =>
  way === undefined ? undefined : others.reduce((a, b) => (isMoreLeft(segment, b.segment, a.segment) ? b : a), way);

/** Of two ways on in the same direction the one that bends more to the left. */
const isMoreLeft = (before: Segment, a: Segment, b: Segment): boolean => {
  const more = leftness(before, a) - leftness(before, b);
  return Math.abs(more) > SAME_DIRECTION ? more > 0 : curvatureOf(a) > curvatureOf(b);
};

/** Straight back counts as the sharpest turn to the right. */
const leftness = (before: Segment, after: Segment): number => {
  const turn = turnAt(before, after);
  return turn > Math.PI - SAME_DIRECTION ? -Math.PI : turn;
};

/** rad: corners move by the tolerance, and with them the directions of short pieces. */
const SAME_DIRECTION = 1e-6;
