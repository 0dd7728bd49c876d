/** Polylines of straight and round pieces: a bulge belongs to the vertex it starts from. */

import { fromBulge } from '../../geometry/bulge.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { firstItem, lastItem, neighbours, sideBySide } from '../../sequence/sequence.ts';

/**
 * The pieces of a polyline. `bulges[i]` is the tangent of a quarter of the angle that the piece after vertex i sweeps, positive
 * counter-clockwise, 0 for a line; that of the last vertex counts only in a closed polyline. A closed polyline whose last
 * vertex repeats the first has no closing piece; all other pieces are kept, also those without length.
 */
export const polylinePieces = (points: readonly Point[], bulges: readonly number[], closed: boolean): readonly Segment[] => {
  if (points.length < 2) return [];
  const [first, last] = [firstItem(points), lastItem(points)];
  const pieces = sideBySide(neighbours(points), bulges.slice(0, points.length - 1)).map(([[from, to], bulge]) =>
    fromBulge(from, to, bulge),
  );
  return closed && (first.x !== last.x || first.y !== last.y) ? [...pieces, fromBulge(last, first, lastItem(bulges))] : pieces;
};
