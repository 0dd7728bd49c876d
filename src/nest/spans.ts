/** Shapes as rows of square cells: every cell that a polygon touches or holds, as spans along each row. */

import type { Point } from '../geometry/segment.ts';
import { itemAt, roundPairs } from '../sequence/sequence.ts';

/** Polygons whose left sides together are the shape: an outer one counter-clockwise, holes clockwise. */
export type Polygons = readonly (readonly Point[])[];

/** mm, the sides of a cell. Looks jump over whole runs along x, so that cells may be narrow at little cost; every row costs. */
export interface Cell {
  readonly wide: number;
  readonly high: number;
}

/** Where the cells lie: cell (0, 0) has its lower left corner at (`x`, `y`). */
export interface Grid {
  readonly x: number;
  readonly y: number;
  readonly cell: Cell;
  /** Cells along x and y. */
  readonly wide: number;
  readonly high: number;
}

/** Share of a cell by which a side on the border of two cells may stray into the other by rounding and not touch it. */
const BORDER = 1e-6;

/** The cells of the shape as 1, all others 0, row by row from below. */
export const cellsOf = (polygons: Polygons, grid: Grid): Uint8Array => {
  const cells = new Uint8Array(grid.wide * grid.high);
  const crossings: number[][] = Array.from({ length: grid.high }, () => []);
  for (const polygon of polygons)
    for (const [a, b] of roundPairs(polygon.map((p) => inCells(p, grid)))) {
      touch(cells, grid, a, b);
      cross(crossings, grid, a, b);
    }
  crossings.forEach((xs, row) => {
    xs.sort((p, q) => p - q);
    for (let k = 0; k + 1 < xs.length; k += 2) fillCentres(cells, grid, row, itemAt(xs, k), itemAt(xs, k + 1));
  });
  return cells;
};

const inCells = (p: Point, { x, y, cell }: Grid): Point => ({ x: (p.x - x) / cell.wide, y: (p.y - y) / cell.high });

/** Marks every cell that a side passes through. */
const touch = (cells: Uint8Array, { wide, high }: Grid, a: Point, b: Point): void => {
  const [low, top] = a.y < b.y ? [a, b] : [b, a];
  const first = Math.max(0, Math.floor(low.y + BORDER));
  const last = Math.min(high - 1, Math.ceil(top.y - BORDER) - 1);
  const slope = top.y > low.y ? (top.x - low.x) / (top.y - low.y) : 0;
  for (let row = first; row <= last; row += 1) {
    const x0 = row <= low.y ? low.x : low.x + (row - low.y) * slope;
    const x1 = row + 1 >= top.y ? top.x : low.x + (row + 1 - low.y) * slope;
    const from = Math.max(0, Math.floor(Math.min(x0, x1) + BORDER));
    const to = Math.min(wide, Math.ceil(Math.max(x0, x1) - BORDER));
    if (from < to) cells.fill(1, row * wide + from, row * wide + to);
  }
};

/** Notes where a side crosses the middle of each row. */
const cross = (crossings: number[][], { high }: Grid, a: Point, b: Point): void => {
  if (a.y === b.y) return;
  const [low, top] = a.y < b.y ? [a, b] : [b, a];
  const first = Math.max(0, Math.ceil(low.y - 0.5));
  const last = Math.min(high - 1, Math.ceil(top.y - 0.5) - 1);
  const slope = (top.x - low.x) / (top.y - low.y);
  for (let row = first; row <= last; row += 1) itemAt(crossings, row).push(low.x + (row + 0.5 - low.y) * slope);
};

const fillCentres = (cells: Uint8Array, { wide }: Grid, row: number, x0: number, x1: number): void => {
  const from = Math.max(0, Math.ceil(x0 - 0.5));
  const to = Math.min(wide, Math.ceil(x1 - 0.5));
  if (from < to) cells.fill(1, row * wide + from, row * wide + to);
};

/** The marked cells as spans: `rows[k]`, `from[k]` up to but without `to[k]`. */
export interface Spans {
  readonly wide: number;
  readonly high: number;
  readonly rows: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

export const spansOf = (cells: Uint8Array, { wide, high }: Grid): Spans => {
  const found: number[] = [];
  for (let row = 0; row < high; row += 1)
    for (let x = 0; x < wide; ) {
      const from = cells.indexOf(1, row * wide + x) - row * wide;
      if (from < 0 || from >= wide) break;
      const end = cells.indexOf(0, row * wide + from) - row * wide;
      const to = end < 0 || end > wide ? wide : end;
      found.push(row, from, to);
      x = to;
    }
  const column = (k: number): Int32Array => Int32Array.from({ length: found.length / 3 }, (_, i) => itemAt(found, 3 * i + k));
  return { wide, high, rows: column(0), from: column(1), to: column(2) };
};
