/** The arcs of SVG paths, given by their ends, half axes and two flags. */
import { arc, line, type Point } from '../../geometry/segment.ts';
import type { Curve } from '../curve/curve.ts';

export interface ArcCommand {
  readonly rX: number;
  readonly rY: number;
  /** Of the first half axis against the x axis, in degrees. */
  readonly xRot: number;
  readonly large: boolean;
  /** Angles grow: clockwise to the eye, because y points down. */
  readonly sweep: boolean;
}

/**
 * From end points to centre, as the implementation notes of the SVG standard give it: half axes without length mean a
 * line, and half axes too short to reach are made just long enough. `from` and `to` must differ. Source: svg-2.
 */
export const pathArc = (from: Point, to: Point, { rX, rY, xRot, large, sweep }: ArcCommand): Curve => {
  let [rx, ry] = [Math.abs(rX), Math.abs(rY)];
  if (rx === 0 || ry === 0) return line(from, to);
  const turn = (xRot * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  // Half the chord, in the axes of the ellipse.
  const hx = (c * (from.x - to.x) + s * (from.y - to.y)) / 2;
  const hy = (c * (from.y - to.y) - s * (from.x - to.x)) / 2;
  const needed = Math.hypot(hx / rx, hy / ry);
  if (needed > 1) [rx, ry] = [rx * needed, ry * needed];
  const reach = (hx / rx) ** 2 + (hy / ry) ** 2;
  const aside = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, 1 / reach - 1));
  const [mx, my] = [(aside * rx * hy) / ry, (-aside * ry * hx) / rx];
  const centre = { x: c * mx - s * my + (from.x + to.x) / 2, y: s * mx + c * my + (from.y + to.y) / 2 };
  const start = Math.atan2((hy - my) / ry, (hx - mx) / rx);
  const end = Math.atan2((-hy - my) / ry, (-hx - mx) / rx);
  let way = end - start;
  if (sweep && way <= 0) way += 2 * Math.PI;
  if (!sweep && way >= 0) way -= 2 * Math.PI;
  if (rx === ry) return arc(from, to, centre, way);
  return { kind: 'ellipse', centre, major: { x: rx * c, y: rx * s }, minor: { x: -ry * s, y: ry * c }, start, end: start + way };
};
