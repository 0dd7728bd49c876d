/** Polygons that lie wholly outside a contour: straight sides stay where they are, arcs are gone round by tangents or cut off by chords. */
import { sineCosine } from '../geometry/angle.ts';
import type { Contour } from '../geometry/contour.ts';
import { pointAt } from '../geometry/measure.ts';
import type { Arc, Point } from '../geometry/segment.ts';

/**
 * Corners of a polygon that holds everything left of the contour, at most `error` mm beyond it. Of an outer contour that runs
 * counter-clockwise it holds the inside; of a hole that runs clockwise it is a smaller hole.
 */
export const coverOf = (contour: Contour, error: number): readonly Point[] =>
  contour.segments.flatMap((s) => (s.kind === 'line' ? [s.from] : s.sweep > 0 ? tangents(s, error) : chords(s, error)));

/** The start of the arc, then the corners of the tangents at places equally far apart. */
const tangents = (arc: Arc, error: number): Point[] => {
  const half = Math.min(Math.acos(arc.radius / (arc.radius + error)), Math.PI / 6);
  const count = Math.ceil(arc.sweep / (2 * half));
  const reach = 1 / sineCosine(arc.sweep / count / 2).cosine;
  const corners = Array.from({ length: count }, (_, i) => {
    const p = pointAt(arc, (i + 0.5) / count);
    return { x: arc.centre.x + (p.x - arc.centre.x) * reach, y: arc.centre.y + (p.y - arc.centre.y) * reach };
  });
  return [arc.from, ...corners];
};

const chords = (arc: Arc, error: number): Point[] => {
  const half = Math.min(Math.acos(Math.max(0, 1 - error / arc.radius)), Math.PI / 6);
  const count = Math.ceil(-arc.sweep / (2 * half));
  return Array.from({ length: count }, (_, i) => pointAt(arc, i / count));
};
