/**
 * Metal on a grid of small squares: when each square is cut, and when it comes loose from the frame. Knows no polygons; it
 * counts squares from the last cut back to the first and looks when loose metal joins the frame again.
 */
import { distanceToSegment } from '../../src/geometry/measure.ts';
import type { Point, Segment } from '../../src/geometry/segment.ts';
import { there } from '../there.ts';

export const NEVER = 1e9;
export const ALWAYS = -1;

export interface RasterCut {
  readonly segment: Segment;
  readonly radius: number;
}

export interface Raster {
  readonly size: number;
  readonly columns: number;
  readonly rows: number;
  readonly low: Point;
  /** Number of the cut that takes the square, ALWAYS outside the block and in holes, NEVER when it stays. */
  readonly cutAt: Int32Array;
  /** Number of the cut after which no metal joins the square to the frame any more; NEVER for the frame. */
  readonly looseAt: Int32Array;
}

interface Ground {
  readonly low: Point;
  readonly high: Point;
  readonly size: number;
  readonly isAir: (x: number, y: number) => boolean;
  /** A place of the frame that the machine holds. */
  readonly frame: Point;
}

export const rasterOf = (cuts: readonly RasterCut[], ground: Ground): Raster => {
  const { low, high, size } = ground;
  const columns = Math.ceil((high.x - low.x) / size);
  const rows = Math.ceil((high.y - low.y) / size);
  const cutAt = new Int32Array(columns * rows).fill(NEVER);
  for (let i = 0; i < columns * rows; i += 1)
    if (ground.isAir(low.x + ((i % columns) + 0.5) * size, low.y + (Math.floor(i / columns) + 0.5) * size)) cutAt[i] = ALWAYS;
  for (const [number, cut] of cuts.entries()) mark(cut, number, { low, size, columns, rows, cutAt });
  return {
    size,
    columns,
    rows,
    low,
    cutAt,
    looseAt: looseTimes(cutAt, columns, rows, cuts.length, squareAt(ground.frame, { low, size, columns, rows })),
  };
};

/** The same squares seen from another square as the frame. */
export const looseFrom = (raster: Raster, square: number, cuts: number): Raster => ({
  ...raster,
  looseAt: looseTimes(raster.cutAt, raster.columns, raster.rows, cuts, square),
});

export const squareAt = (p: Point, r: Pick<Raster, 'low' | 'size' | 'columns' | 'rows'>): number => {
  const column = Math.floor((p.x - r.low.x) / r.size);
  const row = Math.floor((p.y - r.low.y) / r.size);
  return column < 0 || row < 0 || column >= r.columns || row >= r.rows ? -1 : row * r.columns + column;
};

type Grid = Pick<Raster, 'low' | 'size' | 'columns' | 'rows' | 'cutAt'>;

const mark = ({ segment, radius }: RasterCut, number: number, grid: Grid): void => {
  const r = segment.kind === 'arc' ? segment.radius : 0;
  const points =
    segment.kind === 'arc'
      ? [
          segment.from,
          segment.to,
          { x: segment.centre.x - r, y: segment.centre.y - r },
          { x: segment.centre.x + r, y: segment.centre.y + r },
        ]
      : [segment.from, segment.to];
  const column = (x: number): number => Math.floor((x - grid.low.x) / grid.size);
  const row = (y: number): number => Math.floor((y - grid.low.y) / grid.size);
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  const [c0, c1] = [Math.max(0, column(Math.min(...xs) - radius)), Math.min(grid.columns - 1, column(Math.max(...xs) + radius))];
  const [r0, r1] = [Math.max(0, row(Math.min(...ys) - radius)), Math.min(grid.rows - 1, row(Math.max(...ys) + radius))];
  for (let j = r0; j <= r1; j += 1)
    for (let i = c0; i <= c1; i += 1) {
      const at = j * grid.columns + i;
      if (there(grid.cutAt[at]) < number) continue;
      const p = { x: grid.low.x + (i + 0.5) * grid.size, y: grid.low.y + (j + 0.5) * grid.size };
      const d = distanceToSegment(segment, p);
      if (d <= radius) grid.cutAt[at] = number;
      else i += Math.max(0, Math.floor((d - radius) / grid.size) - 1);
    }
};

