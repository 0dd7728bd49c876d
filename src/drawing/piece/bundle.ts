/** Cuts pieces that lie along one line or circle at each other's ends, and keeps one of the copies of every stretch. */

import { slice } from '../../geometry/cut.ts';
import { lengthOf, pointAt } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { firstItem, grouped, itemAt } from '../../sequence/sequence.ts';
import type { Doubled } from './doubled-pieces.ts';
import { segmentBetween } from './part-of-piece.ts';
import type { DrawnPiece } from './piece.ts';
import type { TrackStretch } from './track.ts';
import { along, roundOf, stretchOf } from './track.ts';

interface Member {
  readonly number: number;
  readonly piece: DrawnPiece;
  /** The only segment of its piece. */
  readonly segment: Segment;
  readonly stretch: TrackStretch;
  /** Numbers of the marks where it begins and ends along the track. */
  low: number;
  high: number;
}

/** A place of the track where pieces start or end; the best ranked of them gives the point. */
interface TrackMark {
  readonly at: number;
  readonly point: Point;
}

export interface CutBundle {
  /** What is left of each piece, by its number. */
  readonly kept: ReadonlyMap<number, readonly DrawnPiece[]>;
  readonly doubled: readonly Doubled[];
}

export const cutBundle = (bundle: readonly { readonly number: number; readonly piece: DrawnPiece }[], within: number): CutBundle => {
  const ranked = bundle
    .map(({ number, piece }) => ({ number, piece, segment: firstItem(piece.segments) }))
    .sort((p, q) => byRank(p.segment, q.segment) || p.number - q.number);
  const track = firstItem(ranked).segment;
  const members = ranked.map((one): Member => ({ ...one, stretch: stretchOf(track, one.segment), low: -1, high: -1 }));
  const marks = marksOf(members, track, within);
  const { owner, copies } = shareOut(members, marks.length);
  const round = roundOf(track);
  const doubled = copies.flatMap((n, i) => {
    if (n < 2) return [];
    const [from, to] = [itemAt(marks, i).at, (marks[i + 1] ?? firstItem(marks)).at];
    const size = to > from ? to - from : to + round - from;
    const best = itemAt(owner, i);
    return [{ at: pointAt(best.segment, shareAt(best, from + size / 2, round)), size, copies: n - 1 }];
  });
  const intervals = grouped(owner.keys(), (i) => owner[i]);
  const kept = members.map((m) => [m.number, partsOf(m, intervals.get(m) ?? [], { marks, copies, round })] as const);
  return { kept: new Map(kept), doubled };
};

/** Longer pieces first, then by place, so that the order of the file does not matter. */
const byRank = (a: Segment, b: Segment): number => {
  const longer = lengthOf(b) - lengthOf(a);
  if (Math.abs(longer) > 1e-9) return longer;
  const [m, n] = [pointAt(a, 0.5), pointAt(b, 0.5)];
  return m.x - n.x || m.y - n.y;
};

/** All ends along the track in order, those within the tolerance as one; tells each member the marks of its own ends. */
const marksOf = (members: readonly Member[], track: Segment, within: number): TrackMark[] => {
  const ends = members.flatMap((member, rank) => {
    const { from, to } = member.segment;
    const [low, high] = member.stretch.against ? [to, from] : [from, to];
    return [
      { at: along(track, low), point: low, member, rank, side: 'low' as const },
      { at: along(track, high), point: high, member, rank, side: 'high' as const },
    ];
  });
  ends.sort((p, q) => p.at - q.at || p.rank - q.rank);
  type End = (typeof ends)[number];
  const groups: [End, ...End[]][] = [];
  for (const end of ends) {
    const last = groups.at(-1);
    if (last && end.at - last[0].at <= 2 * within) last.push(end);
    else groups.push([end]);
  }
  // On a circle the first and the last group may be the same place; it counts as the first.
  const [first, last] = [groups[0], groups.at(-1)];
  if (first && last && first !== last && first[0].at + roundOf(track) - last[0].at <= 2 * within) {
    first.push(...last);
    groups.pop();
  }
  return groups.map((group, i) => {
    for (const { member, side } of group) member[side] = i;
    return { at: group[0].at, point: group.reduce((a, b) => (b.rank < a.rank ? b : a)).point };
  });
};

