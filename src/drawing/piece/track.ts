/** Tells whether two pieces run along the same line or circle, and where along it each of them lies. */
import { FULL_TURN, travelled } from '../../geometry/angle.ts';
import { lengthOf, pointAt } from '../../geometry/measure.ts';
import type { Arc, Line, Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';

/** Distance in mm from a point to the endless line or whole circle of a segment. */
const distanceToTrack = (track: Segment, p: Point): number => {
  if (track.kind === 'arc') return Math.abs(distanceBetween(track.centre, p) - track.radius);
  const { x, y, long } = directionOf(track);
  return Math.abs((p.x - track.from.x) * y - (p.y - track.from.y) * x) / long;
};

const directionOf = (track: Line): { x: number; y: number; long: number } => {
  const x = track.to.x - track.from.x;
  const y = track.to.y - track.from.y;
  return { x, y, long: Math.sqrt(x * x + y * y) };
};

/** Whether the shorter of two segments lies on the line or circle of the longer all along. */
export const onSameTrack = (a: Segment, b: Segment, within: number): boolean => {
  if (a.kind !== b.kind) return false;
  const [longer, shorter] = lengthOf(a) >= lengthOf(b) ? [a, b] : [b, a];
  if (distanceToTrack(longer, shorter.from) > within || distanceToTrack(longer, shorter.to) > within) return false;
  return a.kind === 'line' || distanceToTrack(longer, pointAt(shorter, 0.5)) <= within;
};

/** Length once round the circle; endless on a line. */
export const roundOf = (track: Segment): number => (track.kind === 'arc' ? track.radius * FULL_TURN : Infinity);

/** Where along the track a point lies, in mm from its start; on a circle from 0 to once round. */
export const along = (track: Segment, p: Point): number => {
  if (track.kind === 'line') {
    const { x, y, long } = directionOf(track);
    return ((p.x - track.from.x) * x + (p.y - track.from.y) * y) / long;
  }
  return track.radius * angleFromStart(track, p);
};

const angleFromStart = (track: Arc, p: Point): number =>
  travelled(track.from.x - track.centre.x, track.from.y - track.centre.y, p.x - track.centre.x, p.y - track.centre.y, track.sweep > 0);

/** A stretch of a track: from `low` over `extent` mm onwards; `against` where the segment runs the other way. */
export interface TrackStretch {
  readonly low: number;
  readonly extent: number;
  readonly against: boolean;
}

export const stretchOf = (track: Segment, segment: Segment): TrackStretch => {
  const from = along(track, segment.from);
  const to = along(track, segment.to);
  if (segment.kind === 'line') return { low: Math.min(from, to), extent: Math.abs(to - from), against: to < from };
  const against = track.kind === 'arc' && Math.sign(track.sweep) !== Math.sign(segment.sweep);
  return { low: against ? to : from, extent: lengthOf(segment), against };
};

/** How many mm of the track two stretches share. */
export const shared = (p: TrackStretch, q: TrackStretch, round: number): number => {
  const overlap = (shift: number): number =>
    Math.max(0, Math.min(p.low + p.extent, q.low + shift + q.extent) - Math.max(p.low, q.low + shift));
  return round === Infinity ? overlap(0) : overlap(0) + overlap(round) + overlap(-round);
};