/** Puts the squares back, the last cut first; metal that joins the frame when cut n is put back was set free by cut n. */
const looseTimes = (cutAt: Int32Array, columns: number, rows: number, cuts: number, frame: number): Int32Array => {
  const looseAt = new Int32Array(columns * rows).fill(ALWAYS);
  const reached = new Uint8Array(columns * rows);
  const byCut: number[][] = Array.from({ length: cuts + 1 }, () => []);
  cutAt.forEach((n, i) => {
    if (n !== ALWAYS) there(byCut[n === NEVER ? cuts : n]).push(i);
  });
  const open = new Int32Array(columns * rows);
  const flood = (from: number, cut: number): void => {
    const whole = cut === cuts;
    let count = 1;
    open[0] = from;
    reached[from] = 1;
    const take = (j: number): void => {
      const at = there(cutAt[j]);
      if (reached[j] === 1 || at === ALWAYS || (whole ? at !== NEVER : at < cut)) return;
      reached[j] = 1;
      open[count] = j;
      count += 1;
    };
    while (count > 0) {
      count -= 1;
      const i = there(open[count]);
      looseAt[i] = whole ? NEVER : cut;
      const column = i % columns;
      if (column > 0) take(i - 1);
      if (column + 1 < columns) take(i + 1);
      if (i >= columns) take(i - columns);
      if (i + columns < reached.length) take(i + columns);
    }
  };
  flood(frame, cuts);
  for (let n = cuts - 1; n >= 0; n -= 1)
    for (const i of there(byCut[n])) if (reached[i] === 0 && neighbours(i, columns, rows).some((j) => reached[j] === 1)) flood(i, n);
  return looseAt;
};

/** Up to four squares beside a square. */
export const neighbours = (i: number, columns: number, rows: number): readonly number[] => {
  const column = i % columns;
  const row = (i - column) / columns;
  const found: number[] = [];
  if (column > 0) found.push(i - 1);
  if (column + 1 < columns) found.push(i + 1);
  if (row > 0) found.push(i - columns);
  if (row + 1 < rows) found.push(i + columns);
  return found;
};

/** Squares that hang together and came loose with the same cut. */
export interface Clump {
  readonly cut: number;
  /** As they came loose; some are cut later. */
  readonly squares: readonly number[];
  /** Sizes of what is left of it in the end, the largest first. */
  readonly left: readonly number[];
}

export const clumpsOf = (raster: Raster): readonly Clump[] => {
  const { cutAt, looseAt } = raster;
  const isLoose = (i: number): boolean => looseAt[i] !== NEVER && looseAt[i] !== ALWAYS && there(cutAt[i]) > there(looseAt[i]);
  return gathered(raster, isLoose, (i, j) => looseAt[i] === looseAt[j]).map((squares) => {
    const own = new Uint8Array(cutAt.length);
    for (const i of squares) if (cutAt[i] === NEVER) own[i] = 1;
    const left = gathered(
      raster,
      (i) => own[i] === 1,
      () => true,
      squares,
    );
    return { cut: there(looseAt[there(squares[0])]), squares, left: left.map((l) => l.length).sort((a, b) => b - a) };
  });
};

const gathered = (
  { cutAt, columns }: Raster,
  counts: (square: number) => boolean,
  together: (a: number, b: number) => boolean,
  among?: readonly number[],
): readonly (readonly number[])[] => {
  const seen = new Uint8Array(cutAt.length);
  const groups: number[][] = [];
  const gather = (start: number): void => {
    if (seen[start] === 1 || !counts(start)) return;
    const group = [start];
    seen[start] = 1;
    const take = (from: number, j: number): void => {
      if (seen[j] === 1 || !counts(j) || !together(from, j)) return;
      seen[j] = 1;
      group.push(j);
    };
    for (let n = 0; n < group.length; n += 1) {
      const i = there(group[n]);
      const column = i % columns;
      if (column > 0) take(i, i - 1);
      if (column + 1 < columns) take(i, i + 1);
      if (i >= columns) take(i, i - columns);
      if (i + columns < seen.length) take(i, i + columns);
    }
    groups.push(group);
  };
  if (among === undefined) for (let i = 0; i < seen.length; i += 1) gather(i);
  else for (const i of among) gather(i);
  return groups;
};
