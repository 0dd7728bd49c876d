/** The second, independent polygon library, at whole nanometres, to confirm areas in tests and to measure against. */
import { ClipperOffset, EndType, JoinType, type Path64, type Paths64 } from 'clipper2-ts';
import { there } from '../../../test/there.ts';
import type { Contour } from '../contour.ts';
import { flatten } from '../flatten.ts';

/** Nanometres per millimetre. */
export const NANO = 1e6;

/** A contour as an inscribed polygon in nanometres. */
export const polygonOf = (contour: Contour, chordError: number): Path64 =>
  flatten(contour, chordError).map((p) => ({ x: Math.round(p.x * NANO), y: Math.round(p.y * NANO) }));

export const offsetByLibrary = (polygons: Paths64, growth: number, chordError: number): Paths64 => {
  const engine = new ClipperOffset(2, chordError * NANO);
  engine.addPaths(polygons, JoinType.Round, EndType.Polygon);
  const solution: Paths64 = [];
  engine.execute(growth * NANO, solution);
  return solution;
};

export const areaOfPolygons = (polygons: Paths64): number => polygons.reduce((sum, p) => sum + areaOfPolygon(p), 0);

/** mm², positive counter-clockwise. */
const areaOfPolygon = (polygon: Path64): number => {
  let twice = 0;
  const o = there(polygon[0]);
  for (let i = 0; i < polygon.length; i++) {
    const p = there(polygon[i]);
    const q = there(polygon[(i + 1) % polygon.length]);
    twice += (p.x - o.x) * (q.y - o.y) - (p.y - o.y) * (q.x - o.x);
  }
  return twice / 2 / NANO / NANO;
};
