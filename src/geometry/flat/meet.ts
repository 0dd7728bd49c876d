/**
 * Where two flat curves cross, as plain numbers: the inner loop of the offset. It runs over long arrays of plain numbers: `!` stands
 * where one of those is read.
 */
import type { Curves } from './curves.ts';
import { AY, BX, BY, CX, CY, LENGTH, RADIUS, STRIDE } from './curves.ts';

/**
 * What `meet` finds, reused from call to call: up to two crossings, and one touch, a place where the curves come together
 * within rounding without safely crossing, or run along each other.
 */
export interface Meetings {
  count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** mm along the first and the second curve. */
  readonly first: Float64Array;
  readonly second: Float64Array;
  /** 1 where the first curve passes from the left of the second to its right, else -1. */
  readonly way: Int8Array;
  touches: boolean;
  touchX: number;
  touchY: number;
  touchFirst: number;
  touchSecond: number;
}

export const newMeetings = (): Meetings => ({
  count: 0,
  x: new Float64Array(2),
  y: new Float64Array(2),
  first: new Float64Array(2),
  second: new Float64Array(2),
  way: new Int8Array(2),
  touches: false,
  touchX: 0,
  touchY: 0,
  touchFirst: 0,
  touchSecond: 0,
});

/** mm: curves that overlap or part by less than this at a tangency are said to touch: what rounding does, more for large radii. */
const touchOf = (curves: Curves, radii: number): number => curves.rounding + radii * 1e-15;

/** mm: loose ends are taken to go on for this much, so that rounding cannot hide a crossing right at them. */
const LOOSE = 1e-8;

/** mm: curves that lie on each other touch if they do so for more than this. */
const SHARED = 1e-9;

/** All meetings of curves i and j within both of them. */
export const meet = (curves: Curves, i: number, j: number, out: Meetings): void => {
  out.count = 0;
  out.touches = false;
  if (curves.turn[i] === 0) {
    if (curves.turn[j] === 0) lineWithLine(curves, i, j, out);
    else lineWithArc(curves, i, j, false, out);
  } else if (curves.turn[j] === 0) lineWithArc(curves, j, i, true, out);
  else arcWithArc(curves, i, j, out);
};

const slackAtStart = (curves: Curves, i: number): number => (curves.previous[i]! < 0 ? LOOSE : 0);
const slackAtEnd = (curves: Curves, i: number): number => (curves.next[i]! < 0 ? LOOSE : 0);

/** Slack as a cross product: length times radius, and never more than a small angle of a tiny arc. */
const slackAcross = (slack: number, r: number): number => Math.min(slack, 0.1 * r) * r;

/** Whether a place `along` a line lies on it. */
const isOn = (curves: Curves, i: number, along: number): boolean =>
  along >= -slackAtStart(curves, i) && along <= curves.data[i * STRIDE + LENGTH]! + slackAtEnd(curves, i);

const lineWithLine = (curves: Curves, i: number, j: number, out: Meetings): void => {
  const d = curves.data;
  const p = i * STRIDE;
  const q = j * STRIDE;
  const ux = d[p + CX]!;
  const uy = d[p + CY]!;
  const vx = d[q + CX]!;
  const vy = d[q + CY]!;
  const wx = d[q]! - d[p]!;
  const wy = d[q + AY]! - d[p + AY]!;
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) < 1e-12) {
    parallelLines(curves, i, j, out);
    return;
  }
  const first = (wx * vy - wy * vx) / cross;
  if (first < -LOOSE || first > d[p + LENGTH]! + LOOSE) return;
  const second = (wx * uy - wy * ux) / cross;
  if (!isOn(curves, j, second) || !isOn(curves, i, first)) return;
  add(out, d[p]! + first * ux, d[p + AY]! + first * uy, first, second, cross > 0);
};

/** Parallel lines touch where they lie on each other for some length. */
const parallelLines = (curves: Curves, i: number, j: number, out: Meetings): void => {
  const d = curves.data;
  const p = i * STRIDE;
  const q = j * STRIDE;
  const ux = d[p + CX]!;
  const uy = d[p + CY]!;
  const wx = d[q]! - d[p]!;
  const wy = d[q + AY]! - d[p + AY]!;
  if (Math.abs(ux * wy - uy * wx) > touchOf(curves, 0)) return;
  const start = ux * wx + uy * wy;
  const end = ux * (d[q + BX]! - d[p]!) + uy * (d[q + BY]! - d[p + AY]!);
  const low = Math.max(0, Math.min(start, end));
  const high = Math.min(d[p + LENGTH]!, Math.max(start, end));
  if (high - low <= SHARED) return;
  const along = (low + high) / 2;
  touch(out, d[p]! + along * ux, d[p + AY]! + along * uy, along, Math.abs(along - start));
};

/** Line i with arc j; `swapped` when the arc is the first of the pair asked for. */
const lineWithArc = (curves: Curves, i: number, j: number, swapped: boolean, out: Meetings): void => {
  const d = curves.data;
  const p = i * STRIDE;
  const q = j * STRIDE;
  const ux = d[p + CX]!;
  const uy = d[p + CY]!;
  const r = d[q + RADIUS]!;
  const wx = d[q + CX]! - d[p]!;
  const wy = d[q + CY]! - d[p + AY]!;
  const height = ux * wy - uy * wx;
  const room = r - Math.abs(height);
  const near = touchOf(curves, r);
  if (room < -near) return;
  const foot = ux * wx + uy * wy;
  if (room <= near) {
    if (isOn(curves, i, foot)) onLine(curves, i, j, foot, 0, swapped, out);
    return;
  }
  const half = Math.sqrt(room * (r + Math.abs(height)));
  if (isOn(curves, i, foot - half)) onLine(curves, i, j, foot - half, -1, swapped, out);
  if (isOn(curves, i, foot + half)) onLine(curves, i, j, foot + half, 1, swapped, out);
};

