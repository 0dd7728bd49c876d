/** The signed area between a segment and a point. */
import type { Point, Segment } from '../../geometry/segment.ts';

/** Signed area swept by the ray from the origin along a segment. */
export const areaUnder = (segment: Segment, origin: Point): number => {
  const ax = segment.from.x - origin.x;
  const ay = segment.from.y - origin.y;
  const bx = segment.to.x - origin.x;
  const by = segment.to.y - origin.y;
  const triangle = (ax * by - ay * bx) / 2;
  if (segment.kind === 'line') return triangle;
  return triangle + (segment.radius * segment.radius * (segment.sweep - Math.sin(segment.sweep))) / 2;
};
