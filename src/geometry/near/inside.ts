/**
 * Whether a point is inside a contour. The winding number of the chords is decided by exact predicates; each arc then adds
 * a turn for the points between it and its chord. Points exactly on a chord count as a hair to the east and less to the
 * north of it in both steps, so the two never disagree.
 */
import { orient2d } from 'robust-predicates';
import type { Contour, Region } from '../contour.ts';
import type { Arc, Point, Segment } from '../segment.ts';
import { distanceTo } from './distance.ts';
import type { Lookup } from './lookup.ts';
import { distanceIn } from './lookup.ts';

export type Containment = 'inside' | 'outside' | 'on the edge';

/**
 * Where a point lies.
 *
 * @param edge mm: nearer to the contour than this, or exactly this near, is on the edge.
 */
export const contains = (contour: Contour, p: Point, edge: number): Containment => {
  if (distanceTo(contour, p) <= edge) return 'on the edge';
  return windingOf(contour, p) === 0 ? 'outside' : 'inside';
};

/** The same for many points on one contour: builds on `lookupOf(contour)`. */
export const containsIn = (lookup: Lookup, p: Point, edge: number): Containment => {
  const b = lookup.bounds;
  if (p.x < b.minX - edge || p.x > b.maxX + edge || p.y < b.minY - edge || p.y > b.maxY + edge) return 'outside';
  if (distanceIn(lookup, p) <= edge) return 'on the edge';
  return windingIn(lookup, p) === 0 ? 'outside' : 'inside';
};

/** Where a point lies in a region; inside a hole is outside the region. */
export const regionContains = (region: Region, p: Point, edge: number): Containment => {
  const outer = contains(region.outer, p, edge);
  if (outer !== 'inside') return outer;
  for (const hole of region.holes) {
    const held = contains(hole, p, edge);
    if (held !== 'outside') return held === 'inside' ? 'outside' : held;
  }
  return 'inside';
};

/** How many times the contour runs round the point counter-clockwise; of no meaning exactly on the contour. */
export const windingOf = (contour: Contour, p: Point): number => {
  let winding = 0;
  for (const s of contour.segments) winding += turnsOf(s, p);
  return winding;
};

/** The same with an index: only segments that meet the ray east from the point count. */
export const windingIn = (lookup: Lookup, p: Point): number => {
  let winding = 0;
  for (const { segment } of lookup.index.search({ minX: p.x, minY: p.y, maxX: Infinity, maxY: p.y })) winding += turnsOf(segment, p);
  return winding;
};

const turnsOf = (s: Segment, p: Point): number =>
  s.kind === 'line' ? crossingOf(s.from, s.to, p) : crossingOf(s.from, s.to, p) + segmentHolds(s, p);

/** 1 where the chord passes east of the point upwards, -1 downwards. */
const crossingOf = (from: Point, to: Point, p: Point): number => {
  if (from.y <= p.y) return to.y > p.y && leftOf(from, to, p) > 0 ? 1 : 0;
  return to.y <= p.y && leftOf(from, to, p) < 0 ? -1 : 0;
};

/** 1 or -1, by the sense of the arc, when the point lies between the arc and its chord. */
const segmentHolds = (arc: Arc, p: Point): number => {
  const x = p.x - arc.centre.x;
  const y = p.y - arc.centre.y;
  if (x * x + y * y >= arc.radius * arc.radius) return 0;
  const sense = arc.sweep > 0 ? 1 : -1;
  if (arc.from.x === arc.to.x && arc.from.y === arc.to.y) return sense;
  return sideOf(arc.from, arc.to, p) === -sense ? sense : 0;
};

/** 1 left of the chord, -1 right of it; on it, where a hair to the east and less to the north would be. */
const sideOf = (from: Point, to: Point, p: Point): 1 | -1 => {
  const left = leftOf(from, to, p);
  if (left !== 0) return left > 0 ? 1 : -1;
  if (from.y !== to.y) return to.y > from.y ? -1 : 1;
  return to.x > from.x ? 1 : -1;
};

/** Positive where the point lies left of the way from `from` to `to`. The predicate itself counts with y downwards. */
const leftOf = (from: Point, to: Point, p: Point): number => -orient2d(from.x, from.y, to.x, to.y, p.x, p.y);
