/**
 * Whether two neighbours of a chain meet once more beside their joint, worked out from the joint itself so that tangency is no trouble.
 * It runs over long arrays of plain numbers: `!` stands where one of those is read.
 */
import type { Curves } from './curves.ts';
import { AY, BX, BY, CX, CY, inSweep, LENGTH, STRIDE } from './curves.ts';
import type { Meetings } from './meet.ts';

/** mm: nearer to the joint than this the second meeting is the joint itself, told apart by rounding only. */
const AT_JOINT = 1e-9;

/** mm: neighbours that fold back on each other overlap when they part by less than this over the shorter one. */
const FOLD = 1e-11;

/**
 * Fills `out` with the second meeting of two curves joined at one end or both, if there is one. Where a hair-short segment
 * between them was left out, as `halfTurns` tells, they do not overlap though they seem to.
 */
export const secondMeeting = (
  curves: Curves,
  i: number,
  j: number,
  halfTurns: Int8Array,
  out: Meetings,
): 'crossing' | 'overlap' | 'none' => {
  const forward = curves.next[i] === j;
  const backward = curves.next[j] === i;
  if (forward) {
    const kind = beside(curves, i, j, backward, halfTurns[i]! !== 0, out);
    if (kind !== 'none') return kind;
  }
  return backward ? beside(curves, j, i, forward, halfTurns[j]! !== 0, out) : 'none';
};

/** `j` follows `i`; `both`: and `i` follows `j`, so that their second meeting may be the other joint. */
const beside = (curves: Curves, i: number, j: number, both: boolean, parted: boolean, out: Meetings): 'crossing' | 'overlap' | 'none' => {
  const d = curves.data;
  const x = d[j * STRIDE]!;
  const y = d[j * STRIDE + AY]!;
  out.count = 0;
  out.touchX = x;
  out.touchY = y;
  if (curves.turn[i] === 0 && curves.turn[j] === 0) return !parted && foldsBack(curves, i, j) ? 'overlap' : 'none';
  if (curves.turn[i] !== 0 && curves.turn[j] !== 0) return arcs(curves, i, j, x, y, both, out);
  const [line, arc] = curves.turn[i] === 0 ? [i, j] : [j, i];
  const away = line === i ? -1 : 1;
  const ux = away * d[line * STRIDE + CX]!;
  const uy = away * d[line * STRIDE + CY]!;
  const along = -2 * (ux * (x - d[arc * STRIDE + CX]!) + uy * (y - d[arc * STRIDE + CY]!));
  if (along < AT_JOINT || along > d[line * STRIDE + LENGTH]!) return 'none';
  return keep(curves, i, j, x + along * ux, y + along * uy, both, out);
};

const foldsBack = (curves: Curves, i: number, j: number): boolean => {
  const d = curves.data;
  const p = i * STRIDE;
  const q = j * STRIDE;
  const dot = d[p + CX]! * d[q + CX]! + d[p + CY]! * d[q + CY]!;
  const cross = d[p + CX]! * d[q + CY]! - d[p + CY]! * d[q + CX]!;
  return dot < 0 && Math.abs(cross) * Math.min(d[p + LENGTH]!, d[q + LENGTH]!) < FOLD;
};

/** Two circles through the joint meet again at its mirror image in the line of their centres. */
const arcs = (
  curves: Curves,
  i: number,
  j: number,
  x: number,
  y: number,
  both: boolean,
  out: Meetings,
): 'crossing' | 'overlap' | 'none' => {
  const d = curves.data;
  const ax = d[i * STRIDE + CX]! - x;
  const ay = d[i * STRIDE + CY]! - y;
  const bx = d[j * STRIDE + CX]! - x;
  const by = d[j * STRIDE + CY]! - y;
  const dx = bx - ax;
  const dy = by - ay;
  const apart = Math.sqrt(dx * dx + dy * dy);
  if (apart < AT_JOINT) return sharesCircle(curves, i, j) ? 'overlap' : 'none';
  const height = (ax * by - ay * bx) / apart;
  if (2 * Math.abs(height) < AT_JOINT) return 'none';
  return keep(curves, i, j, x + (2 * height * dy) / apart, y - (2 * height * dx) / apart, both, out);
};

/** Arcs of one circle overlap when the second turns back, or goes on so far that it comes round to the first. */
const sharesCircle = (curves: Curves, i: number, j: number): boolean => {
  if (curves.turn[i] !== curves.turn[j]) return true;
  const d = curves.data;
  const wx = d[j * STRIDE + BX]! - d[i * STRIDE + CX]!;
  const wy = d[j * STRIDE + BY]! - d[i * STRIDE + CY]!;
  return inSweep(curves, i, wx, wy, -AT_JOINT * Math.hypot(wx, wy));
};

/** Keeps a second meeting if it is on both, and not the other joint. */
const keep = (curves: Curves, i: number, j: number, x: number, y: number, both: boolean, out: Meetings): 'crossing' | 'none' => {
  const d = curves.data;
  if (both && Math.hypot(x - d[i * STRIDE]!, y - d[i * STRIDE + AY]!) < AT_JOINT) return 'none';
  for (const k of [i, j]) {
    if (curves.turn[k] !== 0 && !inSweep(curves, k, x - d[k * STRIDE + CX]!, y - d[k * STRIDE + CY]!, 0)) return 'none';
  }
  out.count = 1;
  out.x[0] = x;
  out.y[0] = y;
  return 'crossing';
};
