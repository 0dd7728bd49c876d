/**
 * Pieces on the grid that may overlap for the time being, and where one of them would overlap the others least. Along a row the
 * overlap of two spans is a trapezoid over the shift between them; noted by its four bends, the sum of all trapezoids is had for
 * every shift at once by adding up twice. That is done millions of times on long rows of numbers: `!` stands where one of those is read.
 */

import type { CountedWork } from '../counted-work.ts';
import type { Grid, Spans } from '../spans.ts';

/** A piece with the ways in which it may lie. */
export interface Item {
  readonly ways: readonly Spans[];
}

/** Where a piece lies: which way, and its lower left cell. */
export interface CellPlace {
  readonly way: number;
  readonly x: number;
  readonly y: number;
}

/** Changes as pieces are put in and taken out. What cannot be laid on is one more piece, numbered after all others, that never moves. */
export interface Crowd {
  readonly grid: Grid;
  readonly items: readonly Item[];
  /** From, to and piece of each span, row by row; `stride` numbers to a row, `filled` of them in use. */
  readonly spans: Int32Array;
  readonly filled: Int32Array;
  readonly stride: number;
  /** How much a cell of overlap counts, by pairs of pieces. */
  readonly weights: Float64Array;
  /** Room for the bends of one row of shifts. */
  readonly bends: Float64Array;
}

export const crowdOf = (grid: Grid, items: readonly Item[], taken: Spans): Crowd => {
  const stride = 3 * [...items.map(mostInRow), spansInFullestRow(taken)].reduce((sum, n) => sum + n, 0);
  const crowd: Crowd = {
    grid,
    items,
    spans: new Int32Array(grid.high * stride),
    filled: new Int32Array(grid.high),
    stride,
    weights: new Float64Array((items.length + 1) ** 2).fill(1),
    bends: new Float64Array(3 * grid.wide + 4),
  };
  add(crowd, taken, items.length, 0, 0);
  return crowd;
};

const mostInRow = ({ ways }: Item): number => Math.max(...ways.map(spansInFullestRow));

const spansInFullestRow = ({ rows, high }: Spans): number => {
  const counts = new Int32Array(high);
  for (const row of rows) counts[row] = counts[row]! + 1;
  return counts.reduce((most, n) => Math.max(most, n), 0);
};

const add = ({ spans, filled, stride }: Crowd, { rows, from, to }: Spans, piece: number, x: number, y: number): void => {
  for (let k = 0; k < rows.length; k += 1) {
    const row = y + rows[k]!;
    const at = row * stride + filled[row]!;
    spans[at] = x + from[k]!;
    spans[at + 1] = x + to[k]!;
    spans[at + 2] = piece;
    filled[row] = filled[row]! + 3;
  }
};

export const putIn = (crowd: Crowd, piece: number, { way, x, y }: CellPlace): void =>
  add(crowd, crowd.items[piece]!.ways[way]!, piece, x, y);

export const takeOut = ({ items, spans, filled, stride }: Crowd, piece: number, { way, y }: CellPlace): void => {
  const end = y + items[piece]!.ways[way]!.high;
  for (let row = y; row < end; row += 1) {
    const start = row * stride;
    let count = filled[row]!;
    for (let q = start; q < start + count; ) {
      if (spans[q + 2] !== piece) q += 3;
      else {
        count -= 3;
        spans.copyWithin(q, start + count, start + count + 3);
      }
    }
    filled[row] = count;
  }
};

/** A spot with its overlap in weighted cells. */
export interface Tried extends CellPlace {
  readonly overlap: number;
}

/** The spot of least overlap in row `y` with all of the piece below column `limit`; the first of several. None where it has no room. */
export const bestInRow = (crowd: Crowd, piece: number, way: number, y: number, limit: number, work: CountedWork): Tried => {
  const spans = crowd.items[piece]!.ways[way]!;
  const last = limit - spans.wide;
  if (last < 0 || y < 0 || y > crowd.grid.high - spans.high) return { way, x: 0, y, overlap: Infinity };
  noteBends(crowd, piece, spans, y, work);
  work.done += (spans.wide + last) / 8;
  return { way, y, ...addUp(crowd.bends, spans.wide, last, crowd.grid.wide) };
};

/** Shifts begin one width of the piece below 0, where nothing overlaps yet. */
const noteBends = (
  { items, spans, filled, stride, weights, bends }: Crowd,
  piece: number,
  shape: Spans,
  y: number,
  work: CountedWork,
): void => {
  const { rows, from, to, wide } = shape;
  const weight = piece * (items.length + 1);
  let seen = 0;
  for (let k = 0; k < rows.length; k += 1) {
    const row = y + rows[k]!;
    const a = from[k]! - wide;
    const b = to[k]! - wide;
    const start = row * stride;
    const end = start + filled[row]!;
    seen += end - start;
    for (let q = start; q < end; q += 3) {
      const w = weights[weight + spans[q + 2]!]!;
      const low = spans[q]!;
      const high = spans[q + 1]!;
      bends[low - b] = bends[low - b]! + w;
      bends[low - a] = bends[low - a]! - w;
      bends[high - b] = bends[high - b]! - w;
      bends[high - a] = bends[high - a]! + w;
    }
  }
  work.done += rows.length + seen / 3;
};

/** Adds the bends up to slopes and the slopes to overlaps, clears them, and keeps the least from x = 0 to `last`. */
const addUp = (bends: Float64Array, before: number, last: number, wide: number): { readonly x: number; readonly overlap: number } => {
  let slope = 0;
  let value = 0;
  for (let i = 0; i < before; i += 1) {
    slope += bends[i]!;
    bends[i] = 0;
    value += slope;
  }
  let least = Infinity;
  let x = 0;
  const end = before + last;
  for (let i = before; i <= end; i += 1) {
    if (value < least) {
      least = value;
      x = i - before;
    }
    slope += bends[i]!;
    bends[i] = 0;
    value += slope;
  }
  bends.fill(0, end + 1, wide + 2 * before + 1);
  // Weights grow by products, so sums that should cancel leave a trace of rounding; a whole cell weighs 1 at least.
  return { x, overlap: least < 0.5 ? 0 : least };
};

/** Cells that each pair of pieces shares, in a square table like the weights. */
export const sharedCells = ({ grid, items, spans, filled, stride }: Crowd, table: Float64Array, work: CountedWork): number => {
  const count = items.length + 1;
  table.fill(0);
  let total = 0;
  for (let row = 0; row < grid.high; row += 1) {
    const end = row * stride + filled[row]!;
    for (let q = row * stride; q < end; q += 3)
      for (let r = q + 3; r < end; r += 3) {
        const shared = Math.min(spans[q + 1]!, spans[r + 1]!) - Math.max(spans[q]!, spans[r]!);
        if (shared <= 0) continue;
        const i = spans[q + 2]!;
        const j = spans[r + 2]!;
        total += shared;
        table[i * count + j] = table[i * count + j]! + shared;
        table[j * count + i] = table[j * count + i]! + shared;
      }
    work.done += filled[row]! / 3;
  }
  return total;
};
