/** Whether a hole and the lead from it would cut an opening's slug in two, so that half of it falls before anybody holds it. */

import { lengthOf } from '../../geometry/measure.ts';
import { nearestTo } from '../../geometry/near/clearance-to.ts';
import type { Lookup } from '../../geometry/near/lookup.ts';
import { distanceBetween, type Point, type Segment } from '../../geometry/segment.ts';
import { itemAt, lastItem } from '../../sequence/sequence.ts';
import type { GivenHole } from '../question.ts';
import type { EntryPlace } from './entry-places.ts';
import type { Measures } from './lead-lengths.ts';

/** Metal thinner than this (mm) between two cuts does not hold a slug. */
export const LIGAMENT = 0.15;

/** Kerfs naturally run together this near the entry, mm. */
const AT_ENTRY = 0.9;

/**
 * True where the rim of the hole or the sides of the lead break into the kerf of the rough cut anywhere but at the entry, or
 * at the entry on the side of the tab, which then holds nothing.
 *
 * @param own the opening's contour. @param tab mm behind the entry.
 */
export const splitsSlug = (hole: GivenHole, spot: EntryPlace, own: Lookup, measures: Measures, tab: number): boolean =>
  placesCutThrough(hole, spot, own, measures, tab).length > 0;

/** The same places, mm forward from the entry by the shorter way round, so that those behind it are below 0. */
export const placesCutThrough = (hole: GivenHole, spot: EntryPlace, own: Lookup, measures: Measures, tab: number): readonly number[] => {
  const told = lengthsTo(own.segments);
  const entry = itemAt(told, spot.segment) + spot.share * lengthOf(itemAt(own.segments, spot.segment));
  const round = lastItem(told);
  const rough = measures.offsets[0];
  const reach = rough + measures.kerf / 2 + LIGAMENT;
  const near = Math.max(AT_ENTRY, 0.9 * hole.diameter);
  return [...rim(hole, measures.kerf / 2), ...sides(hole, spot, measures.kerf / 2)].flatMap((p) => {
    const found = nearestTo(own, p);
    if (found.distance >= reach) return [];
    const ahead = itemAt(told, found.segment) + found.share * lengthOf(itemAt(own.segments, found.segment)) - entry;
    const nearest = ahead - Math.round(ahead / round) * round;
    return nearest > near || nearest < -0.35 * tab ? [nearest] : [];
  });
};

/** Length travelled to the start of each segment, and all round last. */
export const lengthsTo = (segments: readonly Segment[]): readonly number[] => {
  const told = [0];
  for (const s of segments) told.push(lastItem(told) + lengthOf(s));
  return told;
};

const rim = (hole: GivenHole, least: number): Point[] => {
  const radius = Math.max(hole.diameter / 2, least);
  return Array.from({ length: 24 }, (_, n) => {
    const angle = (n * Math.PI) / 12;
    return { x: hole.at.x + radius * Math.cos(angle), y: hole.at.y + radius * Math.sin(angle) };
  });
};

/** Places on both sides of the lead's kerf, away from the entry. */
const sides = (hole: GivenHole, spot: EntryPlace, half: number): Point[] => {
  const length = distanceBetween(hole.at, spot.at);
  const [x, y] = [(hole.at.x - spot.at.x) / length, (hole.at.y - spot.at.y) / length];
  const places: Point[] = [];
  for (let along = AT_ENTRY; along < length; along += 0.3) {
    for (const side of [-half, half]) places.push({ x: spot.at.x + x * along - y * side, y: spot.at.y + y * along + x * side });
  }
  return places;
};
