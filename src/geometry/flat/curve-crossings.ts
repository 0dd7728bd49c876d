/**
 * All places where the raw parallel curves cross each other, sorted along each curve. It runs over long arrays of plain numbers: `!`
 * stands where one of those is read.
 */
import type { CurveTree } from './curve-tree.ts';
import { newFound, newStack, search } from './curve-tree.ts';
import type { Curves } from './curves.ts';
import { LENGTH, STRIDE } from './curves.ts';
import type { Meetings } from './meet.ts';
import { meet, newMeetings } from './meet.ts';

/** A list of crossings; entry 2k stands for crossing k on its first curve, entry 2k + 1 for the same on its second. */
export interface Crossings {
  count: number;
  x: Float64Array;
  y: Float64Array;
  /** By entry: the curve, mm along it, and whether the curve falls there: passes from the left of the other to its right. */
  curve: Int32Array;
  along: Float64Array;
  falls: Uint8Array;
  /** Touches, four numbers each: curve and mm along it, for both curves. */
  readonly touches: number[];
}

/** The entries of each curve in order. */
export interface Order {
  /** Where the entries of a curve begin in `entries`; one more number at the end. */
  readonly starts: Int32Array;
  readonly entries: Int32Array;
  /** Where each entry stands in `entries`. */
  readonly places: Int32Array;
}

export const crossingsOf = (curves: Curves, tree: CurveTree): Crossings => {
  const crossings = newCrossings(curves.count);
  const stack = newStack();
  const found = newFound();
  const out = newMeetings();
  const { boxes } = tree;
  for (let i = 0; i < curves.count; i++) {
    const b = i * 4;
    search(tree, boxes[b]!, boxes[b + 1]!, boxes[b + 2]!, boxes[b + 3]!, i + 1, stack, found);
    for (let k = 0; k < found.count; k++) {
      const j = found.list[k]!;
      meet(curves, i, j, out);
      if (out.count > 0 || out.touches) keepMeetings(curves, i, j, out, crossings);
    }
  }
  return crossings;
};

const newCrossings = (curves: number): Crossings => {
  const room = 2 * curves + 16;
  return {
    count: 0,
    x: new Float64Array(room),
    y: new Float64Array(room),
    curve: new Int32Array(2 * room),
    along: new Float64Array(2 * room),
    falls: new Uint8Array(2 * room),
    touches: [],
  };
};

/** mm: neighbours meet at their joint, and within this of it they do not meet again. */
const AT_JOINT = 2e-6;

const keepMeetings = (curves: Curves, i: number, j: number, out: Meetings, crossings: Crossings): void => {
  const follows = curves.next[i] === j;
  const precedes = curves.next[j] === i;
  for (let k = 0; k < out.count; k++) {
    if (follows && isJoint(curves, i, out.first[k]!, out.second[k]!)) continue;
    if (precedes && isJoint(curves, j, out.second[k]!, out.first[k]!)) continue;
    addCrossing(crossings, i, j, out, k);
  }
  if (!out.touches) return;
  if (follows && isJoint(curves, i, out.touchFirst, out.touchSecond)) return;
  if (precedes && isJoint(curves, j, out.touchSecond, out.touchFirst)) return;
  crossings.touches.push(i, out.touchFirst, j, out.touchSecond);
};

const isJoint = (curves: Curves, before: number, alongBefore: number, alongAfter: number): boolean =>
  alongAfter < AT_JOINT && curves.data[before * STRIDE + LENGTH]! - alongBefore < AT_JOINT;

const addCrossing = (crossings: Crossings, i: number, j: number, out: Meetings, k: number): void => {
  if (crossings.count === crossings.x.length) grow(crossings);
  const c = crossings.count++;
  crossings.x[c] = out.x[k]!;
  crossings.y[c] = out.y[k]!;
  crossings.curve[2 * c] = i;
  crossings.curve[2 * c + 1] = j;
  crossings.along[2 * c] = out.first[k]!;
  crossings.along[2 * c + 1] = out.second[k]!;
  crossings.falls[2 * c] = out.way[k]! > 0 ? 1 : 0;
  crossings.falls[2 * c + 1] = out.way[k]! > 0 ? 0 : 1;
};

const grow = (crossings: Crossings): void => {
  const room = crossings.x.length * 2;
  const longer = <A extends Float64Array | Int32Array | Uint8Array>(fresh: A, old: A): A => {
    fresh.set(old);
    return fresh;
  };
  crossings.x = longer(new Float64Array(room), crossings.x);
  crossings.y = longer(new Float64Array(room), crossings.y);
  crossings.curve = longer(new Int32Array(2 * room), crossings.curve);
  crossings.along = longer(new Float64Array(2 * room), crossings.along);
  crossings.falls = longer(new Uint8Array(2 * room), crossings.falls);
};

/** Sorts the entries of each curve along it. */
export const orderOf = (crossings: Crossings, curves: number): Order => {
  const count = 2 * crossings.count;
  const starts = new Int32Array(curves + 1);
  for (let e = 0; e < count; e++) starts[crossings.curve[e]! + 1]!++;
  for (let i = 0; i < curves; i++) starts[i + 1]! += starts[i]!;
  const fill = starts.slice(0, curves);
  const entries = new Int32Array(count);
  for (let e = 0; e < count; e++) entries[fill[crossings.curve[e]!]!++] = e;
  for (let i = 0; i < curves; i++) sortAlong(entries, starts[i]!, starts[i + 1]!, crossings.along);
  const places = new Int32Array(count);
  for (let k = 0; k < count; k++) places[entries[k]!] = k;
  return { starts, entries, places };
};

/** Few entries are sorted by insertion; curves that meet hundreds of others are rare, and get the general sort. */
const sortAlong = (entries: Int32Array, from: number, to: number, along: Float64Array): void => {
  if (to - from > 48) {
    entries.subarray(from, to).sort((p, q) => along[p]! - along[q]!);
    return;
  }
  for (let k = from + 1; k < to; k++) {
    const e = entries[k]!;
    const value = along[e]!;
    let h = k - 1;
    for (; h >= from && along[entries[h]!]! > value; h--) entries[h + 1] = entries[h]!;
    entries[h + 1] = e;
  }
};
