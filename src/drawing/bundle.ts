/** Cuts pieces that lie along one line or circle at each other's ends, and keeps one of the copies of every stretch. */
import { slice } from '../geometry/cut.ts';
import { lengthOf, pointAt } from '../geometry/measure.ts';
import type { Point, Segment } from '../geometry/segment.ts';
import { segmentBetween } from './mend.ts';
import type { Doubled } from './overlap.ts';
import type { Piece } from './piece.ts';
import type { Stretch } from './track.ts';
import { along, holds, roundOf, stretchOf } from './track.ts';

interface Member {
  readonly number: number;
  readonly piece: Piece;
  readonly stretch: Stretch;
}

/** A place where pieces start or end: the point itself, and each member's own version of it. */
interface Mark {
  readonly at: number;
  readonly point: Point;
  readonly own: ReadonlyMap<Member, Point>;
}

export interface CutBundle {
  /** What is left of each piece, by its number. */
  readonly kept: ReadonlyMap<number, readonly Piece[]>;
  readonly doubled: readonly Doubled[];
}

export const cutBundle = (bundle: readonly { readonly number: number; readonly piece: Piece }[], within: number): CutBundle => {
  const ranked = [...bundle].sort((p, q) => byRank(p.piece, q.piece) || p.number - q.number);
  const track = ranked[0]!.piece.segments[0]!;
  const round = roundOf(track);
  const members = ranked.map(({ number, piece }) => ({ number, piece, stretch: stretchOf(track, piece.segments[0]!) }));
  const marks = marksOf(members, track, within);
  const kept = new Map<number, { readonly low: Mark; readonly high: Mark }[]>(members.map((m) => [m.number, []]));
  const doubled: Doubled[] = [];
  marks.forEach((low, i) => {
    const high = marks[i + 1] ?? marks[0]!;
    if (i + 1 === marks.length && round === Infinity) return;
    const size = i + 1 === marks.length ? high.at + round - low.at : high.at - low.at;
    const over = members.filter((m) => holds(m.stretch, low.at + size / 2, round));
    if (over.length === 0) return;
    kept.get(over[0]!.number)!.push({ low, high });
    if (over.length > 1) doubled.push({ at: placeAt(over[0]!, low.at + size / 2, round), size, copies: over.length - 1 });
  });
  return { kept: new Map(members.map((m) => [m.number, partsOf(m, kept.get(m.number)!, round)])), doubled };
};

/** Longer pieces first, then by place, so that the order of the file does not matter. */
const byRank = (p: Piece, q: Piece): number => {
  const [a, b] = [p.segments[0]!, q.segments[0]!];
  const longer = lengthOf(b) - lengthOf(a);
  if (Math.abs(longer) > 1e-9) return longer;
  const [m, n] = [pointAt(a, 0.5), pointAt(b, 0.5)];
  return m.x - n.x || m.y - n.y;
};

/** All ends along the track in order, those within the tolerance as one; the best ranked member gives the point. */
const marksOf = (members: readonly Member[], track: Segment, within: number): Mark[] => {
  const ends = members.flatMap((member, rank) => {
    const { from, to } = member.piece.segments[0]!;
    return [from, to].map((point) => ({ at: along(track, point), point, member, rank }));
  });
  ends.sort((p, q) => p.at - q.at || p.rank - q.rank);
  const groups: (typeof ends)[] = [];
  for (const end of ends) {
    const last = groups.at(-1);
    if (last && end.at - last[0]!.at <= 2 * within) last.push(end);
    else groups.push([end]);
  }
  // On a circle the first and the last group may be the same place.
  const round = roundOf(track);
  if (groups.length > 1 && groups[0]![0]!.at + round - groups.at(-1)![0]!.at <= 2 * within) groups[0]!.push(...groups.pop()!);
  return groups.map((group) => {
    const best = group.reduce((a, b) => (b.rank < a.rank ? b : a));
    return {
      at: best.at > round / 2 && group[0]!.at < round / 2 ? group[0]!.at : best.at,
      point: best.point,
      own: new Map(group.map((e) => [e.member, e.point])),
    };
  });
};

const placeAt = (member: Member, at: number, round: number): Point => pointAt(member.piece.segments[0]!, shareAt(member, at, round, 'low'));

/** Share of a member's own length at a place of the track; a place at its seam is its start or its end as `side` says. */
const shareAt = ({ stretch }: Member, at: number, round: number, side: 'low' | 'high'): number => {
  let into = at - stretch.low;
  if (round !== Infinity) {
    const slack = 1e-9 * round;
    into = ((into % round) + round) % round;
    if (side === 'low' && into > round - slack) into = 0;
    if (side === 'high' && into < slack) into = stretch.extent;
  }
  const share = Math.min(1, Math.max(0, into / stretch.extent));
  return stretch.against ? 1 - share : share;
};

/** The kept parts of a piece in its own direction; the piece itself when all of it is kept in one. */
const partsOf = (member: Member, kept: readonly { readonly low: Mark; readonly high: Mark }[], round: number): Piece[] => {
  if (kept.length === 0) return [];
  const segment = member.piece.segments[0]!;
  const parts = kept.map(({ low, high }) => {
    const [start, stop] = member.stretch.against ? [high, low] : [low, high];
    const from = start.own.get(member) ?? start.point;
    const to = stop.own.get(member) ?? stop.point;
    const a = shareAt(member, start.at, round, member.stretch.against ? 'high' : 'low');
    const b = shareAt(member, stop.at, round, member.stretch.against ? 'low' : 'high');
    return { a, piece: { ...member.piece, segments: a < b ? segmentBetween(slice(segment, a, b), from, to) : [] } };
  });
  const whole = kept.length === 1 && kept[0]!.low.own.has(member) && kept[0]!.high.own.has(member);
  if (whole) return [member.piece];
  return parts
    .filter((p) => p.piece.segments.length > 0)
    .sort((p, q) => p.a - q.a)
    .map((p) => p.piece);
};
