/**
 * Keeps once what loose lines and arcs draw more than once: pieces that run along each other are cut at each other's ends,
 * and of every stretch one copy stays. Cutting, rather than dropping whole pieces, leaves the corners of a neighbour that
 * shares part of an edge in place. Millions of pairs may be asked whether they lie alike, so directions are plain numbers: `!` stands
 * where one of those is read.
 */

import { widened } from '../../geometry/area.ts';
import { boundsOf, lengthOf } from '../../geometry/measure.ts';
import { boxIndexOf } from '../../geometry/near/box-index.ts';
import type { Segment } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { cutBundle } from './bundle.ts';
import type { Doubled, Single } from './doubled-pieces.ts';
import type { DrawnPiece } from './piece.ts';
import { onSameTrack, roundOf, shared, stretchOf } from './track.ts';
import type { WorkLimit } from './work-limit.ts';
import { spend } from './work-limit.ts';

/** @param within mm: pieces this near to each other all along are drawn twice */
export const dropOverlaps = (pieces: readonly DrawnPiece[], within: number, work: WorkLimit): Single => {
  const simple = pieces.flatMap(({ segments: [segment, ...more] }, number) =>
    segment !== undefined && more.length === 0 ? [{ number, segment }] : [],
  );
  if (simple.length < 2) return { pieces, doubled: [] };
  const replaced = new Map<number, readonly DrawnPiece[]>();
  const doubled: Doubled[] = [];
  for (const bundle of bundlesOf(simple, within, work)) {
    const cut = cutBundle(
      bundle.map((i) => ({ number: i, piece: itemAt(pieces, i) })),
      within,
    );
    for (const [i, kept] of cut.kept) replaced.set(i, kept);
    doubled.push(...cut.doubled);
  }
  return { pieces: replaced.size === 0 ? pieces : pieces.flatMap((piece, i) => replaced.get(i) ?? [piece]), doubled };
};

/** The only segment of a piece, with the number of the piece. */
interface NumberedSegment {
  readonly number: number;
  readonly segment: Segment;
}

/** Groups of two and more pieces that run along each other, directly or by way of a third. */
const bundlesOf = (simple: readonly NumberedSegment[], within: number, work: WorkLimit): number[][] => {
  const placed = simple.map((one, place) => ({ ...one, place }));
  const index = boxIndexOf(placed, ({ segment }) => widened(boundsOf(segment), within));
  const bundle = new Map<number, number[]>();
  const directions = directionsOf(simple.map(({ segment }) => segment));
  placed.forEach(({ number, segment, place }) => {
    let asked = 8;
    const near = index.search(boundsOf(segment), (other) => {
      asked += 1;
      return other.place > place && directions.mayAgree(place, other.place, 2 * within);
    });
    spend(work, asked / 8 + near.length);
    for (const other of near) {
      if (runAlong(segment, other.segment, within)) uniteBundles(bundle, number, other.number);
    }
  });
  return [...new Set(bundle.values())].map((group) => group.sort((p, q) => p - q));
};

/**
 * Which pairs are worth a closer look, from few numbers of each, since there may be very many: two lines of one track turn from
 * each other by less than the tolerance over the shorter of them.
 */
const directionsOf = (segments: readonly Segment[]): { readonly mayAgree: (i: number, j: number, within: number) => boolean } => {
  const [x, y, long] = [new Float64Array(segments.length), new Float64Array(segments.length), new Float64Array(segments.length)];
  segments.forEach(({ kind, from, to }, i) => {
    if (kind === 'arc') return;
    const distance = distanceBetween(from, to);
    long[i] = distance;
    x[i] = (to.x - from.x) / distance;
    y[i] = (to.y - from.y) / distance;
  });
  const mayAgree = (i: number, j: number, within: number): boolean => {
    if (long[i] === 0 || long[j] === 0) return long[i] === long[j];
    return Math.abs(x[i]! * y[j]! - y[i]! * x[j]!) * Math.min(long[i]!, long[j]!) <= within;
  };
  return { mayAgree };
};

/** The smaller group moves into the larger one. */
const uniteBundles = (bundle: Map<number, number[]>, i: number, j: number): void => {
  const a = bundle.get(i) ?? [i];
  const b = bundle.get(j) ?? [j];
  bundle.set(i, a);
  bundle.set(j, b);
  if (a === b) return;
  const [large, small] = a.length >= b.length ? [a, b] : [b, a];
  for (const member of small) {
    large.push(member);
    bundle.set(member, large);
  }
};

/**
 * Whether two segments share more than a meeting of their ends. A stretch shorter than ten times the tolerance may be a
 * crossing at a small angle and does not count, unless both are the same from end to end.
 */
const runAlong = (a: Segment, b: Segment, within: number): boolean => {
  if (!onSameTrack(a, b, within)) return false;
  const [longer, shorter] = lengthOf(a) >= lengthOf(b) ? [a, b] : [b, a];
  const common = shared(stretchOf(longer, longer), stretchOf(longer, shorter), roundOf(longer));
  return common > 10 * within || (common > 0 && sameEnds(a, b, within / 10));
};

const sameEnds = (a: Segment, b: Segment, within: number): boolean =>
  (distanceBetween(a.from, b.from) <= within && distanceBetween(a.to, b.to) <= within) ||
  (distanceBetween(a.from, b.to) <= within && distanceBetween(a.to, b.from) <= within);
