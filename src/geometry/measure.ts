/** What can be measured on one segment: length, places, directions, bounds, nearest place. Shares run 0 to 1 by length. */
import { FULL_TURN, sineCosine, travelled } from './angle.ts';
import type { Arc, Line, Point, Segment } from './segment.ts';

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The place of a segment nearest to a point. */
export interface Nearest {
  readonly distance: number;
  readonly share: number;
  readonly at: Point;
}

/** Length in mm. */
export const lengthOf = (segment: Segment): number =>
  segment.kind === 'line' ? length(segment.to.x - segment.from.x, segment.to.y - segment.from.y) : segment.radius * Math.abs(segment.sweep);

/** The point at a share of the length; 0 and 1 give the very ends. */
export const pointAt = (segment: Segment, share: number): Point => {
  if (share === 0) return segment.from;
  if (share === 1) return segment.to;
  const { from, to } = segment;
  if (segment.kind === 'line') return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
  const { centre, sweep } = segment;
  const { sine, cosine } = sineCosine(sweep * share);
  const x = from.x - centre.x;
  const y = from.y - centre.y;
  return { x: centre.x + x * cosine - y * sine, y: centre.y + x * sine + y * cosine };
};

/** Unit vector of travel at a share of the length. */
export const tangentAt = (segment: Segment, share: number): Point => {
  if (segment.kind === 'line') return unit(segment.to.x - segment.from.x, segment.to.y - segment.from.y);
  const p = pointAt(segment, share);
  const x = p.x - segment.centre.x;
  const y = p.y - segment.centre.y;
  return segment.sweep > 0 ? unit(-y, x) : unit(y, -x);
};

export const startDirection = (segment: Segment): Point => tangentAt(segment, 0);

export const endDirection = (segment: Segment): Point => tangentAt(segment, 1);

/** Signed curvature in 1/mm: positive where travel turns left, 0 for a line. */
export const curvatureOf = (segment: Segment): number => (segment.kind === 'line' ? 0 : Math.sign(segment.sweep) / segment.radius);

/** The smallest box around a segment, sides parallel to x and y. */
export const boundsOf = (segment: Segment): Bounds => {
  const { from, to } = segment;
  const ends = {
    minX: Math.min(from.x, to.x),
    minY: Math.min(from.y, to.y),
    maxX: Math.max(from.x, to.x),
    maxY: Math.max(from.y, to.y),
  };
  return segment.kind === 'line' ? ends : withQuadrants(segment, ends);
};

/** The place of the segment nearest to `p`. At the very centre of an arc every place is nearest: its start is given. */
export const nearestOn = (segment: Segment, p: Point): Nearest => {
  const share = nearestShare(segment, p);
  const at = pointAt(segment, share);
  return { distance: distanceAtShare(segment, p, share, at), share, at };
};

/** Distance in mm from a point to a segment. */
export const distanceToSegment = (segment: Segment, p: Point): number => {
  if (segment.kind === 'line') return Math.sqrt(squareDistanceToLine(segment, p));
  const x = p.x - segment.centre.x;
  const y = p.y - segment.centre.y;
  if (shareOfDirection(segment, x, y) <= 1) return Math.abs(length(x, y) - segment.radius);
  return Math.min(length(p.x - segment.from.x, p.y - segment.from.y), length(p.x - segment.to.x, p.y - segment.to.y));
};

/** Share of the segment nearest to `p`. */
export const nearestShare = (segment: Segment, p: Point): number => {
  if (segment.kind === 'line') return shareOnLine(segment, p);
  const x = p.x - segment.centre.x;
  const y = p.y - segment.centre.y;
  if (x === 0 && y === 0) return 0;
  const share = shareOfDirection(segment, x, y);
  if (share <= 1) return share;
  const toStart = length(p.x - segment.from.x, p.y - segment.from.y);
  return toStart <= length(p.x - segment.to.x, p.y - segment.to.y) ? 0 : 1;
};

/** Share at which an arc, carried on round its circle, meets the ray from its centre along (x, y); over 1 beyond its end. */
export const shareOfDirection = (arc: Arc, x: number, y: number): number => {
  const { from, centre, sweep } = arc;
  return travelled(from.x - centre.x, from.y - centre.y, x, y, sweep > 0) / Math.abs(sweep);
};

/** Share of a line nearest to a point, 0 to 1. */
const shareOnLine = (line: Line, p: Point): number => {
  const x = line.to.x - line.from.x;
  const y = line.to.y - line.from.y;
  const square = x * x + y * y;
  if (square === 0) return 0;
  const share = ((p.x - line.from.x) * x + (p.y - line.from.y) * y) / square;
  return Math.min(Math.max(share, 0), 1);
};

const squareDistanceToLine = (line: Line, p: Point): number => {
  const share = shareOnLine(line, p);
  const x = line.from.x + (line.to.x - line.from.x) * share - p.x;
  const y = line.from.y + (line.to.y - line.from.y) * share - p.y;
  return x * x + y * y;
};

/** On an arc the radial difference is more exact than the distance of two rounded points. */
const distanceAtShare = (segment: Segment, p: Point, share: number, at: Point): number =>
  segment.kind === 'arc' && share > 0 && share < 1
    ? Math.abs(length(p.x - segment.centre.x, p.y - segment.centre.y) - segment.radius)
    : length(p.x - at.x, p.y - at.y);

/** Adds the points due east, north, west and south of the centre that the arc passes. */
const withQuadrants = (arc: Arc, ends: Bounds): Bounds => {
  let { minX, minY, maxX, maxY } = ends;
  const start = Math.atan2(arc.from.y - arc.centre.y, arc.from.x - arc.centre.x);
  const low = Math.min(start, start + arc.sweep);
  const high = Math.max(start, start + arc.sweep);
  const quarter = FULL_TURN / 4;
  for (let n = Math.ceil(low / quarter); n * quarter <= high; n += 1) {
    const side = ((n % 4) + 4) % 4;
    if (side === 0) maxX = Math.max(maxX, arc.centre.x + arc.radius);
    else if (side === 1) maxY = Math.max(maxY, arc.centre.y + arc.radius);
    else if (side === 2) minX = Math.min(minX, arc.centre.x - arc.radius);
    else minY = Math.min(minY, arc.centre.y - arc.radius);
  }
  return { minX, minY, maxX, maxY };
};

/** Plain square root: several times as fast as Math.hypot, and drawings never come near its overflow. */
const length = (x: number, y: number): number => Math.sqrt(x * x + y * y);

const unit = (x: number, y: number): Point => {
  const size = Math.sqrt(x * x + y * y);
  return size === 0 ? { x: 0, y: 0 } : { x: x / size, y: y / size };
};
