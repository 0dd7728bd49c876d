/**
 * Boxes of curves in a tree that keeps their order along the chain: neighbours in the chain are neighbours in space. It runs over long
 * arrays of plain numbers: `!` stands where one of those is read.
 */
import type { Curves } from './curves.ts';
import { AY, BX, BY, CX, CY, inSweep, RADIUS, STRIDE } from './curves.ts';

/**
 * Level 0 holds one box (four numbers: least x, least y, greatest x, greatest y) for each curve, each level above one for
 * `FAN` boxes below. No sorting is needed, since a chain is an order in space already.
 */
export interface CurveTree {
  readonly boxes: Float64Array;
  /** Number of the first box of each level, and the end of the last level. */
  readonly starts: Int32Array;
  readonly levels: number;
}

const FAN_BITS = 2;
const FAN = 1 << FAN_BITS;

/** The tree over the first `count` curves, with their boxes made wider by `margin`. */
export const curveTreeOf = (curves: Curves, count: number, margin: number): CurveTree => {
  const starts = [0];
  let width = count;
  let total = count;
  while (width > 1) {
    starts.push(total);
    width = (width + FAN - 1) >> FAN_BITS;
    total += width;
  }
  starts.push(total);
  const boxes = new Float64Array(total * 4);
  for (let i = 0; i < count; i++) fillBox(curves, i, boxes, margin);
  for (let level = 1; level < starts.length - 1; level++) joinLevel(boxes, starts[level - 1]!, starts[level]!, starts[level + 1]!);
  return { boxes, starts: Int32Array.from(starts), levels: starts.length - 1 };
};

/** The boxes of one level out of those of the level below. */
const joinLevel = (boxes: Float64Array, below: number, from: number, to: number): void => {
  for (let k = from; k < to; k++) {
    const first = below + ((k - from) << FAN_BITS);
    const last = Math.min(first + FAN, from);
    let x0 = Infinity;
    let y0 = Infinity;
    let x1 = -Infinity;
    let y1 = -Infinity;
    for (let c = first * 4; c < last * 4; c += 4) {
      if (boxes[c]! < x0) x0 = boxes[c]!;
      if (boxes[c + 1]! < y0) y0 = boxes[c + 1]!;
      if (boxes[c + 2]! > x1) x1 = boxes[c + 2]!;
      if (boxes[c + 3]! > y1) y1 = boxes[c + 3]!;
    }
    boxes[k * 4] = x0;
    boxes[k * 4 + 1] = y0;
    boxes[k * 4 + 2] = x1;
    boxes[k * 4 + 3] = y1;
  }
};

const fillBox = (curves: Curves, i: number, boxes: Float64Array, margin: number): void => {
  const o = i * STRIDE;
  const d = curves.data;
  const ax = d[o]!;
  const ay = d[o + AY]!;
  const bx = d[o + BX]!;
  const by = d[o + BY]!;
  let x0 = Math.min(ax, bx);
  let x1 = Math.max(ax, bx);
  let y0 = Math.min(ay, by);
  let y1 = Math.max(ay, by);
  if (curves.turn[i] !== 0) {
    const r = d[o + RADIUS]!;
    const cx = d[o + CX]!;
    const cy = d[o + CY]!;
    if (cx + r > x1 && inSweep(curves, i, r, 0, 0)) x1 = cx + r;
    if (cx - r < x0 && inSweep(curves, i, -r, 0, 0)) x0 = cx - r;
    if (cy + r > y1 && inSweep(curves, i, 0, r, 0)) y1 = cy + r;
    if (cy - r < y0 && inSweep(curves, i, 0, -r, 0)) y0 = cy - r;
  }
  boxes[i * 4] = x0 - margin;
  boxes[i * 4 + 1] = y0 - margin;
  boxes[i * 4 + 2] = x1 + margin;
  boxes[i * 4 + 3] = y1 + margin;
};

/** A list of numbers that grows, reused from query to query. */
export interface Found {
  count: number;
  list: Int32Array;
}

export const newFound = (): Found => ({ count: 0, list: new Int32Array(64) });

const keep = (found: Found, k: number): void => {
  if (found.count === found.list.length) {
    const longer = new Int32Array(found.count * 2);
    longer.set(found.list);
    found.list = longer;
  }
  found.list[found.count++] = k;
};

/** Room for the boxes still to be opened: three brothers on each level at most, and 20 levels hold 10^12 curves. */
export type Stack = Int32Array;
export const newStack = (): Stack => new Int32Array(2 * 4 * 24);

/** All curves with a number of at least `lowest` whose box meets the given one, into `found`. */
export const search = (
  tree: CurveTree,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  lowest: number,
  stack: Stack,
  found: Found,
): void => {
  const { boxes, starts } = tree;
  found.count = 0;
  let top = 0;
  stack[top++] = tree.levels - 1;
  stack[top++] = 0;
  while (top > 0) {
    const k = stack[--top]!;
    const level = stack[--top]!;
    const start = starts[level]!;
    const end = Math.min(k + FAN, starts[level + 1]! - start);
    const shift = level * FAN_BITS;
    // Straight from the first box that holds curves not below the lowest.
    for (let c = Math.max(k, lowest >> shift); c < end; c++) {
      const b = (start + c) * 4;
      if (boxes[b]! > x1 || boxes[b + 2]! < x0 || boxes[b + 1]! > y1 || boxes[b + 3]! < y0) continue;
      if (level === 0) keep(found, c);
      else {
        stack[top++] = level - 1;
        stack[top++] = c << FAN_BITS;
      }
    }
  }
};
