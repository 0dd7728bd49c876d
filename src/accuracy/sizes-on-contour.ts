/** The sizes that can be measured across a contour: its extents, diameters, and the distances of its parallel faces and of its corners. */

import { boundsOfChain } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import { type Arc, distanceBetween, type Line, type Point } from '../geometry/segment.ts';

/** rad: an arc of less is a piece of another curve, an ellipse say, which has no diameter there. */
const LEAST_SWEEP = Math.PI / 4;
/** Faces and corners that are paired, so that a long outline costs no more than a short one. */
const MOST = 120;
/** rad */
const PARALLEL = 1e-4;

/** mm, each once to a thousandth, the smallest first. */
export const sizesOn = (contours: readonly Contour[]): readonly number[] => {
  const sizes = contours.flatMap((c) => {
    const { minX, minY, maxX, maxY } = boundsOfChain(c);
    const lines = c.segments.filter((s): s is Line => s.kind === 'line').slice(0, MOST);
    const arcs = c.segments.filter((s): s is Arc => s.kind === 'arc');
    return [maxX - minX, maxY - minY, ...diametersOf(arcs), ...facesOf(lines), ...distancesOf(lines.map((l) => l.from))];
  });
  return [...new Set(sizes.map((s) => Math.round(s * 1000) / 1000))].filter((s) => s > 0).toSorted((a, b) => a - b);
};

/** Of arcs that go on one after the other about one centre, together. */
const diametersOf = (arcs: readonly Arc[]): readonly number[] => {
  const byCircle = new Map<string, { sweep: number; readonly radius: number }>();
  for (const { centre, radius, sweep } of arcs) {
    const key = [centre.x, centre.y, radius].map((v) => Math.round(v * 1000)).join(' ');
    const known = byCircle.get(key);
    if (known === undefined) byCircle.set(key, { sweep: Math.abs(sweep), radius });
    else known.sweep += Math.abs(sweep);
  }
  return [...byCircle.values()].filter((c) => c.sweep >= LEAST_SWEEP).map((c) => 2 * c.radius);
};

const facesOf = (lines: readonly Line[]): readonly number[] => [
  ...lines.map((l) => distanceBetween(l.from, l.to)),
  ...lines.flatMap((a, i) => lines.slice(i + 1).flatMap((b) => apart(a, b))),
];

const apart = (a: Line, b: Line): readonly number[] => {
  const [ax, ay, bx, by] = [a.to.x - a.from.x, a.to.y - a.from.y, b.to.x - b.from.x, b.to.y - b.from.y];
  const [la, lb] = [Math.hypot(ax, ay), Math.hypot(bx, by)];
  if (la === 0 || lb === 0 || Math.abs((ax * by - ay * bx) / (la * lb)) > PARALLEL) return [];
  return [Math.abs(((b.from.x - a.from.x) * ay - (b.from.y - a.from.y) * ax) / la)];
};

const distancesOf = (points: readonly Point[]): readonly number[] =>
  points.flatMap((p, i) => points.slice(i + 1).map((q) => distanceBetween(p, q)));
