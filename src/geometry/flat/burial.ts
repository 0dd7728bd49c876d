/**
 * Whether a place lies nearer to the source than the offset, which no place of the result may. It runs over long arrays of plain numbers:
 * `!` stands where one of those is read.
 */
import type { CurveTree, Found, Stack } from './curve-tree.ts';
import { curveTreeOf, newFound, newStack, search } from './curve-tree.ts';
import type { Curves } from './curves.ts';
import { AY, addLine, BX, BY, CX, CY, emptyCurves, inSweep, LENGTH, RADIUS, STRIDE } from './curves.ts';

/** Everything the question needs, made once for an offset. */
export interface BurialGround {
  readonly source: Curves;
  readonly tree: CurveTree;
  /** mm: a place is buried when it is nearer than this to any source curve. */
  readonly limit: number;
  /** Extended corners and a tree over them, see `Parallels.kites`. */
  readonly kites: readonly number[];
  readonly kiteTree: CurveTree;
  /** mm: how deep in a kite a place must lie to be buried. */
  readonly margin: number;
  readonly stack: Stack;
  readonly found: Found;
}

export const groundOf = (source: Curves, tree: CurveTree, distance: number, margin: number, kites: readonly number[]): BurialGround => ({
  source,
  tree,
  limit: distance - margin,
  kites,
  kiteTree: kiteTreeOf(kites),
  margin,
  stack: newStack(),
  found: newFound(),
});

/** A box around each kite: that of its two diagonals. */
const kiteTreeOf = (kites: readonly number[]): CurveTree => {
  const count = kites.length / 8;
  const diagonals = emptyCurves(count, 0);
  for (let k = 0; k < kites.length; k += 8) {
    const xs = [kites[k]!, kites[k + 2]!, kites[k + 4]!, kites[k + 6]!];
    const ys = [kites[k + 1]!, kites[k + 3]!, kites[k + 5]!, kites[k + 7]!];
    addLine(diagonals, Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys), 0);
  }
  return curveTreeOf(diagonals, count, 0);
};

/** Whether the place is buried; `near` is a source curve worth trying first. */
export const isBuried = (ground: BurialGround, x: number, y: number): boolean => {
  const { source, limit, found } = ground;
  search(ground.tree, x - limit, y - limit, x + limit, y + limit, 0, ground.stack, found);
  const squared = limit * limit;
  for (let k = 0; k < found.count; k++) if (distanceSquared(source, found.list[k]!, x, y) < squared) return true;
  return ground.kites.length > 0 && isInKite(ground, x, y);
};

/** The square of the distance from a place to a curve. */
export const distanceSquared = (curves: Curves, i: number, x: number, y: number): number => {
  const d = curves.data;
  const o = i * STRIDE;
  const ax = x - d[o]!;
  const ay = y - d[o + AY]!;
  if (curves.turn[i] === 0) {
    const ux = d[o + CX]!;
    const uy = d[o + CY]!;
    const along = ax * ux + ay * uy;
    if (along > 0 && along < d[o + LENGTH]!) {
      const across = ux * ay - uy * ax;
      return across * across;
    }
  } else {
    const wx = x - d[o + CX]!;
    const wy = y - d[o + CY]!;
    if (inSweep(curves, i, wx, wy, 0)) {
      const off = Math.sqrt(wx * wx + wy * wy) - d[o + RADIUS]!;
      return off * off;
    }
  }
  const bx = x - d[o + BX]!;
  const by = y - d[o + BY]!;
  return Math.min(ax * ax + ay * ay, bx * bx + by * by);
};

/** Whether the place lies in an extended corner, by more than the margin from its four sides. */
const isInKite = (ground: BurialGround, x: number, y: number): boolean => {
  const { kites, found, margin } = ground;
  search(ground.kiteTree, x, y, x, y, 0, ground.stack, found);
  for (let f = 0; f < found.count; f++) {
    const k = found.list[f]! * 8;
    let inside = true;
    for (let side = 0; side < 4 && inside; side++) {
      const p = k + 2 * side;
      const q = k + 2 * ((side + 1) % 4);
      const sx = kites[q]! - kites[p]!;
      const sy = kites[q + 1]! - kites[p + 1]!;
      // The kite is listed clockwise, its inside is right of its sides.
      const right = sy * (x - kites[p]!) - sx * (y - kites[p + 1]!);
      inside = right > margin * Math.hypot(sx, sy);
    }
    if (inside) return true;
  }
  return false;
};
