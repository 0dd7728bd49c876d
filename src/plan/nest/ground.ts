/** The plate as a grid of cells on which grown pieces are laid, and every kind of piece in the same cells. */
import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { reverseChain } from '../../geometry/chain.ts';
import { coverOf } from './cover.ts';
import { type Floor, floorOf } from './floor.ts';
import { type Prepared, rectangleOf } from './prepared.ts';
import { type Cell, cellsOf, type Grid, type Spans, spansOf } from './spans.ts';
import { type Turned, turnedWays } from './turned.ts';

export interface Ground {
  readonly grid: Grid;
  /** The empty plate. */
  readonly floor: Floor;
  /** The cells on which nothing may lie. */
  readonly taken: Spans;
  /** Of each kind all ways to lie. */
  readonly ways: readonly (readonly Turned[])[];
}

/** Rows across a plate: enough that what the cells waste is a hundredth, few enough that a row can be looked through in microseconds. */
const ROWS = 500;
/** Rows of even the smallest piece, though never more than so many across the plate. */
const ROWS_OF_SMALLEST = 12;
const MOST_ROWS = 2000;
/** The tables of a row are 16 bits wide. */
const MOST_COLUMNS = 16_000;

export const groundOf = ({ free, zones, kinds }: Prepared): Ground => {
  const bounds = mergedBounds(free.map(boundsOfChain));
  const cell = cellFor(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY, smallestOf(kinds.map((k) => k.grown.outer)));
  const fit = (length: number, side: number): number => Math.max(1, Math.floor(length / side + 1e-6));
  const grid: Grid = {
    x: bounds.minX,
    y: bounds.minY,
    cell,
    wide: fit(bounds.maxX - bounds.minX, cell.wide),
    high: fit(bounds.maxY - bounds.minY, cell.high),
  };
  const cells = takenCells(free, zones, grid);
  return { grid, floor: floorOf(cells, grid), taken: spansOf(cells, grid), ways: kinds.map((kind) => turnedWays(kind, cell)) };
};

const smallestOf = (outlines: readonly Parameters<typeof boundsOfChain>[0][]): number =>
  Math.min(...outlines.map(boundsOfChain).map((b) => Math.min(b.maxX - b.minX, b.maxY - b.minY)));

/** Cells are half as wide as high: narrow cells waste less and cost little, see `Cell`. */
const cellFor = (width: number, height: number, smallest: number): Cell => {
  const high = Math.max(height / MOST_ROWS, Math.min(height / ROWS, smallest / ROWS_OF_SMALLEST));
  return { high, wide: Math.max(high / 2, width / MOST_COLUMNS) };
};

/** Everything outside the free contours, and the zones. */
const takenCells = (free: Prepared['free'], zones: Prepared['zones'], grid: Grid): Uint8Array => {
  const error = grid.cell.wide / 8;
  const { cell } = grid;
  const around = rectangleOf({
    minX: grid.x - cell.wide,
    minY: grid.y - cell.high,
    maxX: grid.x + (grid.wide + 1) * cell.wide,
    maxY: grid.y + (grid.high + 1) * cell.high,
  });
  const outside = [coverOf(around, error), ...free.map((c) => coverOf(reverseChain(c), error))];
  const cells = cellsOf(outside, grid);
  for (const zone of zones) cellsOf([coverOf(zone, error)], grid).forEach((is, i) => (cells[i] = is === 1 ? 1 : cells[i]!));
  return cells;
};

/** What is added to a place of the drawing, once it is turned, for the turned kind to lie with its lower left cell at (x, y). */
export const moveTo = ({ grid }: Ground, turned: Turned, x: number, y: number): { readonly x: number; readonly y: number } => ({
  x: grid.x + x * grid.cell.wide - turned.bounds.minX,
  y: grid.y + y * grid.cell.high - turned.bounds.minY,
});