/**
 * Gives every interval between neighbouring marks to the best ranked member that covers it, and counts all that do. Intervals
 * that have an owner are leapt over, so that a thousand copies cost no more than a thousand pieces.
 */
const shareOut = (members: readonly Member[], marks: number): { owner: (Member | undefined)[]; copies: number[] } => {
  const owner: (Member | undefined)[] = Array.from({ length: marks }, () => undefined);
  const leap = Int32Array.from({ length: marks + 1 }, (_, i) => i);
  const steps = new Int32Array(marks + 1);
  const free = (i: number): number => {
    let at = i;
    while (leap[at] !== at) {
      leap[at] = itemAt(leap, itemAt(leap, at));
      at = itemAt(leap, at);
    }
    return at;
  };
  const cover = (member: Member, low: number, high: number): void => {
    steps[low] = itemAt(steps, low) + 1;
    steps[high] = itemAt(steps, high) - 1;
    for (let i = free(low); i < high; i = free(i)) {
      owner[i] = member;
      leap[i] = i + 1;
    }
  };
  for (const member of members) {
    // On a circle a stretch may run through the first mark, and a whole turn ends where it begins.
    if (member.low < member.high) cover(member, member.low, member.high);
    else {
      cover(member, member.low, marks);
      cover(member, 0, member.high);
    }
  }
  let covering = 0;
  return { owner, copies: owner.map((_, i) => (covering += itemAt(steps, i))) };
};

/** Share of a member's own length at a place of the track. */
const shareAt = ({ stretch }: Member, at: number, round: number): number => {
  const into = round === Infinity ? at - stretch.low : (((at - stretch.low) % round) + round) % round;
  const share = Math.min(1, Math.max(0, into / stretch.extent));
  return stretch.against ? 1 - share : share;
};

/** The kept parts of a piece in its own direction; the piece itself when all of it is kept in one. */
const partsOf = (
  member: Member,
  intervals: readonly number[],
  { marks, copies, round }: { readonly marks: readonly TrackMark[]; readonly copies: readonly number[]; readonly round: number },
): DrawnPiece[] => {
  const { segment } = member;
  const count = marks.length;
  const { against } = member.stretch;
  const whole = intervals.length === 1 && intervals[0] === member.low && (firstItem(intervals) + 1) % count === member.high % count;
  const copied = (i: number): { copied?: true } => (itemAt(copies, i) > 1 ? { copied: true } : {});
  if (whole) return [{ ...member.piece, ...copied(firstItem(intervals)) }];
  const parts = intervals.map((i) => {
    const high = (i + 1) % count;
    const lowEnd =
      i === member.low ? { share: against ? 1 : 0, point: against ? segment.to : segment.from } : endAt(member, itemAt(marks, i), round);
    const highEnd =
      high === member.high % count
        ? { share: against ? 0 : 1, point: against ? segment.from : segment.to }
        : endAt(member, itemAt(marks, high), round);
    return against ? { i, start: highEnd, stop: lowEnd } : { i, start: lowEnd, stop: highEnd };
  });
  return parts
    .filter(({ start, stop }) => start.share < stop.share)
    .sort((p, q) => p.start.share - q.start.share)
    .map(({ i, start, stop }) => ({
      ...member.piece,
      ...copied(i),
      segments: segmentBetween(slice(segment, start.share, stop.share), start.point, stop.point),
    }))
    .filter((piece) => piece.segments.length > 0);
};

const endAt = (member: Member, mark: TrackMark, round: number): { readonly share: number; readonly point: Point } => ({
  share: shareAt(member, mark.at, round),
  point: mark.point,
});
