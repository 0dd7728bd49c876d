/** Directed pieces followed round to closed rounds: what lies on their left stays in as many parts as it has. */
import { turnAt } from '../joints.ts';
import { curvatureOf } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';
import type { CutPiece } from './cut-pieces.ts';

export type Followed =
  | { readonly kind: 'rounds'; readonly rounds: readonly (readonly Segment[])[] }
  | { readonly kind: 'broken'; readonly at: Point };

/** Where several pieces go on from a corner the sharpest turn to the left is taken, so that parts that touch there stay apart. */
export const followed = (pieces: readonly CutPiece[]): Followed => {
  const leaving = new Map<number, number[]>();
  pieces.forEach((p, i) => {
    leaving.set(p.from, [...(leaving.get(p.from) ?? []), i]);
  });
  const used = new Set<number>();
  const rounds: Segment[][] = [];
  for (let first = 0; first < pieces.length; first += 1) {
    if (used.has(first)) continue;
    const round: Segment[] = [];
    for (let i = first; ; ) {
      const piece = pieces[i]!;
      used.add(i);
      round.push(piece.segment);
      const ways = (leaving.get(piece.to) ?? []).filter((n) => n === first || !used.has(n));
      if (ways.length === 0) return { kind: 'broken', at: piece.segment.to };
      const next = ways.reduce((a, b) => (isMoreLeft(piece.segment, pieces[b]!.segment, pieces[a]!.segment) ? b : a));
      if (next === first) break;
      i = next;
    }
    rounds.push(round);
  }
  return { kind: 'rounds', rounds };
};

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
