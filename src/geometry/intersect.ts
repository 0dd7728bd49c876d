/**
 * Where two segments meet, as named cases. Crossings and tangencies come from the closed formulas, ends are tried on the
 * other segment, and what runs along the other within the tolerance is an overlap. Two contacts between which the segments
 * stay within the tolerance are one contact, and an end has the better claim to it.
 */
import { neighbours } from '../sequence/sequence.ts';
import { lengthOf, nearestShare, pointAt, tangentAt } from './measure.ts';
import type { Meeting } from './meeting.ts';
import { candidates } from './meeting.ts';
import type { Point, Segment } from './segment.ts';
import { distanceBetween, isFullCircle } from './segment.ts';

export type { Meeting } from './meeting.ts';

/** A stretch along which both segments are the same within the tolerance; shares on `second` fall where it runs against `first`. */
export interface Overlap {
  readonly kind: 'overlap';
  readonly from: Point;
  readonly to: Point;
  readonly first: readonly [number, number];
  readonly second: readonly [number, number];
}

export type Contact = Meeting | Overlap;

/**
 * All contacts of two segments, none when they stay apart. A meeting within the tolerance of an end is 'touching end', has
 * the share 0 or 1 exactly and lies on that very end.
 *
 * @param within mm: points this close count as one place. Drawings 1e-6; below 1e-9 rounding shows.
 */
export const intersect = (a: Segment, b: Segment, within: number): readonly Contact[] => {
  const inner = candidates(a, b, within);
  const ends = endMeetings(a, b, within);
  if (ends.length === 0) return inner;
  const overlaps = overlapsOf(a, b, ends, within);
  const apart = inner.filter((m) => !ends.some((e) => runsAlong(a, b, m.first, e.first, within)));
  const loose = overlaps.length === 0 ? ends : ends.filter((e) => !overlaps.some((o) => endsOverlap(a, o, e)));
  return [...overlaps, ...loose, ...apart].sort((p, q) => startOf(p) - startOf(q));
};

const startOf = (contact: Contact): number => (contact.kind === 'overlap' ? contact.first[0] : contact.first);

/** The ends of each segment that lie on the other, one per place. */
const endMeetings = (a: Segment, b: Segment, within: number): Meeting[] => {
  const found: Meeting[] = [];
  addEnd(found, a, b, 0, within);
  if (!isFullCircle(a)) addEnd(found, a, b, 1, within);
  addOtherEnd(found, a, b, 0, within);
  if (!isFullCircle(b)) addOtherEnd(found, a, b, 1, within);
  return found;
};

const addEnd = (found: Meeting[], a: Segment, b: Segment, share: 0 | 1, within: number): void => {
  const at = share === 0 ? a.from : a.to;
  const second = shareNear(b, at, within);
  if (second >= 0) found.push({ kind: 'touching end', at, first: share, second });
};

const addOtherEnd = (found: Meeting[], a: Segment, b: Segment, share: 0 | 1, within: number): void => {
  const at = share === 0 ? b.from : b.to;
  const first = shareNear(a, at, within);
  if (first < 0 || found.some((m) => m.second === share && m.first === first)) return;
  found.push({ kind: 'touching end', at, first, second: share });
};

/** Share of the place of `segment` within the tolerance of `p`, snapped to its ends; -1 when there is none. */
const shareNear = (segment: Segment, p: Point, within: number): number => {
  if (distanceBetween(segment.from, p) <= within) return 0;
  if (distanceBetween(segment.to, p) <= within) return 1;
  if (segment.kind === 'arc' && Math.abs(distanceBetween(segment.centre, p) - segment.radius) > within) return -1;
  const share = nearestShare(segment, p);
  if (share === 0 || share === 1) return -1;
  return distanceBetween(pointAt(segment, share), p) <= within ? share : -1;
};

/**
 * Whether `a` stays within the tolerance of `b` between two of its shares, both of which are contacts already: as two
 * circles share two points at most, the middle tells. Of a full circle the shorter way between the two is meant.
 */
const runsAlong = (a: Segment, b: Segment, low: number, high: number, within: number): boolean => {
  const overSeam = Math.abs(high - low) > 0.5 && isFullCircle(a);
  const middle = (low + high) / 2;
  return isNear(a, overSeam ? (middle + 0.5) % 1 : middle, b, within);
};

const isNear = (a: Segment, share: number, b: Segment, within: number): boolean => shareNear(b, pointAt(a, share), within) >= 0;

/** The middle and the quarter of a stretch are looked at: a whole circle begins and ends in one point, and one more is no proof. */
const overlapsOf = (a: Segment, b: Segment, ends: readonly Meeting[], within: number): Overlap[] => {
  const sorted = ends.toSorted((p, q) => p.first - q.first);
  const again = isFullCircle(a) ? sorted.slice(0, 1).filter((cut) => cut.first === 0) : [];
  const cuts = [...sorted, ...again.map((cut) => ({ ...cut, first: 1 }))];
  const length = lengthOf(a);
  const overlaps: Overlap[] = [];
  for (const [low, high] of neighbours(cuts)) {
    const same = [0.5, 0.25].every((part) => isNear(a, low.first + (high.first - low.first) * part, b, within));
    if ((high.first - low.first) * length > within && same) overlaps.push(overlap(a, b, low, high));
  }
  return overlaps;
};

/** The start of a full circle has the shares 0 and 1: the one is taken from which the stretch runs through its middle. */
const overlap = (a: Segment, b: Segment, low: Meeting, high: Meeting): Overlap => {
  const share = (low.first + high.first) / 2;
  const middle = nearestShare(b, pointAt(a, share));
  const u = tangentAt(a, share);
  const v = tangentAt(b, middle);
  const along = u.x * v.x + u.y * v.y > 0;
  const before = (s: number): number => (isFullCircle(b) && s === 1 ? 0 : s);
  const after = (s: number): number => (isFullCircle(b) && s === 0 ? 1 : s);
  const second: [number, number] = along ? [before(low.second), after(high.second)] : [after(low.second), before(high.second)];
  return { kind: 'overlap', from: low.at, to: high.at, first: [low.first, high.first], second };
};

const endsOverlap = (a: Segment, stretch: Overlap, end: Meeting): boolean =>
  end.first === stretch.first[0] || end.first === stretch.first[1] || (isFullCircle(a) && end.first === 0 && stretch.first[1] === 1);
