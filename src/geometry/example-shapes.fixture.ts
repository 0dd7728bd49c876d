/** Contours made from plain lists of numbers, for tests and trials: the same numbers give the same shape. */
import { there } from '../../test/there.ts';
import { fromBulge } from './bulge.ts';
import type { Contour } from './contour.ts';
import { contour } from './contour.ts';
import type { Point } from './segment.ts';
import { circle, samePoint } from './segment.ts';

/** A corner of a polyline: the bulge belongs to the segment that leaves it. */
export interface BulgedPoint extends Point {
  readonly bulge: number;
}

/** Equal corners one after the other make no segment. */
export const polyline = (corners: readonly BulgedPoint[]): Contour =>
  contour(
    corners
      .map((c, i) => fromBulge(bare(c), bare(there(corners[(i + 1) % corners.length])), c.bulge))
      .filter((s) => !samePoint(s.from, s.to)),
  );

export const polygon = (corners: readonly (readonly [number, number])[]): Contour =>
  polyline(corners.map(([x, y]) => ({ x, y, bulge: 0 })));

export const rectangle = (width: number, height: number): Contour =>
  polygon([
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ]);

export const roundedRectangle = (width: number, height: number, radius: number): Contour => {
  const b = Math.SQRT2 - 1;
  return polyline([
    { x: radius, y: 0, bulge: 0 },
    { x: width - radius, y: 0, bulge: b },
    { x: width, y: radius, bulge: 0 },
    { x: width, y: height - radius, bulge: b },
    { x: width - radius, y: height, bulge: 0 },
    { x: radius, y: height, bulge: b },
    { x: 0, y: height - radius, bulge: 0 },
    { x: 0, y: radius, bulge: b },
  ]);
};

export const disc = (x: number, y: number, radius: number): Contour => contour([circle({ x, y }, radius)]);

/** Corners on rays from the origin at equal angles, counter-clockwise: with small bulges it never crosses itself. */
export const star = (radii: readonly number[], bulges: readonly number[]): Contour =>
  polyline(
    radii.map((r, i) => {
      const angle = (2 * Math.PI * i) / radii.length;
      return { x: r * Math.cos(angle), y: r * Math.sin(angle), bulge: there(bulges[i % bulges.length]) };
    }),
  );

const bare = (p: Point): Point => ({ x: p.x, y: p.y });
