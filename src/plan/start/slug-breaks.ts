/**
 * Where a slug comes apart while it is still being cut round: where the rough cut runs into a hole that reaches nearly across the
 * opening, or into the kerf round an island in it. The program stops before each such place, on a tab of its own.
 */

import { lengthOf, pointAt } from '../../geometry/measure.ts';
import { closestBetweenChains } from '../../geometry/near/closest.ts';
import { distanceIn, lookupOf } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import { itemAt, sideBySide } from '../../sequence/sequence.ts';
import type { Surroundings } from '../same-shape.ts';
import type { Candidate } from './entry.ts';
import type { Measures } from './lead-lengths.ts';
import { LIGAMENT, placesCutThrough } from './splitting.ts';

/** A stretch of the contour on which nothing holds the slug, mm forward from the entry. */
export interface Break {
  readonly start: number;
  readonly end: number;
}

export interface BreaksAsked {
  readonly around: Surroundings;
  readonly candidate: Candidate;
  readonly measures: Measures;
  readonly tab: number;
}

/** In the order in which the rough cut comes to them; none for nearly every slug. */
export const slugBreaks = (asked: BreaksAsked): readonly Break[] => {
  const places = [...atHole(asked), ...atIslands(asked)].sort((a, b) => a - b);
  const breaks: { start: number; end: number }[] = [];
  for (const place of places) {
    const last = breaks.at(-1);
    if (last !== undefined && place - last.end < TOGETHER) last.end = place;
    else breaks.push({ start: place, end: place });
  }
  return breaks.map(({ start, end }) => ({ start: start - SPARSE, end: end + SPARSE }));
};

/** Places nearer to each other, mm, belong to one break. */
const TOGETHER = 2;

/** Places that are looked at stand this far apart, mm. */
const SPARSE = 0.3;

const atHole = ({ around, candidate, measures, tab }: BreaksAsked): readonly number[] => {
  if (!candidate.splits) return [];
  const own = lookupOf(around.loop.loop.contour);
  const round = own.segments.reduce((sum, s) => sum + lengthOf(s), 0);
  return placesCutThrough(candidate.hole, candidate.spot, own, measures, tab).map((at) => (at < 0 ? at + round : at));
};

const atIslands = ({ around, candidate, measures }: BreaksAsked): readonly number[] => {
  const { contour } = around.loop.loop;
  const thin = 2 * (measures.offsets[0] + measures.kerf / 2) + LIGAMENT;
  const near = around.inside.filter((k) => k.kept === 'punch' && closestBetweenChains(contour, k.loop.contour, 0).distance < thin);
  if (near.length === 0) return [];
  const islands = near.map((k) => lookupOf(k.loop.contour));
  return along(contour.segments, candidate.spot)
    .filter(({ at }) => islands.some((island) => distanceIn(island, at) < thin))
    .map(({ ahead }) => ahead);
};

/** Places round the contour with how far ahead of the entry they are. */
const along = (
  segments: Surroundings['loop']['loop']['contour']['segments'],
  spot: Candidate['spot'],
): readonly { readonly at: Point; readonly ahead: number }[] => {
  const lengths = segments.map(lengthOf);
  const before = (i: number): number => lengths.slice(0, i).reduce((sum, l) => sum + l, 0);
  const round = before(segments.length);
  const entry = before(spot.segment) + spot.share * itemAt(lengths, spot.segment);
  let told = 0;
  return sideBySide(segments, lengths).flatMap(([s, length]) => {
    const start = told;
    told += length;
    const count = Math.max(1, Math.ceil(length / SPARSE));
    return Array.from({ length: count }, (_, n) => {
      const share = (n + 0.5) / count;
      return { at: pointAt(s, share), ahead: (start + share * length - entry + round) % round };
    });
  });
};
