/** Polylines of straight and round pieces: a bulge belongs to the vertex it starts from. */
import { fromBulge } from '../../geometry/bulge.ts';
import type { Point, Segment } from '../../geometry/segment.ts';

export interface Vertex extends Point {
  /** Tangent of a quarter of the angle that the piece to the next vertex sweeps; positive turns counter-clockwise, 0 is straight. */
  readonly bulge: number;
}

/**
 * The pieces of a polyline. The bulge of the last vertex counts only in a closed one. A closed polyline whose last vertex
 * repeats the first has no closing piece; all other pieces are kept, also those without length.
 */
export const polylinePieces = (vertices: readonly Vertex[], closed: boolean): readonly Segment[] => {
  const pieces: Segment[] = [];
  const points = vertices.map((v): Point => ({ x: v.x, y: v.y }));
  for (let i = 0; i + 1 < points.length; i++) pieces.push(fromBulge(points[i]!, points[i + 1]!, vertices[i]!.bulge));
  const [first, last] = [points[0], points.at(-1)];
  if (closed && first !== undefined && last !== undefined && points.length > 1 && (first.x !== last.x || first.y !== last.y))
    pieces.push(fromBulge(last, first, vertices.at(-1)!.bulge));
  return pieces;
};
