/**
 * Follows the kept pieces round into closed loops, draws neighbours of one origin together, and measures each loop. It runs over long
 * arrays of plain numbers: `!` stands where one of those is read.
 */
import { isFilled, type NonEmpty } from '../../sequence/sequence.ts';
import type { Crossings, Order } from '../flat/curve-crossings.ts';
import type { Curves } from '../flat/curves.ts';
import { AY, CX, CY, LENGTH, RADIUS, STRIDE } from '../flat/curves.ts';
import { SHORTEST } from './offset-outcome.ts';
import type { Pieces } from './parallel-pieces.ts';

/** Part of a raw parallel curve in a loop; it starts where the one before ends. */
export interface LoopStretch {
  readonly curve: number;
  /** Where it starts. */
  readonly x: number;
  readonly y: number;
  /** rad travelled, with sign; 0 for a line. */
  readonly sweep: number;
  /** Of its curve. */
  readonly origin: number;
}

export interface Loop {
  readonly stretches: NonEmpty<LoopStretch>;
  readonly area: number;
  readonly length: number;
}

/** All loops, in the order in which the source passes their first pieces. */
export const loopsOf = (curves: Curves, crossings: Crossings, order: Order, pieces: Pieces): readonly Loop[] => {
  const loops: Loop[] = [];
  const seen = new Uint8Array(pieces.count);
  for (let first = 0; first < pieces.count; first++) {
    if (pieces.kept[first] === 0 || seen[first] === 1) continue;
    const round: number[] = [];
    for (let k = first; seen[k] === 0; k = pieces.next[k]!) {
      seen[k] = 1;
      round.push(k);
    }
    const stretches = stretchesOf(curves, crossings, order, pieces, round);
    if (isFilled(stretches)) loops.push(measured(curves, stretches));
  }
  return loops;
};

/** The stretches of one round of pieces, those of one origin made one, hair-short ones left out. */
const stretchesOf = (curves: Curves, crossings: Crossings, order: Order, pieces: Pieces, round: readonly number[]): LoopStretch[] => {
  const start = Math.max(
    0,
    round.findIndex((k, i) => !goesOn(curves, order, pieces, round[(i + round.length - 1) % round.length]!, k)),
  );
  const stretches: LoopStretch[] = [];
  for (let i = 0; i < round.length; i++) {
    const k = round[(start + i) % round.length]!;
    const curve = pieces.curve[k]!;
    const low = alongAt(crossings, order, curve, k - curve - 1, 0);
    const high = alongAt(crossings, order, curve, k - curve, curves.data[curve * STRIDE + LENGTH]!);
    const sweep = curves.turn[curve] === 0 ? 0 : (curves.turn[curve]! * (high - low)) / curves.data[curve * STRIDE + RADIUS]!;
    const last = stretches[stretches.length - 1];
    const before = round[(start + i + round.length - 1) % round.length]!;
    if (last && i > 0 && goesOn(curves, order, pieces, before, k)) {
      stretches[stretches.length - 1] = { ...last, sweep: last.sweep + sweep };
    } else if (high - low >= SHORTEST)
      stretches.push({ curve, ...startOf(curves, crossings, order, k, curve), sweep, origin: curves.origin[curve]! });
  }
  return stretches;
};

/** Whether piece k carries on, over a joint, the same curve of the input as the piece before it. */
const goesOn = (curves: Curves, order: Order, pieces: Pieces, before: number, k: number): boolean => {
  const c = pieces.curve[before]!;
  const e = pieces.curve[k]!;
  if (curves.origin[c] !== curves.origin[e] || curves.turn[c] !== curves.turn[e]) return false;
  return curves.next[c] === e && before === order.starts[c + 1]! + c;
};

/** mm along a curve at one of its entries, or the given end where the number is not of that curve. */
const alongAt = (crossings: Crossings, order: Order, curve: number, k: number, end: number): number =>
  k < order.starts[curve]! || k >= order.starts[curve + 1]! ? end : crossings.along[order.entries[k]!]!;

const startOf = (curves: Curves, crossings: Crossings, order: Order, piece: number, curve: number): { x: number; y: number } => {
  const k = piece - curve - 1;
  if (k < order.starts[curve]!) return { x: curves.data[curve * STRIDE]!, y: curves.data[curve * STRIDE + AY]! };
  const crossing = order.entries[k]! >> 1;
  return { x: crossings.x[crossing]!, y: crossings.y[crossing]! };
};

/** Area by the shoelace of the chords, taken from the first place so that far coordinates do no harm, and a circular segment per arc. */
const measured = (curves: Curves, stretches: NonEmpty<LoopStretch>): Loop => {
  const { x, y } = stretches[0];
  let twice = 0;
  let length = 0;
  for (let i = 0; i < stretches.length; i++) {
    const s = stretches[i]!;
    const t = stretches[(i + 1) % stretches.length]!;
    twice += (s.x - x) * (t.y - y) - (s.y - y) * (t.x - x);
    if (s.sweep === 0) length += Math.hypot(t.x - s.x, t.y - s.y);
    else {
      const radius = curves.data[s.curve * STRIDE + RADIUS]!;
      twice += radius * radius * (s.sweep - Math.sin(s.sweep));
      length += radius * Math.abs(s.sweep);
    }
  }
  return { stretches, area: twice / 2, length };
};

/** Centre and radius of the curve that a stretch lies on, when it is an arc. */
export const circleOf = (curves: Curves, s: LoopStretch): { x: number; y: number; radius: number } => ({
  x: curves.data[s.curve * STRIDE + CX]!,
  y: curves.data[s.curve * STRIDE + CY]!,
  radius: curves.data[s.curve * STRIDE + RADIUS]!,
});
