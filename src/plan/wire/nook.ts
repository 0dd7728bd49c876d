/**
 * A nook of a contour that the wire does not enter: a step, a nick, a spike's foot, or a slit. What is left in it is held against what
 * the corner radius allowed would leave at the corners drawn there.
 */

import { turnBetween } from '../../geometry/angle.ts';
import { endDirection, pointAt, startDirection } from '../../geometry/measure.ts';
import { distanceBetween, type Point, type Segment } from '../../geometry/segment.ts';
import { isFilled, type NonEmpty, neighbours } from '../../sequence/sequence.ts';

export interface Nook {
  /** Places of the drawn contour in it, with what is left standing before each (mm). */
  readonly places: NonEmpty<{ readonly at: Point; readonly left: number }>;
  readonly corners: readonly DrawnCorner[];
}

/** An inside corner: where its two sides meet, how far it turns (rad), and the way from there to the middle of its fillet. */
interface DrawnCorner {
  readonly at: Point;
  readonly turn: number;
  readonly inward: Point;
}

/** @param sense 1 where the wire is on the left. @param leftAt mm of stock that stands before a place of the contour */
export const nookOf = (run: readonly Segment[], sense: number, leftAt: (at: Point) => number): Nook => {
  // The first and the last segment reach out of the nook: only their inner ends belong to it.
  const inner = run.slice(1, -1).flatMap((s) => [pointAt(s, 0.25), pointAt(s, 0.5), pointAt(s, 0.75)]);
  const places = [...run.slice(0, -1).map((s) => s.to), ...inner].map((at) => ({ at, left: leftAt(at) }));
  if (!isFilled(places)) throw new RangeError('a nook lies between two segments');
  const sharp = neighbours(run).flatMap(([a, b]) => cornerAt(a.to, endDirection(a), startDirection(b), sense));
  return { places, corners: [...sharp, ...run.slice(1, -1).flatMap((s) => roundCorner(s, sense))] };
};

/** mm left standing beyond both the tolerance and what corners of the radius allowed would leave; none where all of it is allowed. */
export const leftBeyond = ({ places, corners }: Nook, radius: number, tolerance: number): number => {
  const over = places.map(({ at, left }) => left - Math.max(tolerance, ...corners.map((corner) => leftBy(corner, radius, at))));
  return Math.max(0, ...over);
};

/** What a fillet leaves before a place: nothing beyond its ends. */
const leftBy = ({ at, turn, inward }: DrawnCorner, radius: number, place: Point): number => {
  if (distanceBetween(place, at) > radius * Math.tan(turn / 2)) return 0;
  const far = radius / Math.cos(turn / 2);
  return Math.max(0, distanceBetween(place, { x: at.x + far * inward.x, y: at.y + far * inward.y }) - radius);
};

const cornerAt = (at: Point, before: Point, after: Point, sense: number): readonly DrawnCorner[] => {
  const turn = turnBetween(before.x, before.y, after.x, after.y) * sense;
  if (turn <= STRAIGHT) return [];
  const [x, y] = [after.x - before.x, after.y - before.y];
  const size = Math.hypot(x, y);
  return [{ at, turn: Math.min(turn, MOST_ACUTE), inward: { x: x / size, y: y / size } }];
};

/** A corner that is drawn round, as if its sides met. */
const roundCorner = (segment: Segment, sense: number): readonly DrawnCorner[] => {
  if (segment.kind === 'line' || segment.sweep * sense <= 0) return [];
  const middle = pointAt(segment, 0.5);
  const turn = Math.min(Math.abs(segment.sweep), MOST_ACUTE);
  const inward = { x: (segment.centre.x - middle.x) / segment.radius, y: (segment.centre.y - middle.y) / segment.radius };
  const beyond = segment.radius * (1 / Math.cos(turn / 2) - 1);
  return [{ at: { x: middle.x - beyond * inward.x, y: middle.y - beyond * inward.y }, turn, inward }];
};

/** rad: less is the noise of fitted curves and no corner. */
const STRAIGHT = 0.02;
/** rad: a more acute corner would be allowed to lose a slit; at 120 degrees of turn a fillet leaves as much as its radius. */
const MOST_ACUTE = (Math.PI * 2) / 3;
