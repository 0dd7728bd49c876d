/**
 * Joins the ends of pieces that rounding kept apart: the last resort where crossings at almost no angle could not be placed. It runs over
 * long arrays of plain numbers: `!` stands where one of those is read.
 */
import type { BurialGround } from '../flat/burial.ts';
import type { Crossings, Order } from '../flat/curve-crossings.ts';
import type { Curves } from '../flat/curves.ts';
import { AY, BX, BY, STRIDE } from '../flat/curves.ts';
import type { Pieces } from './parallel-pieces.ts';
import { closesUp, isMiddleBuried } from './parallel-pieces.ts';

/** mm: ends nearer to each other than this are joined. A fifth of the accuracy promised. */
const NEAR = 2e-7;

/** More open ends than this are no hairs but a fault. */
const MANY = 64;

/**
 * Tries to close the kept pieces. Where source corners lie within a hair of each other, or a turn is of some 1e-8 rad, two
 * parallel curves run so nearly together that arithmetic misses their crossing, and both would end in nothing. Pieces with
 * a loose end may then be needed too. Says whether all kept pieces now form loops.
 */
export const joinLoose = (curves: Curves, crossings: Crossings, order: Order, ground: BurialGround, pieces: Pieces): boolean => {
  const spare = keepLoosePieces(curves, crossings, order, ground, pieces);
  const followed = new Uint8Array(pieces.count);
  const ends: number[] = [];
  for (let k = 0; k < pieces.count; k++) {
    if (pieces.kept[k] === 0) continue;
    const next = pieces.next[k]!;
    if (next >= 0 && pieces.kept[next] === 1) followed[next] = 1;
    else ends.push(k);
  }
  const starts: number[] = [];
  for (let k = 0; k < pieces.count; k++) if (pieces.kept[k] === 1 && followed[k] === 0) starts.push(k);
  if (ends.length > MANY || starts.length > MANY) return false;
  for (const k of ends) {
    const near = starts.filter((s) => apart(curves, crossings, order, pieces, k, s) < NEAR);
    if (near.length === 1) {
      pieces.next[k] = near[0]!;
      starts.splice(starts.indexOf(near[0]!), 1);
    } else if (spare.has(k)) pieces.kept[k] = 0;
  }
  for (const s of starts) if (spare.has(s)) pieces.kept[s] = 0;
  return closesUp(pieces);
};

/** Keeps, for the time being, pieces with a loose end that are at the full distance. */
const keepLoosePieces = (curves: Curves, crossings: Crossings, order: Order, ground: BurialGround, pieces: Pieces): ReadonlySet<number> => {
  const spare = new Set<number>();
  for (let i = 0; i < curves.count; i++) {
    const from = order.starts[i]!;
    const to = order.starts[i + 1]!;
    const looseStart = curves.previous[i]! < 0 && (from === to || crossings.falls[order.entries[from]!] === 1);
    const looseEnd = curves.next[i]! < 0 && (from === to || crossings.falls[order.entries[to - 1]!] === 0);
    for (const k of [...(looseStart ? [from] : []), ...(looseEnd && !(looseStart && from === to) ? [to] : [])]) {
      if (isMiddleBuried(curves, crossings, order, ground, i, k)) continue;
      pieces.kept[k + i] = 1;
      spare.add(k + i);
    }
  }
  return spare;
};

/** mm between the end of one piece and the start of another. */
const apart = (curves: Curves, crossings: Crossings, order: Order, pieces: Pieces, k: number, s: number): number => {
  const c = pieces.curve[k]!;
  const e = pieces.curve[s]!;
  const after = k - c;
  const before = s - e - 1;
  const d = curves.data;
  const atEnd = after === order.starts[c + 1];
  const atStart = before < order.starts[e]!;
  const x = atEnd ? d[c * STRIDE + BX]! : crossings.x[order.entries[after]! >> 1]!;
  const y = atEnd ? d[c * STRIDE + BY]! : crossings.y[order.entries[after]! >> 1]!;
  const u = atStart ? d[e * STRIDE]! : crossings.x[order.entries[before]! >> 1]!;
  const v = atStart ? d[e * STRIDE + AY]! : crossings.y[order.entries[before]! >> 1]!;
  return Math.hypot(x - u, y - v);
};
