/** Each kind of piece grown by half a web and turned every way it may lie, as polygons and as spans of cells. */
import { regionAreaOf } from '../geometry/area.ts';
import type { Contour, Region } from '../geometry/contour.ts';
import type { Bounds } from '../geometry/measure.ts';
import { rotationOfDegrees, transformChain } from '../geometry/transform.ts';
import { coverOf } from './cover.ts';
import type { Turns } from './nest-question.ts';
import { type Cell, cellsOf, type Grid, type Polygons, type Spans, spansOf } from './spans.ts';

/** A kind of piece as the search sees it. */
export interface PieceKind {
  readonly id: string;
  readonly quantity: number;
  /** As drawn, outline counter-clockwise, holes clockwise. */
  readonly drawn: Region;
  /** Grown by half a web: two pieces keep their web where these do not overlap. */
  readonly grown: Region;
  /** mm² of metal, holes taken off. */
  readonly area: number;
  /** Degrees counter-clockwise from the way it is drawn, 0 first. */
  readonly degrees: readonly number[];
}

/** A kind turned one way. */
export interface Turned {
  readonly degrees: number;
  /** Around the grown shape, about the drawing's origin. */
  readonly polygons: Polygons;
  readonly bounds: Bounds;
  readonly spans: Spans;
}

export const degreesOf = (turns: Turns): readonly number[] => {
  const step = turns === 'none' ? 360 : turns === 'half turns' ? 180 : turns === 'quarter turns' ? 90 : turns.step;
  return Array.from({ length: Math.round(360 / step) }, (_, i) => i * step);
};

export const turnedBy = (kind: PieceKind, degrees: number, cell: Cell): Turned => {
  const polygons = turnedPolygons(kind.grown, degrees, Math.min(cell.wide, cell.high) / 8);
  const bounds = boundsOfPolygons(polygons);
  return { degrees, polygons, bounds, spans: spansIn(polygons, bounds, cell) };
};

/** All ways that give other cells than the ones before: a disc turned is the same disc. */
export const turnedWays = (kind: PieceKind, cell: Cell): readonly Turned[] => {
  const seen = new Set<string>();
  return kind.degrees.flatMap((degrees) => {
    const turned = turnedBy(kind, degrees, cell);
    const key = `${turned.spans.rows} ${turned.spans.from} ${turned.spans.to}`;
    if (seen.has(key)) return [];
    seen.add(key);
    return [turned];
  });
};

export const turnedPolygons = ({ outer, holes }: Region, degrees: number, error: number): Polygons => {
  const turn = rotationOfDegrees(degrees);
  return [outer, ...holes].map((c: Contour) => coverOf(transformChain(turn, c), error));
};

export const boundsOfPolygons = (polygons: Polygons): Bounds => {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of polygons.flat()) {
    minX = Math.min(minX, p.x);
    minY = Math.min(minY, p.y);
    maxX = Math.max(maxX, p.x);
    maxY = Math.max(maxY, p.y);
  }
  return { minX, minY, maxX, maxY };
};

const spansIn = (polygons: Polygons, { minX, minY, maxX, maxY }: Bounds, cell: Cell): Spans => {
  const cells = (length: number, side: number): number => Math.max(1, Math.ceil(length / side - 1e-6));
  const grid: Grid = { x: minX, y: minY, cell, wide: cells(maxX - minX, cell.wide), high: cells(maxY - minY, cell.high) };
  return spansOf(cellsOf(polygons, grid), grid);
};

export const kindOf = (id: string, quantity: number, drawn: Region, grown: Region, turns: Turns): PieceKind => ({
  id,
  quantity,
  drawn,
  grown,
  area: regionAreaOf(drawn),
  degrees: degreesOf(turns),
});
