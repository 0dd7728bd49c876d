/** Splits a group's cuts into chains, each swept in one go: one radius, end to end, and never round a piece and through it again. */

import type { Bounds } from '../../geometry/measure.ts';
import { boundsOf, lengthOf } from '../../geometry/measure.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { WorkCut } from './group-alone.ts';

/** Cuts `first` up to and including `last`. */
export interface CutChain {
  readonly first: number;
  readonly last: number;
}

/** Looking for contacts compares every move of a chain with every other one: longer chains are split. */
const LONGEST = 1500;

/**
 * A chain also ends where the wire comes back to a place it has cut in the same chain: a piece that is set free there is
 * seen before later moves could cut it away.
 */
export const chainsOf = (cuts: readonly WorkCut[]): readonly CutChain[] => {
  const chains: CutChain[] = [];
  let first = 0;
  for (let i = 1; i <= cuts.length; i += 1) {
    if (i < cuts.length && continues(itemAt(cuts, i - 1), itemAt(cuts, i)) && i - first < LONGEST) continue;
    chains.push(...splitAtContacts(cuts, first, i - 1));
    first = i;
  }
  return chains;
};

const continues = (before: WorkCut, cut: WorkCut): boolean =>
  cut.follows &&
  cut.radius === before.radius &&
  near(before.segment.to.x, cut.segment.from.x) &&
  near(before.segment.to.y, cut.segment.from.y);

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-4;

const splitAtContacts = (cuts: readonly WorkCut[], first: number, last: number): readonly CutChain[] => {
  if (first > last) return [];
  const starts = [first];
  const travelled: number[] = [];
  const boxes: Bounds[] = [];
  let length = 0;
  let touching = false;
  for (let i = first; i <= last; i += 1) {
    const { segment, radius } = itemAt(cuts, i);
    const box = boundsOf(segment);
    const touches = boxes.some((b, n) => itemAt(travelled, n) < length - 8 * radius && closer(b, box, 2 * radius));
    if (touches && !touching && i > first) starts.push(i);
    touching = touches;
    length += lengthOf(segment);
    travelled.push(length);
    boxes.push(box);
  }
  return starts.map((start, n) => ({ first: start, last: (starts[n + 1] ?? last + 1) - 1 }));
};

const closer = (a: Bounds, b: Bounds, margin: number): boolean =>
  a.minX - margin <= b.maxX && b.minX - margin <= a.maxX && a.minY - margin <= b.maxY && b.minY - margin <= a.maxY;
