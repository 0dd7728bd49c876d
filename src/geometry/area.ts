/** Length, area, centroid and bounds of chains and regions: the polygon of the chords plus one circular segment per arc. */
import type { Chain, Contour, Region } from './contour.ts';
import type { Bounds } from './measure.ts';
import { boundsOf, lengthOf } from './measure.ts';
import type { Arc, Point, Segment } from './segment.ts';

/** Area in mm², positive when the contour runs counter-clockwise. Exact but for rounding. */
export const areaOf = (contour: Contour): number => {
  const origin = contour.segments[0].from;
  let twice = 0;
  for (const s of contour.segments) {
    twice += (s.from.x - origin.x) * (s.to.y - origin.y) - (s.from.y - origin.y) * (s.to.x - origin.x);
    if (s.kind === 'arc') twice += s.radius * s.radius * lessSine(s.sweep);
  }
  return twice / 2;
};

/** Area in mm² of what is inside the outer contour and outside the holes. */
export const regionAreaOf = (region: Region): number =>
  region.holes.reduce((area, hole) => area - Math.abs(areaOf(hole)), Math.abs(areaOf(region.outer)));

/** Length in mm of all segments. */
export const perimeterOf = (chain: { readonly segments: readonly Segment[] }): number => {
  let length = 0;
  for (const s of chain.segments) length += lengthOf(s);
  return length;
};

/** Centre of mass of the inside of a contour; where the area is 0, the middle of its bounds. */
export const centroidOf = (contour: Contour): Point => {
  const origin = contour.segments[0].from;
  const area = areaOf(contour);
  if (area === 0) return middleOf(boundsOfChain(contour));
  let x = 0;
  let y = 0;
  for (const s of contour.segments) {
    const moment = momentOf(s, origin);
    x += moment.x;
    y += moment.y;
  }
  return { x: origin.x + x / area, y: origin.y + y / area };
};

/** The smallest box around a chain. */
export const boundsOfChain = (chain: Chain): Bounds => mergedBounds(chain.segments.map(boundsOf));

/** The smallest box around several boxes; of none, an empty one whose low sides are above its high sides. */
export const mergedBounds = (boxes: readonly Bounds[]): Bounds => {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const b of boxes) {
    if (b.minX < minX) minX = b.minX;
    if (b.minY < minY) minY = b.minY;
    if (b.maxX > maxX) maxX = b.maxX;
    if (b.maxY > maxY) maxY = b.maxY;
  }
  return { minX, minY, maxX, maxY };
};

/** The same box with so many mm more on every side. */
export const widened = (b: Bounds, by: number): Bounds => ({ minX: b.minX - by, minY: b.minY - by, maxX: b.maxX + by, maxY: b.maxY + by });

const middleOf = (b: Bounds): Point => ({ x: (b.minX + b.maxX) / 2, y: (b.minY + b.maxY) / 2 });

/** First moments of area of the triangle from `origin` to the chord, and of the circular segment beyond the chord. */
const momentOf = (s: Segment, origin: Point): Point => {
  const x0 = s.from.x - origin.x;
  const y0 = s.from.y - origin.y;
  const x1 = s.to.x - origin.x;
  const y1 = s.to.y - origin.y;
  const sixth = (x0 * y1 - y0 * x1) / 6;
  const chord = { x: (x0 + x1) * sixth, y: (y0 + y1) * sixth };
  return s.kind === 'line' ? chord : plus(chord, segmentMoment(s, origin));
};

/** A circular segment has the area r²(θ - sin θ)/2 and the moment 2/3 r³ sin³(θ/2) about its centre, towards its middle. */
const segmentMoment = (arc: Arc, origin: Point): Point => {
  const area = (arc.radius * arc.radius * lessSine(arc.sweep)) / 2;
  const reach = (2 / 3) * arc.radius ** 2 * Math.sin(arc.sweep / 2) ** 3;
  const cosine = Math.cos(arc.sweep / 2);
  const sine = Math.sin(arc.sweep / 2);
  const x = arc.from.x - arc.centre.x;
  const y = arc.from.y - arc.centre.y;
  return {
    x: area * (arc.centre.x - origin.x) + reach * (x * cosine - y * sine),
    y: area * (arc.centre.y - origin.y) + reach * (x * sine + y * cosine),
  };
};

const plus = (p: Point, q: Point): Point => ({ x: p.x + q.x, y: p.y + q.y });

/** θ - sin θ; for small angles by its series, where the difference would lose all its digits. */
const lessSine = (angle: number): number => {
  if (Math.abs(angle) > 0.2) return angle - Math.sin(angle);
  const square = angle * angle;
  return ((angle * square) / 6) * (1 - (square / 20) * (1 - (square / 42) * (1 - (square / 72) * (1 - square / 110))));
};
