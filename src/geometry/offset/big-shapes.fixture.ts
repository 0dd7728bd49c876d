/** The four arc-rich shapes that the speed of offsets is measured on. */

import { seeded } from '../../../test/seeded.ts';
import type { Contour } from '../contour.ts';
import type { BulgedPoint } from '../example-shapes.fixture.ts';
import { polyline } from '../example-shapes.fixture.ts';

const polar = (radius: number, turn: number, bulge: number): BulgedPoint => ({
  x: radius * Math.cos(2 * Math.PI * turn),
  y: radius * Math.sin(2 * Math.PI * turn),
  bulge,
});

/** Radius, share of a tooth's pitch, and bulge of the arc that leaves: root, fillet, flank, tip, flank, fillet. */
const TOOTH = [
  [18.8, -0.12, 0.0047],
  [18.8, 0.12, -0.2],
  [19.1, 0.2, 0.05],
  [21, 0.36, 0.011],
  [21, 0.64, 0.05],
  [19.1, 0.8, -0.2],
] as const;

/** 40 teeth of six arcs, some 42 mm across. */
export const gear = (teeth = 40): Contour =>
  polyline(Array.from({ length: teeth }, (_, k) => TOOTH.map(([r, share, bulge]) => polar(r, (k + share) / teeth, bulge))).flat());

/** A ring of outward arcs that meet in sharp inside corners. */
export const scallops = (count = 200): Contour => polyline(Array.from({ length: count }, (_, k) => polar(50, k / count, 0.6)));

/** A ring of arcs that bulge out and in by turns. */
export const wave = (count = 2000): Contour =>
  polyline(Array.from({ length: count }, (_, k) => polar(200, k / count, k % 2 === 0 ? 0.5 : -0.5)));

/** Straight spikes of random length, so slender that an offset buries most of them. */
export const randomStar = (count = 10_000): Contour => {
  const random = seeded(1);
  return polyline(Array.from({ length: count }, (_, k) => polar(75 + 25 * random(), k / count, 0)));
};
