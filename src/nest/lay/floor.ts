/**
 * The plate as a floor of cells on which pieces are laid: what is still free, and the lowest free place for a piece. It is asked for
 * millions of rows, so cells are numbers in long arrays: `!` stands where one of those is read.
 */

import type { CountedWork } from '../counted-work.ts';
import type { Grid, Spans } from '../spans.ts';

/** Changes as pieces are laid on it. In both tables a row has one entry more than cells, a blocked one beyond the end. */
export interface Floor {
  readonly grid: Grid;
  /** The first blocked cell at or after each cell of a row. */
  readonly blocked: Int16Array;
  /** The first free cell at or after each cell of a row. */
  readonly free: Int16Array;
}

export const floorOf = (cells: Uint8Array, grid: Grid): Floor => {
  const floor = { grid, blocked: new Int16Array((grid.wide + 1) * grid.high), free: new Int16Array((grid.wide + 1) * grid.high) };
  for (let row = 0; row < grid.high; row += 1) {
    const start = row * (grid.wide + 1);
    for (let x = grid.wide - 1; x >= 0; x -= 1) floor.blocked[start + x] = cells[row * grid.wide + x]!;
    tally(floor, row, (x) => floor.blocked[start + x] === 1);
  }
  return floor;
};

export const copyOf = ({ grid, blocked, free }: Floor): Floor => ({ grid, blocked: blocked.slice(), free: free.slice() });

/** Fills both tables of a row from its end. */
const tally = ({ grid: { wide }, blocked, free }: Floor, row: number, isBlocked: (x: number) => boolean): void => {
  const start = row * (wide + 1);
  blocked[start + wide] = wide;
  free[start + wide] = wide + 1;
  for (let x = wide - 1; x >= 0; x -= 1) {
    if (isBlocked(x)) {
      blocked[start + x] = x;
      free[start + x] = free[start + x + 1]!;
    } else {
      blocked[start + x] = blocked[start + x + 1]!;
      free[start + x] = x;
    }
  }
};

/** Lays a piece with its lower left cell at (x, y). */
export const lay = (floor: Floor, spans: Spans, x: number, y: number): void => {
  for (let k = 0; k < spans.rows.length; k += 1) block(floor, y + spans.rows[k]!, x + spans.from[k]!, x + spans.to[k]!);
};

/** Blocks the cells from `from` up to `to` of a row; only what lies before them learns of it. */
const block = ({ grid: { wide }, blocked, free }: Floor, row: number, from: number, to: number): void => {
  const start = row * (wide + 1);
  const end = free[start + to]!;
  for (let x = to - 1; x >= from; x -= 1) {
    blocked[start + x] = x;
    free[start + x] = end;
  }
  let x = from - 1;
  for (; x >= 0 && blocked[start + x] === x; x -= 1) free[start + x] = end;
  for (; x >= 0 && blocked[start + x]! > from; x -= 1) blocked[start + x] = from;
};

/**
 * The first x at or after `x` and at most `most` at which the piece is free in row `y`; above `most` when there is none. A span
 * that meets a blocked run must begin after it, so the whole run is jumped.
 */
export const firstFree = (floor: Floor, { rows, from, to }: Spans, x: number, y: number, most: number, work: CountedWork): number => {
  const { blocked, free } = floor;
  const stride = floor.grid.wide + 1;
  const count = rows.length;
  let at = x;
  let clear = 0;
  let k = 0;
  let looked = 0;
  while (clear < count && at <= most) {
    looked += 1;
    const start = (y + rows[k]!) * stride;
    const hit = blocked[start + at + from[k]!]!;
    if (hit < at + to[k]!) {
      at = free[start + hit]! - from[k]!;
      clear = 0;
    } else {
      clear += 1;
      k = k + 1 === count ? 0 : k + 1;
    }
  }
  work.done += looked;
  return at;
};
