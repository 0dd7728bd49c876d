/** The plate as a grid of cells on which grown pieces are laid, and every kind of piece in the same cells. */
import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { reverseChain } from '../../geometry/chain.ts';
import type { Contour } from '../../geometry/contour.ts';
import { coverOf } from '../cover.ts';
import { type Prepared, rectangleOf } from '../prepared.ts';
import { type Cell, cellsOf, type Grid, type Spans, spansOf } from '../spans.ts';
import { type Turned, turnedWays } from '../turned-kinds.ts';
import { type Floor, floorOf } from './floor.ts';

export interface PlateGround {
  readonly grid: Grid;
  /** The empty plate. */
  readonly floor: Floor;
  /** The cells on which nothing may lie. */
  readonly taken: Spans;
  /** mm² of the free contours under zones, as far as whole cells show it: never too much. */
  readonly blockedArea: number;
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

export const groundOf = ({ free, zones, kinds }: Prepared): PlateGround => {
  const bounds = mergedBounds(free.map(boundsOfChain));
  const [width, height] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  const rough = cellFor(width, height, smallestOf(kinds.map((k) => k.grown.outer)));
  const [wide, high] = [Math.ceil(width / rough.wide - 1e-6), Math.ceil(height / rough.high - 1e-6)];
  // The cells fill the plate exactly, so that a piece as large as the plate has room.
  const cell = { wide: width / wide, high: height / high };
  const grid: Grid = {
    x: bounds.minX,
    y: bounds.minY,
    cell,
    wide,
    high,
  };
  const cells = takenCells(free, zones, grid);
  return {
    grid,
    floor: floorOf(cells, grid),
    taken: spansOf(cells, grid),
    blockedArea: blockedCells(free, zones, grid) * cell.wide * cell.high,
    ways: kinds.map((kind) => turnedWays(kind, cell)),
  };
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
  const cells = outsideOf(free, grid);
  for (const zone of zones)
    cellsOf([coverOf(zone, error)], grid).forEach((is, i) => {
      if (is === 1) cells[i] = 1;
    });
  return cells;
};

/** The plate with as much again of free plate to its right, where pieces may lie until they are pressed into the plate. */
export const stretched = (ground: PlateGround): PlateGround => {
  const { grid, floor } = ground;
  const longer = { ...grid, wide: 2 * grid.wide };
  const cells = new Uint8Array(longer.wide * grid.high);
  for (let row = 0; row < grid.high; row += 1)
    for (let x = 0; x < grid.wide; x += 1) cells[row * longer.wide + x] = floor.blocked[row * (grid.wide + 1) + x] === x ? 1 : 0;
  return { ...ground, grid: longer, floor: floorOf(cells, longer), taken: spansOf(cells, longer) };
};

/** The cells that anything outside these contours touches. */
const outsideOf = (contours: readonly Contour[], grid: Grid): Uint8Array => {
  const { x, y, cell, wide, high } = grid;
  const around = { minX: x - cell.wide, minY: y - cell.high, maxX: x + (wide + 1) * cell.wide, maxY: y + (high + 1) * cell.high };
  return cellsOf(
    [rectangleOf(around), ...contours.map(reverseChain)].map((c) => coverOf(c, cell.wide / 8)),
    grid,
  );
};

/** Cells that lie wholly inside a zone and wholly inside the free contours. */
const blockedCells = (free: Prepared['free'], zones: Prepared['zones'], grid: Grid): number => {
  if (zones.length === 0) return 0;
  const off = outsideOf(free, grid);
  const inZone = new Uint8Array(off.length);
  for (const zone of zones) {
    const outside = outsideOf([zone], grid);
    for (let i = 0; i < inZone.length; i += 1) if (outside[i] === 0 && off[i] === 0) inZone[i] = 1;
  }
  return inZone.reduce((sum, is) => sum + is, 0);
};

/** What is added to a place of the drawing, once it is turned, for the turned kind to lie with its lower left cell at (x, y). */
export const moveTo = ({ grid }: PlateGround, turned: Turned, x: number, y: number): { readonly x: number; readonly y: number } => ({
  x: grid.x + x * grid.cell.wide - turned.bounds.minX,
  y: grid.y + y * grid.cell.high - turned.bounds.minY,
});
