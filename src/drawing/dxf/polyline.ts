/** Polylines of straight and round pieces: a bulge belongs to the vertex it starts from. */
import { fromBulge } from '../../geometry/bulge.ts';
import type { Point, Segment } from '../../geometry/segment.ts';

/**
 * The pieces of a polyline. `bulges[i]` is the tangent of a quarter of the angle that the piece after vertex i sweeps, positive
 * counter-clockwise, 0 for a line; that of the last vertex counts only in a closed polyline. A closed polyline whose last
 * vertex repeats the first has no closing piece; all other pieces are kept, also those without length.
 */
export const polylinePieces = (points: readonly Point[], bulges: readonly number[], closed: boolean): readonly Segment[] => {
  const pieces: Segment[] = [];
  const last = points.length - 1;
  for (let i = 0; i < last; i++) pieces.push(fromBulge(points[i]!, points[i + 1]!, bulges[i]!));
  if (closed && last > 0 && (points[0]!.x !== points[last]!.x || points[0]!.y !== points[last]!.y))
    pieces.push(fromBulge(points[last]!, points[0]!, bulges[last]!));
  return pieces;
};
