/**
 * A contour without moves that a control can hardly take under compensation: each that is shorter than the least move is given to its
 * neighbours, as long as nothing is moved by more than the program may use for it.
 */
import { turnBetween } from '../../geometry/angle.ts';
import { fromBulge } from '../../geometry/bulge.ts';
import { type Contour, contour as contourOf } from '../../geometry/contour.ts';
import { distanceToSegment, endDirection, lengthOf, pointAt, startDirection } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import type { LeastMove } from '../question.ts';

/** The start stays where it is: there the contour is begun and closed. */
export const withoutShortMoves = (contour: Contour, least: LeastMove | undefined): Contour => {
  if (least === undefined || contour.segments.every((s) => lengthOf(s) >= least.length)) return contour;
  const runs: Run[] = contour.segments.map((segment) => ({ segment, stands: [segment] }));
  for (let i = 0; i < runs.length && runs.length > 2; ) {
    const short = runs[i];
    const given = short === undefined || lengthOf(short.segment) >= least.length ? undefined : givenAway(runs, i, least.within);
    if (given === undefined) i += 1;
    else {
      runs.splice(given.first, given.count, ...given.by);
      i = Math.max(0, given.first - 1);
    }
  }
  return contourOf(runs.map(({ segment }) => segment));
};

/** A segment, and those of the contour that it stands for. */
interface Run {
  readonly segment: Segment;
  readonly stands: readonly Segment[];
}

interface Given {
  readonly first: number;
  readonly count: number;
  readonly by: readonly Run[];
}

/** Shared between both neighbours, or else taken by one of them. */
const givenAway = (runs: readonly Run[], i: number, within: number): Given | undefined => {
  const [before, short, after] = [runs[i - 1], runs[i], runs[i + 1]];
  if (short === undefined) return undefined;
  const middle = pointAt(short.segment, 0.5);
  const ways: readonly (Given | undefined)[] = [
    before && after && { first: i - 1, count: 3, by: [...endedAt(before, short, middle), ...begunAt(after, short, middle)] },
    before && { first: i - 1, count: 2, by: endedAt(before, short, short.segment.to) },
    after && { first: i, count: 2, by: begunAt(after, short, short.segment.from) },
  ];
  return ways.find((way) => way !== undefined && isWhole(way) && isNear(way, within) && isEntered(runs, way));
};

const endedAt = ({ segment, stands }: Run, short: Run, to: Point): readonly Run[] =>
  moved(segment, segment.from, to, [...stands, ...short.stands]);

const begunAt = ({ segment, stands }: Run, short: Run, from: Point): readonly Run[] =>
  moved(segment, from, segment.to, [...short.stands, ...stands]);

/** Between other ends, an arc with the radius that it had: what the wire can follow it still can. */
const moved = (segment: Segment, from: Point, to: Point, stands: readonly Segment[]): readonly Run[] => {
  if (segment.kind === 'line') return [{ segment: { kind: 'line', from, to }, stands }];
  const share = distanceBetween(from, to) / (2 * segment.radius);
  // Beyond a quarter turn the chord says little about the arc.
  if (Math.abs(segment.sweep) > Math.PI / 2 || share >= 1) return [];
  return [{ segment: fromBulge(from, to, Math.sign(segment.sweep) * Math.tan(Math.asin(share) / 2)), stands }];
};

const isWhole = ({ count, by }: Given): boolean => by.length === count - 1;

const SHARES = [0, 0.25, 0.5, 0.75, 1] as const;

const isNear = ({ by }: Given, within: number): boolean => {
  const [now, was] = [by.map((r) => r.segment), by.flatMap((r) => r.stands)];
  const strays = (of: readonly Segment[], from: readonly Segment[]): boolean =>
    of.some((s) => SHARES.some((share) => !from.some((f) => distanceToSegment(f, pointAt(s, share)) <= within)));
  return !strays(now, was) && !strays(was, now);
};

/** mm: no offset is larger, so that moves on both sides of a turn are long enough for their parallels to meet. */
const FARTHEST_OFFSET = 0.5;

/** rad: below this a turn is the noise of fitted curves. */
const SMOOTH = 1e-5;

/** rad by which a joint may change and still be as good as it was. */
const ALIKE = 2e-3;

/** Whether a wire beside it can go round the new joint, and round both others where they were changed. */
const isEntered = (runs: readonly Run[], { first, count, by }: Given): boolean => {
  const [before, after] = [runs.at(first - 1), runs[first + count] ?? runs[0]].map((r) => r?.segment);
  const [head, tail] = [by[0]?.segment, by.at(-1)?.segment];
  const [oldHead, oldTail] = [runs[first]?.segment, runs[first + count - 1]?.segment];
  if (!before || !after || !head || !tail || !oldHead || !oldTail) return false;
  const joints = by.length === 1 ? [] : [[head, tail] as const];
  if (Math.abs(turnOf(before, head) - turnOf(before, oldHead)) > ALIKE) joints.push([before, head]);
  if (Math.abs(turnOf(tail, after) - turnOf(oldTail, after)) > ALIKE) joints.push([tail, after]);
  return joints.every(([one, other]) => {
    const turn = Math.abs(turnOf(one, other));
    const needed = FARTHEST_OFFSET * Math.tan(turn / 2);
    return turn < SMOOTH || (lengthOf(one) > needed && lengthOf(other) > needed);
  });
};

const turnOf = (one: Segment, other: Segment): number => {
  const [u, v] = [endDirection(one), startDirection(other)];
  return turnBetween(u.x, u.y, v.x, v.y);
};
