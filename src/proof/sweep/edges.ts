/**
 * Nearest edge of a set of closed loops, with the side on which a point lies: a square grid over the edges. It is asked for every place of
 * every contour, so edges are numbers in long arrays: `!` stands where one of those is read.
 */
import type { Paths64 } from 'clipper2-ts';
import type { Point } from '../../geometry/segment.ts';
import { UNITS_PER_MM } from './sweep.ts';

/** A set of loops made ready for many questions. Lengths in mm. */
export interface Edges {
  readonly count: number;
  /** Start of each edge; its end is the start of edge `next`. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly next: Int32Array;
  /** Loop that each edge belongs to. */
  readonly loop: Int32Array;
  readonly at: (edge: number) => Point;
  /** Signed distance to the loops: negative inside (left of the edges), positive outside. Infinity when there are none. */
  readonly distance: (x: number, y: number) => number;
}

export const edgesOf = (loops: Paths64): Edges => {
  const count = loops.reduce((n, l) => n + l.length, 0);
  const x = new Float64Array(count);
  const y = new Float64Array(count);
  const next = new Int32Array(count);
  const before = new Int32Array(count);
  const loop = new Int32Array(count);
  let e = 0;
  loops.forEach((points, l) => {
    const first = e;
    for (const p of points) {
      x[e] = p.x / UNITS_PER_MM;
      y[e] = p.y / UNITS_PER_MM;
      next[e] = e + 1;
      before[e] = e - 1;
      loop[e] = l;
      e += 1;
    }
    next[e - 1] = first;
    before[first] = e - 1;
  });
  const shape = { count, x, y, next, before };
  const at = (edge: number): Point => ({ x: x[edge]!, y: y[edge]! });
  return { count, x, y, next, loop, at, distance: count === 0 ? () => Infinity : distanceTo(shape, gridOf(shape)) };
};

interface EdgeNumbers {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly next: Int32Array;
  readonly before: Int32Array;
}

interface Grid {
  readonly lowX: number;
  readonly lowY: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  /** Edges of cell c are items[starts[c]] up to items[starts[c + 1]]. */
  readonly starts: Int32Array;
  readonly items: Int32Array;
}

const gridOf = (shape: EdgeNumbers): Grid => {
  let [lowX, lowY, highX, highY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < shape.count; i += 1) {
    lowX = Math.min(lowX, shape.x[i]!);
    highX = Math.max(highX, shape.x[i]!);
    lowY = Math.min(lowY, shape.y[i]!);
    highY = Math.max(highY, shape.y[i]!);
  }
  const size = Math.max(highX - lowX, highY - lowY, 1e-6);
  const cell = size / Math.max(1, Math.ceil(Math.sqrt(shape.count)));
  const columns = Math.floor((highX - lowX) / cell) + 1;
  const rows = Math.floor((highY - lowY) / cell) + 1;
  const frame = { lowX, lowY, cell, columns, rows };
  const starts = new Int32Array(columns * rows + 1);
  for (let e = 0; e < shape.count; e += 1) alongEdge(shape, frame, e, (c) => (starts[c + 1]! += 1));
  for (let c = 0; c < columns * rows; c += 1) starts[c + 1]! += starts[c]!;
  const items = new Int32Array(starts[columns * rows]!);
  const filled = starts.slice();
  for (let e = 0; e < shape.count; e += 1) alongEdge(shape, frame, e, (c) => (items[filled[c]!++] = e));
  return { ...frame, starts, items };
};

