/**
 * The raw parallel curves cut at their crossings, and which of the pieces belong to the result. It runs over long arrays of plain
 * numbers: `!` stands where one of those is read.
 */
import type { BurialGround } from '../flat/burial.ts';
import { isBuried } from '../flat/burial.ts';
import type { Crossings, Order } from '../flat/curve-crossings.ts';
import type { Curves } from '../flat/curves.ts';
import { AY, BX, BY, CX, CY, RADIUS, STRIDE } from '../flat/curves.ts';

/**
 * Pieces are numbered along the curves: curve i with m crossings has m + 1 of them, from number `order.starts[i] + i` on.
 */
export interface Pieces {
  readonly count: number;
  /** The curve of each piece. */
  readonly curve: Int32Array;
  /** 1 for pieces of the result. */
  readonly kept: Uint8Array;
  /** The piece that the result goes on with at the end of a piece, -1 at a loose end. */
  readonly next: Int32Array;
}

/**
 * At a crossing each curve passes onto the side of the other where the source lies nearer than the offset: the falling one
 * after the crossing, the rising one before it. Those pieces are lost, as are pieces with a loose end. What remains at a
 * crossing is the way in along the falling curve and the way out along the rising one. Pieces that are not lost at either
 * end are kept if their middle is at the full distance from the whole source: no piece changes that between its ends.
 */
export const piecesOf = (curves: Curves, crossings: Crossings, order: Order, ground: BurialGround): Pieces => {
  const count = curves.count + 2 * crossings.count;
  const pieces = { count, curve: new Int32Array(count), kept: new Uint8Array(count), next: new Int32Array(count) };
  for (let i = 0; i < curves.count; i++) cutCurve(curves, crossings, order, ground, i, pieces);
  return pieces;
};

const cutCurve = (curves: Curves, crossings: Crossings, order: Order, ground: BurialGround, i: number, pieces: Pieces): void => {
  const from = order.starts[i]!;
  const to = order.starts[i + 1]!;
  const after = curves.next[i]!;
  let sound = curves.previous[i]! >= 0;
  for (let k = from; k <= to; k++) {
    const piece = k + i;
    pieces.curve[piece] = i;
    const entry = k < to ? order.entries[k]! : -1;
    const endsWell = entry < 0 ? after >= 0 : crossings.falls[entry] === 1;
    if (entry >= 0) {
      const partner = entry ^ 1;
      pieces.next[piece] = order.places[partner]! + crossings.curve[partner]! + 1;
    } else pieces.next[piece] = after < 0 ? -1 : order.starts[after]! + after;
    if (sound && endsWell && !isMiddleBuried(curves, crossings, order, ground, i, k)) pieces.kept[piece] = 1;
    sound = entry >= 0 && crossings.falls[entry] === 0;
  }
};

/** The question of burial for the middle of the piece before entry k of curve i. */
export const isMiddleBuried = (curves: Curves, crossings: Crossings, order: Order, ground: BurialGround, i: number, k: number): boolean => {
  const d = curves.data;
  const o = i * STRIDE;
  const atStart = k === order.starts[i];
  const atEnd = k === order.starts[i + 1];
  const before = atStart ? 0 : order.entries[k - 1]! >> 1;
  const after = atEnd ? 0 : order.entries[k]! >> 1;
  const ax = atStart ? d[o]! : crossings.x[before]!;
  const ay = atStart ? d[o + AY]! : crossings.y[before]!;
  const bx = atEnd ? d[o + BX]! : crossings.x[after]!;
  const by = atEnd ? d[o + BY]! : crossings.y[after]!;
  if (curves.turn[i] === 0) return isBuried(ground, (ax + bx) / 2, (ay + by) / 2);
  const cx = d[o + CX]!;
  const cy = d[o + CY]!;
  const mx = (ax - cx + (bx - cx)) / 2;
  const my = (ay - cy + (by - cy)) / 2;
  const scale = d[o + RADIUS]! / Math.sqrt(mx * mx + my * my);
  return isBuried(ground, cx + mx * scale, cy + my * scale);
};

/** Whether each kept piece goes on with a kept one. As no two go on with the same one, the kept pieces then form closed loops. */
export const closesUp = (pieces: Pieces): boolean => {
  for (let k = 0; k < pieces.count; k++) {
    if (pieces.kept[k] === 1 && (pieces.next[k]! < 0 || pieces.kept[pieces.next[k]!] === 0)) return false;
  }
  return true;
};

/** Whether a kept piece touches another one, or itself. */
export const touchesItself = (pieces: Pieces, crossings: Crossings, order: Order): boolean => {
  const { touches } = crossings;
  for (let t = 0; t < touches.length; t += 4) {
    if (
      isKeptAt(pieces, crossings, order, touches[t]!, touches[t + 1]!) &&
      isKeptAt(pieces, crossings, order, touches[t + 2]!, touches[t + 3]!)
    )
      return true;
  }
  return false;
};

const isKeptAt = (pieces: Pieces, crossings: Crossings, order: Order, curve: number, along: number): boolean => {
  let k = order.starts[curve]!;
  while (k < order.starts[curve + 1]! && crossings.along[order.entries[k]!]! < along) k++;
  return pieces.kept[k + curve] === 1;
};