/** Keeps a place of line i if it is on arc j too; `side` -1 where the line enters the circle, 1 where it leaves, 0 for a touch. */
const onLine = (curves: Curves, i: number, j: number, along: number, side: number, swapped: boolean, out: Meetings): void => {
  const d = curves.data;
  const p = i * STRIDE;
  const x = d[p]! + along * d[p + CX]!;
  const y = d[p + AY]! + along * d[p + CY]!;
  const onArc = alongArc(curves, j, x, y);
  if (onArc === OFF) return;
  if (side === 0) {
    if (swapped) touch(out, x, y, onArc, along);
    else touch(out, x, y, along, onArc);
    return;
  }
  // The inside of a counter-clockwise arc is its left: a line that enters the circle passes to the left of such an arc.
  const lineFalls = side * curves.turn[j]! > 0;
  if (swapped) add(out, x, y, onArc, along, !lineFalls);
  else add(out, x, y, along, onArc, lineFalls);
};

const OFF = -1;

/** mm along the arc to a place on its circle, or `OFF`. */
const alongArc = (curves: Curves, i: number, x: number, y: number): number => {
  const d = curves.data;
  const o = i * STRIDE;
  const r = d[o + RADIUS]!;
  const wx = x - d[o + CX]!;
  const wy = y - d[o + CY]!;
  const turn = curves.turn[i]!;
  const sx = d[o]! - d[o + CX]!;
  const sy = d[o + AY]! - d[o + CY]!;
  const fromStart = turn * (sx * wy - sy * wx);
  if (fromStart < -slackAcross(slackAtStart(curves, i), r)) return OFF;
  const toEnd = turn * (wx * (d[o + BY]! - d[o + CY]!) - wy * (d[o + BX]! - d[o + CX]!));
  if (toEnd < -slackAcross(slackAtEnd(curves, i), r)) return OFF;
  const along = r * Math.atan2(fromStart, sx * wx + sy * wy);
  return Math.max(along, 0);
};

const arcWithArc = (curves: Curves, i: number, j: number, out: Meetings): void => {
  const d = curves.data;
  const p = i * STRIDE;
  const q = j * STRIDE;
  const r = d[p + RADIUS]!;
  const s = d[q + RADIUS]!;
  const dx = d[q + CX]! - d[p + CX]!;
  const dy = d[q + CY]! - d[p + CY]!;
  const apartSquared = dx * dx + dy * dy;
  const near = touchOf(curves, r + s);
  if (apartSquared > (r + s + near) * (r + s + near)) return;
  const apart = Math.sqrt(apartSquared);
  const outside = r + s - apart;
  const inside = apart - Math.abs(r - s);
  if (inside < -near) return;
  if (apart <= near) {
    concentricArcs(curves, i, j, out);
    return;
  }
  const ux = dx / apart;
  const uy = dy / apart;
  if (outside <= near || inside <= near) {
    const reach = outside <= near || r >= s ? r : -r;
    onArcs(curves, i, j, ux * reach, uy * reach, 0, out);
    return;
  }
  const along = (apart + ((r - s) * (r + s)) / apart) / 2;
  const across = Math.sqrt(Math.max(0, (r - along) * (r + along)));
  onArcs(curves, i, j, ux * along - uy * across, uy * along + ux * across, 1, out);
  onArcs(curves, i, j, ux * along + uy * across, uy * along - ux * across, -1, out);
};

/**
 * Keeps a place, given from the centre of arc i, if it is on both arcs; `side` 1 to the left of the way from centre to
 * centre, -1 to the right, 0 for a touch.
 */
const onArcs = (curves: Curves, i: number, j: number, wx: number, wy: number, side: number, out: Meetings): void => {
  const p = i * STRIDE;
  const x = curves.data[p + CX]! + wx;
  const y = curves.data[p + CY]! + wy;
  const first = alongArc(curves, i, x, y);
  if (first === OFF) return;
  const second = alongArc(curves, j, x, y);
  if (second === OFF) return;
  if (side === 0) touch(out, x, y, first, second);
  else add(out, x, y, first, second, side * curves.turn[i]! * curves.turn[j]! > 0);
};

/** Arcs of one circle touch where they lie on each other: then an end of one lies within the other. */
const concentricArcs = (curves: Curves, i: number, j: number, out: Meetings): void => {
  endWithin(curves, i, j, out, false);
  if (!out.touches) endWithin(curves, j, i, out, true);
};

const endWithin = (curves: Curves, i: number, j: number, out: Meetings, swapped: boolean): void => {
  const d = curves.data;
  for (const end of [0, BX]) {
    const x = d[i * STRIDE + end]!;
    const y = d[i * STRIDE + end + AY]!;
    const along = alongArc(curves, j, x, y);
    if (along <= SHARED || along >= d[j * STRIDE + LENGTH]! - SHARED) continue;
    const own = end === 0 ? 0 : d[i * STRIDE + LENGTH]!;
    if (swapped) touch(out, x, y, along, own);
    else touch(out, x, y, own, along);
  }
};

const add = (out: Meetings, x: number, y: number, first: number, second: number, falls: boolean): void => {
  const k = out.count++;
  out.x[k] = x;
  out.y[k] = y;
  out.first[k] = first;
  out.second[k] = second;
  out.way[k] = falls ? 1 : -1;
};

const touch = (out: Meetings, x: number, y: number, first: number, second: number): void => {
  out.touches = true;
  out.touchX = x;
  out.touchY = y;
  out.touchFirst = first;
  out.touchSecond = second;
};
