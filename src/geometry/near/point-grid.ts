/** Points in square cells, so that the nearest one left is found without looking at all of them. */
import Flatbush from 'flatbush';
import type { Point } from '../segment.ts';

export interface PointGrid {
  readonly remove: (point: number) => void;
  /** Number of the nearest point not yet removed; there must be one. */
  readonly nearest: (from: Point) => number;
}

interface GridPoint {
  readonly at: Point;
  readonly number: number;
}

export const pointGrid = (points: readonly Point[]): PointGrid => {
  const { minX, minY, size, columns, rows } = cellsFor(points);
  const cells = new Map<number, GridPoint[]>();
  const column = (x: number): number => Math.min(columns - 1, Math.max(0, Math.floor((x - minX) / size)));
  const row = (y: number): number => Math.min(rows - 1, Math.max(0, Math.floor((y - minY) / size)));
  const cellOf = (p: Point): number => row(p.y) * columns + column(p.x);
  points.forEach((at, number) => {
    const held = cells.get(cellOf(at));
    if (held === undefined) cells.set(cellOf(at), [{ at, number }]);
    else held.push({ at, number });
  });
  const nearest = (from: Point): number => {
    const [x, y] = [column(from.x), row(from.y)];
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    // Ring by ring; a point found counts once no nearer one can be in the rings further out.
    for (let ring = 0; ring <= columns + rows && (best < 0 || least > (ring - 1) * size); ring += 1) {
      for (const cell of ringCells(x, y, ring, columns, rows)) {
        for (const { at, number } of cells.get(cell) ?? []) {
          const d = Math.hypot(at.x - from.x, at.y - from.y);
          if (d < least || (d === least && number < best)) [least, best] = [d, number];
        }
      }
    }
    return best;
  };
  const remove = (point: number): void => {
    const cell = cellOf(points[point] as Point);
    cells.set(
      cell,
      (cells.get(cell) ?? []).filter(({ number }) => number !== point),
    );
  };
  return { remove, nearest };
};

const cellsFor = (points: readonly Point[]) => {
  const b = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const p of points) {
    b.minX = Math.min(b.minX, p.x);
    b.minY = Math.min(b.minY, p.y);
    b.maxX = Math.max(b.maxX, p.x);
    b.maxY = Math.max(b.maxY, p.y);
  }
  const [width, height] = [b.maxX - b.minX, b.maxY - b.minY];
  // About two points to a cell, however long and thin the field is.
  const size = Math.max(Math.sqrt((width * height * 2) / points.length), (Math.max(width, height) * 2) / points.length, 1e-6);
  return { minX: b.minX, minY: b.minY, size, columns: Math.floor(width / size) + 1, rows: Math.floor(height / size) + 1 };
};

const ringCells = (x: number, y: number, ring: number, columns: number, rows: number): number[] => {
  const found: number[] = [];
  for (let r = Math.max(0, y - ring); r <= Math.min(rows - 1, y + ring); r += 1) {
    const whole = Math.abs(r - y) === ring;
    for (let c = x - ring; c <= x + ring; c += whole || ring === 0 ? 1 : 2 * ring) {
      if (c >= 0 && c < columns) found.push(r * columns + c);
    }
  }
  return found;
};

/** For each point the numbers of the nearest others, the nearest first. */
export const neighboursOf = (points: readonly Point[], count: number): readonly (readonly number[])[] => {
  const index = new Flatbush(points.length);
  for (const p of points) index.add(p.x, p.y, p.x, p.y);
  index.finish();
  return points.map((p, i) => index.neighbors(p.x, p.y, count + 1).filter((j) => j !== i));
};
