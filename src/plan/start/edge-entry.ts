/** Where a contour is begun when the wire comes in from beside the block: all likely entries with a straight way out of it. */

import { type ContourFrame, from } from '../../geometry/frame.ts';
import { boundsOf } from '../../geometry/measure.ts';
import { closestBetween } from '../../geometry/near/closest.ts';
import { type Lookup, lookupOf, segmentsNear } from '../../geometry/near/lookup.ts';
import { touchingDisc } from '../../geometry/near/touching-disc.ts';
import { line, type Point } from '../../geometry/segment.ts';
import { besideBlock, wayOutOfBlock } from './block-edge.ts';
import { type Candidate, type EntryAsked, spotCost, spotsFor } from './entry.ts';
import type { Effort, EntryPlace } from './entry-places.ts';
import { splitsSlug } from './splitting.ts';

export interface EdgeAsked extends EntryAsked {
  /** Edge of the block. */
  readonly edge: Lookup;
  /** Every contour but the own one, where there are others: the way in must keep clear of them. */
  readonly others?: Lookup | undefined;
}

/** How far inside an opening the lead ends before it turns to the entry, mm: short, so that it parts no slug. */
const INSIDE = 1;

/** mm the way in keeps from other contours besides the kerf. */
const CLEAR = 0.5;

/** The best first; none where no way leads in. */
export const edgeCandidates = (asked: EdgeAsked, effort: Effort): readonly Candidate[] => {
  const { loop } = asked.shape.first.loop;
  const own = lookupOf(loop.contour);
  return spotsFor(asked, effort)
    .flatMap((spot) => candidateAt(spot, own, asked))
    .sort((a, b) => Math.round(a.cost * 1e5) - Math.round(b.cost * 1e5))
    .slice(0, 2 * effort.segments);
};

const candidateAt = (spot: EntryPlace, own: Lookup, asked: EdgeAsked): readonly Candidate[] => {
  const { shape, edge, others, measures } = asked;
  const die = shape.first.loop.kept === 'die';
  const out = die ? { x: -spot.aside.x, y: -spot.aside.y } : spot.aside;
  const gone = wayOutOfBlock(spot.at, out, edge, measures.kerf / 2);
  if (gone === undefined) return [];
  const at = { x: spot.at.x + out.x * gone, y: spot.at.y + out.y * gone };
  const need = measures.kerf / 2 + CLEAR;
  if (others !== undefined && !isClear(at, spot.at, others, need)) return [];
  // At the entry the own contour is near anyway; beyond it the way must not come back to it.
  if (die && gone > 2 * need && !isClear(at, from(spot, 0, -2 * need), own, need)) return [];
  const cost = 0.2 * gone + spotCost(spot, asked);
  if (!die) return [{ spot, hole: besideBlock(at), cost, splits: false }];
  const inside = placeInside(spot, asked);
  if (inside === undefined) return [];
  const hole = besideBlock(inside);
  // A lead that parts the slug before anybody holds it is no way in.
  return splitsSlug(hole, spot, own, measures, asked.tab) ? [] : [{ spot, hole, beside: at, cost, splits: false }];
};

const isClear = (a: Point, b: Point, others: Lookup, need: number): boolean => {
  const way = line(a, b);
  return segmentsNear(others, boundsOf(way), need).every(({ segment }) => closestBetween(way, segment, 0).distance >= need);
};

/** In the middle of what room there is, but not far in. */
const placeInside = (spot: EntryPlace, { clear, measures }: EdgeAsked): Point | undefined => {
  const rough = measures.offsets[0];
  const room = touchingDisc(clear, spot.at, spot.aside, INSIDE).radius;
  const frame: ContourFrame = spot;
  return room < rough + LEAST ? undefined : from(frame, 0, room);
};

/** Beyond its offset the rough needs this much straight way onto the contour, mm. */
const LEAST = 0.3;
