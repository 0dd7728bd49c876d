/**
 * Lines and arcs laid out flat in one array of numbers, which the inner loops of the offset run over. It runs over long arrays of plain
 * numbers: `!` stands where one of those is read.
 */

/**
 * Eight numbers for each curve: both ends, then for a line its unit direction and 0, for an arc its centre and radius, and
 * the length. Arcs here never sweep more than `WIDEST_ARC`, so that cross products alone tell whether a direction is in one.
 */
export interface Curves {
  count: number;
  readonly data: Float64Array;
  /** mm: what rounding may do to a place on a curve of ordinary size, with a reserve. */
  readonly rounding: number;
  /** 0 for a line, 1 for a counter-clockwise arc, -1 for a clockwise one. */
  readonly turn: Int8Array;
  /** The curve that starts where this one ends, or -1 where the end is loose; and the same backwards. */
  readonly next: Int32Array;
  readonly previous: Int32Array;
  /** Which curve of the input it comes from: neighbours with the same origin are one curve cut in two. */
  readonly origin: Int32Array;
}

export const STRIDE = 8;
/** Places of the numbers in a curve's eight; x of the start is the first. A line keeps its direction in the places of an arc's centre. */
export const AY = 1;
export const BX = 2;
export const BY = 3;
export const CX = 4;
export const CY = 5;
export const RADIUS = 6;
export const LENGTH = 7;

/** Rad: wider arcs are cut into equal parts. Below pi by enough that a direction opposite to an arc is never taken for one in it. */
export const WIDEST_ARC = 2.6;

export const emptyCurves = (room: number, rounding: number): Curves => ({
  count: 0,
  rounding,
  data: new Float64Array(room * STRIDE),
  turn: new Int8Array(room),
  next: new Int32Array(room).fill(-1),
  previous: new Int32Array(room).fill(-1),
  origin: new Int32Array(room),
});

/** Adds a line and returns its number. */
export const addLine = (curves: Curves, ax: number, ay: number, bx: number, by: number, origin: number): number => {
  const i = curves.count++;
  const o = i * STRIDE;
  const d = curves.data;
  const dx = bx - ax;
  const dy = by - ay;
  const length = Math.sqrt(dx * dx + dy * dy);
  d[o] = ax;
  d[o + AY] = ay;
  d[o + BX] = bx;
  d[o + BY] = by;
  d[o + CX] = dx / length;
  d[o + CY] = dy / length;
  d[o + LENGTH] = length;
  curves.origin[i] = origin;
  return i;
};

/** Adds an arc about (cx, cy) that sweeps less than half a turn, and returns its number. */
export const addArc = (
  curves: Curves,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  radius: number,
  turn: number,
  origin: number,
): number => {
  const i = curves.count++;
  const o = i * STRIDE;
  const d = curves.data;
  d[o] = ax;
  d[o + AY] = ay;
  d[o + BX] = bx;
  d[o + BY] = by;
  d[o + CX] = cx;
  d[o + CY] = cy;
  d[o + RADIUS] = radius;
  d[o + LENGTH] = radius * angleBetween(ax - cx, ay - cy, bx - cx, by - cy);
  curves.turn[i] = turn;
  curves.origin[i] = origin;
  return i;
};

/** Says that the second curve goes on where the first one ends. */
export const join = (curves: Curves, first: number, second: number): void => {
  curves.next[first] = second;
  curves.previous[second] = first;
};

/** The angle between two directions, 0 to pi. */
const angleBetween = (ux: number, uy: number, vx: number, vy: number): number => Math.atan2(Math.abs(ux * vy - uy * vx), ux * vx + uy * vy);

/** Direction of travel at the start of a curve, written to `out[at]` and `out[at + 1]`. */
export const startDirection = (curves: Curves, i: number, out: Float64Array, at: number): void =>
  directionAt(curves, i, curves.data[i * STRIDE]!, curves.data[i * STRIDE + AY]!, out, at);

/** Direction of travel at the end of a curve. */
export const endDirection = (curves: Curves, i: number, out: Float64Array, at: number): void =>
  directionAt(curves, i, curves.data[i * STRIDE + BX]!, curves.data[i * STRIDE + BY]!, out, at);

const directionAt = (curves: Curves, i: number, x: number, y: number, out: Float64Array, at: number): void => {
  const o = i * STRIDE;
  const turn = curves.turn[i]!;
  const cx = curves.data[o + CX]!;
  const cy = curves.data[o + CY]!;
  if (turn === 0) {
    out[at] = cx;
    out[at + 1] = cy;
    return;
  }
  const dx = x - cx;
  const dy = y - cy;
  const scale = turn / Math.sqrt(dx * dx + dy * dy);
  out[at] = -dy * scale;
  out[at + 1] = dx * scale;
};

/** How much a curve bends to the left, 1/mm. */
export const bendOf = (curves: Curves, i: number): number =>
  curves.turn[i] === 0 ? 0 : curves.turn[i]! / curves.data[i * STRIDE + RADIUS]!;

/** Whether (wx, wy), seen from the centre of an arc, lies in its sweep; `slack` is a cross product, length times radius. */
export const inSweep = (curves: Curves, i: number, wx: number, wy: number, slack: number): boolean => {
  const o = i * STRIDE;
  const d = curves.data;
  const turn = curves.turn[i]!;
  const cx = d[o + CX]!;
  const cy = d[o + CY]!;
  if (turn * ((d[o]! - cx) * wy - (d[o + AY]! - cy) * wx) < -slack) return false;
  return turn * (wx * (d[o + BY]! - cy) - wy * (d[o + BX]! - cx)) >= -slack;
};