/** Visits the cells of an edge piece by piece, each piece at most a cell long, so a long slanting edge stays in few cells. */
const alongEdge = (shape: EdgeNumbers, grid: Omit<Grid, 'starts' | 'items'>, e: number, visit: (cell: number) => void): void => {
  const [x0, y0] = [(shape.x[e]! - grid.lowX) / grid.cell, (shape.y[e]! - grid.lowY) / grid.cell];
  const n = shape.next[e]!;
  const [x1, y1] = [(shape.x[n]! - grid.lowX) / grid.cell, (shape.y[n]! - grid.lowY) / grid.cell];
  const pieces = Math.max(1, Math.ceil(Math.max(Math.abs(x1 - x0), Math.abs(y1 - y0))));
  for (let i = 0; i < pieces; i += 1) {
    const [a, b] = [i / pieces, (i + 1) / pieces];
    const [px, qx] = [x0 + (x1 - x0) * a, x0 + (x1 - x0) * b];
    const [py, qy] = [y0 + (y1 - y0) * a, y0 + (y1 - y0) * b];
    for (let row = cellIndex(Math.min(py, qy), grid.rows); row <= cellIndex(Math.max(py, qy), grid.rows); row += 1)
      for (let column = cellIndex(Math.min(px, qx), grid.columns); column <= cellIndex(Math.max(px, qx), grid.columns); column += 1)
        visit(row * grid.columns + column);
  }
};

const cellIndex = (v: number, count: number): number => Math.min(Math.max(Math.floor(v), 0), count - 1);

/** Searches square rings of cells round the point; what lies beyond ring k is at least k cells away. */
const distanceTo = (shape: EdgeNumbers, grid: Grid) => {
  const { x: xs, y: ys, next } = shape;
  const { starts, items, cell, columns, rows } = grid;
  return (x: number, y: number): number => {
    const column = cellIndex((x - grid.lowX) / cell, columns);
    const row = cellIndex((y - grid.lowY) / cell, rows);
    let [best, edge, share] = [Infinity, 0, 0];
    for (let ring = 0; ring < columns + rows; ring += 1) {
      for (let r = Math.max(row - ring, 0); r <= Math.min(row + ring, rows - 1); r += 1) {
        const whole = r === row - ring || r === row + ring;
        for (let c = column - ring; c <= column + ring; c += whole || ring === 0 ? 1 : 2 * ring) {
          if (c < 0 || c >= columns) continue;
          for (let i = starts[r * columns + c]!; i < starts[r * columns + c + 1]!; i += 1) {
            const e = items[i]!;
            const [ax, ay] = [xs[e]!, ys[e]!];
            const [dx, dy] = [xs[next[e]!]! - ax, ys[next[e]!]! - ay];
            const square = dx * dx + dy * dy;
            const t = square === 0 ? 0 : Math.min(Math.max(((x - ax) * dx + (y - ay) * dy) / square, 0), 1);
            const [ex, ey] = [ax + t * dx - x, ay + t * dy - y];
            const d = ex * ex + ey * ey;
            if (d < best) [best, edge, share] = [d, e, t];
          }
        }
      }
      if (best <= (ring * cell) ** 2) break;
    }
    return Math.sqrt(best) * sideOf(shape, edge, share, x, y);
  };
};

/** -1 left of the nearest edge, 1 right of it; at a vertex the mean of the two normals decides. */
const sideOf = (shape: EdgeNumbers, edge: number, share: number, x: number, y: number): 1 | -1 => {
  const { x: xs, y: ys, next, before } = shape;
  if (share > 0 && share < 1) return leftness(xs, ys, edge, next[edge]!, x, y) > 0 ? -1 : 1;
  const v = share === 0 ? edge : next[edge]!;
  const into = normal(xs, ys, before[v]!, v);
  const out = normal(xs, ys, v, next[v]!);
  return (x - xs[v]!) * (into[0] + out[0]) + (y - ys[v]!) * (into[1] + out[1]) > 0 ? -1 : 1;
};

const leftness = (xs: Float64Array, ys: Float64Array, a: number, b: number, x: number, y: number): number =>
  (xs[b]! - xs[a]!) * (y - ys[a]!) - (ys[b]! - ys[a]!) * (x - xs[a]!);

/** Unit normal to the left. */
const normal = (xs: Float64Array, ys: Float64Array, a: number, b: number): readonly [number, number] => {
  const [dx, dy] = [xs[b]! - xs[a]!, ys[b]! - ys[a]!];
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  return [-dy / length, dx / length];
};
