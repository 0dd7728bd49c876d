/**
 * The roomiest place of a region: the point inside that is farthest from all its edges, the centre of the largest disc that
 * fits. Squares over the region are split, most promising first; a square can hold nothing better than the distance at its
 * middle plus half its diagonal, so most are dropped unsplit.
 */
import FlatQueue from 'flatqueue';
import { centroidOf } from '../area.ts';
import type { Region } from '../contour.ts';
import type { Point } from '../segment.ts';
import { windingIn } from './inside.ts';
import type { Lookup } from './lookup.ts';
import { distanceIn, lookupOfSegments } from './lookup.ts';

export interface RoomiestPoint {
  readonly at: Point;
  /** Distance to the nearest edge in mm: the radius of the largest disc around it. Exact for `at`, arcs included. */
  readonly distance: number;
  /** No place of the region is farther from its edges than this: `distance` plus the precision, or more when it gave up. */
  readonly atMost: number;
}

interface Square {
  readonly at: Point;
  readonly half: number;
  /** To the nearest edge; negative outside the region. */
  readonly distance: number;
}

/**
 * Finds the roomiest point. A long corridor is as roomy all along, and fine precision makes it look everywhere there: it
 * gives up after `limit` squares and says in `atMost` how much better another place could be.
 *
 * @param precision mm: how much farther from the edges another place may be.
 */
export const roomiestPoint = (region: Region, precision: number, limit = 50_000): RoomiestPoint => {
  if (!(precision > 0)) throw new RangeError(`the roomiest place is sought to a precision above 0 mm, not ${precision}`);
  const lookup = lookupOfSegments([region.outer, ...region.holes].flatMap((c) => c.segments));
  const { minX, minY, maxX, maxY } = lookup.bounds;
  // It gives out the least first: the squares of most promise have the least priority.
  const queue = new FlatQueue<Square>();
  const put = (s: Square): void => queue.push(s, -(s.distance + s.half * Math.SQRT2));
  // One row of squares along the longer side; a shape a hundred times as long as wide still begins with 64 at most.
  const size = Math.max(Math.min(maxX - minX, maxY - minY), Math.max(maxX - minX, maxY - minY) / 64);
  for (let x = minX; x < maxX; x += size)
    for (let y = minY; y < maxY; y += size) put(square(lookup, { x: x + size / 2, y: y + size / 2 }, size / 2));
  let best = square(lookup, centroidOf(region.outer), 0);
  let atMost = best.distance;
  for (let looked = 0; ; looked += 4) {
    const most = -(queue.peekValue() ?? 0);
    const entry = queue.pop();
    if (entry === undefined) break;
    atMost = Math.max(most, best.distance);
    if (most - best.distance <= precision || looked >= limit) break;
    if (entry.distance > best.distance) best = entry;
    const half = entry.half / 2;
    for (const [dx, dy] of QUARTERS) put(square(lookup, { x: entry.at.x + dx * half, y: entry.at.y + dy * half }, half));
  }
  return { at: best.at, distance: Math.max(best.distance, 0), atMost: Math.max(atMost, 0) };
};

const QUARTERS = [
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
] as const;

/** Regions run counter-clockwise outside and clockwise round holes, so that all together wind once round what is inside. */
const square = (lookup: Lookup, at: Point, half: number): Square => {
  const distance = distanceIn(lookup, at);
  return { at, half, distance: windingIn(lookup, at) > 0 ? distance : -distance };
};
