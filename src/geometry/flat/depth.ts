/**
 * How deep inside the laid-out source a place lies. It runs over long arrays of plain numbers: `!` stands where one of those is read.
 */

import { distanceSquared } from './burial.ts';
import type { CurveTree, Found, Stack } from './curve-tree.ts';
import { newFound, newStack, search } from './curve-tree.ts';
import type { Curves } from './curves.ts';
import { AY, BX, BY, CX, CY, RADIUS, STRIDE } from './curves.ts';

export interface Depths {
  readonly source: Curves;
  readonly tree: CurveTree;
  readonly stack: Stack;
  readonly found: Found;
}

export const depthsOf = (source: Curves, tree: CurveTree): Depths => ({ source, tree, stack: newStack(), found: newFound() });

/** mm to the nearest curve of the source, negative outside it. */
export const depthAt = (depths: Depths, x: number, y: number): number => {
  const distance = Math.sqrt(nearestSquared(depths, x, y));
  return isInside(depths, x, y) ? distance : -distance;
};

/** The nearest curve, found by searching boxes of growing size. */
const nearestSquared = (depths: Depths, x: number, y: number): number => {
  const { boxes, starts, levels } = depths.tree;
  const root = starts[levels - 1]! * 4;
  const outside = Math.max(boxes[root]! - x, x - boxes[root + 2]!, boxes[root + 1]! - y, y - boxes[root + 3]!, 0);
  const across = Math.max(boxes[root + 2]! - boxes[root]!, boxes[root + 3]! - boxes[root + 1]!);
  for (let reach = outside + across / 64; ; reach *= 3) {
    search(depths.tree, x - reach, y - reach, x + reach, y + reach, 0, depths.stack, depths.found);
    let best = Infinity;
    for (let k = 0; k < depths.found.count; k++) best = Math.min(best, distanceSquared(depths.source, depths.found.list[k]!, x, y));
    if (best <= reach * reach || depths.found.count === starts[1]) return best;
  }
};

/** Whether the source winds round the place once, counter-clockwise. */
const isInside = (depths: Depths, x: number, y: number): boolean => {
  search(depths.tree, x, y, Infinity, y, 0, depths.stack, depths.found);
  let winding = 0;
  for (let k = 0; k < depths.found.count; k++) winding += turnsOf(depths.source, depths.found.list[k]!, x, y);
  return winding > 0;
};

/** What one curve adds to the winding: 1 or -1 where its chord passes east of the place, and again where the arc over the chord holds it. */
const turnsOf = (curves: Curves, i: number, x: number, y: number): number => {
  const d = curves.data;
  const o = i * STRIDE;
  const ay = d[o + AY]!;
  const by = d[o + BY]!;
  const left = (d[o + BX]! - d[o]!) * (y - ay) - (by - ay) * (x - d[o]!);
  let turns = 0;
  if (ay <= y) {
    if (by > y && left > 0) turns = 1;
  } else if (by <= y && left < 0) turns = -1;
  const turn = curves.turn[i]!;
  if (turn === 0 || left * turn >= 0) return turns;
  const wx = x - d[o + CX]!;
  const wy = y - d[o + CY]!;
  return wx * wx + wy * wy < d[o + RADIUS]! * d[o + RADIUS]! ? turns + turn : turns;
};
