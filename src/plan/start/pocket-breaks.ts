/**
 * Where waste in a pocket of a part, or one lobe of a slug, comes loose while the contour is being cut round: where the rough cut first runs into its
 * own kerf on the other wall of a neck. Looked for only when the proof has refused a plan of that contour.
 */
import type { Contour } from '../../geometry/contour.ts';
import { intersect } from '../../geometry/intersect.ts';
import { boundsOf, lengthOf, pointAt, tangentAt } from '../../geometry/measure.ts';
import { type Lookup, lookupOf, segmentsNear } from '../../geometry/near/lookup.ts';
import { line, type Point, point } from '../../geometry/segment.ts';
import { itemAt, lastItem } from '../../sequence/sequence.ts';
import type { KeptLoop } from '../kept-side.ts';
import type { Candidate } from './entry.ts';
import type { Measures } from './lead-lengths.ts';
import type { Break } from './slug-breaks.ts';
import { LIGAMENT, lengthsTo } from './splitting.ts';

/** Times the way across a neck: waste with a shorter edge is eaten by the kerf, as in the tip of a notch. */
const LEAST_EDGE = 4;
/** mm that are cut on past the place, so that what is loose is parted for certain. */
const PAST = 1;
/** Places that are looked at stand this far apart, mm. */
const SPARSE = 0.2;
/** mm by which the way across begins off the contour. */
const OFF = 0.01;
const WITHIN = 1e-6;

/** In the order in which the rough cut comes to them. What the contour encloses lies left of it. */
export const pocketBreaks = (
  { loop: { contour }, kept }: KeptLoop,
  spot: Candidate['spot'],
  { offsets, kerf }: Measures,
): readonly Break[] => {
  const side = kept === 'die' ? -1 : 1;
  const across = 2 * (offsets[0] + kerf / 2) + LIGAMENT;
  const ahead = aheadOf(contour, spot);
  const own = lookupOf(contour);
  const places = contour.segments
    .flatMap((s, segment) => {
      const count = Math.max(1, Math.ceil(lengthOf(s) / SPARSE));
      return Array.from({ length: count }, (_, n) => ({ segment, share: (n + 0.5) / count }));
    })
    .map((place) => ({ ...place, way: ahead(place.segment, place.share) }))
    .sort((a, b) => a.way - b.way);
  const breaks: Break[] = [];
  let narrow = false;
  for (const { segment, share, way } of places) {
    const s = itemAt(contour.segments, segment);
    const wall = wallAcross(own, pointAt(s, share), tangentAt(s, share), side * across);
    const edge = wall === undefined ? 0 : way - ahead(wall.segment, wall.share);
    if (!narrow && edge > LEAST_EDGE * across) breaks.push({ start: way, end: way + PAST });
    narrow = wall !== undefined;
  }
  return breaks;
};

/** mm forward from the entry to a place on the contour. */
const aheadOf = (contour: Contour, spot: Candidate['spot']): ((segment: number, share: number) => number) => {
  const told = lengthsTo(contour.segments);
  const round = lastItem(told);
  const along = (segment: number, share: number): number => itemAt(told, segment) + share * lengthOf(itemAt(contour.segments, segment));
  const entry = along(spot.segment, spot.share);
  return (segment, share) => (along(segment, share) - entry + round) % round;
};

interface Wall {
  readonly segment: number;
  readonly share: number;
}

/** The first wall of the contour itself straight across the waste, which lies right of it for `across` above zero, no further than the kerfs of both sides reach together. */
const wallAcross = (own: Lookup, at: Point, tangent: Point, across: number): Wall | undefined => {
  const [x, y] = [tangent.y, -tangent.x];
  const off = Math.sign(across) * OFF;
  const way = line(point(at.x + x * off, at.y + y * off), point(at.x + x * across, at.y + y * across));
  return segmentsNear(own, boundsOf(way), WITHIN)
    .flatMap(({ segment, index }) =>
      intersect(way, segment, WITHIN).flatMap((c) => (c.kind === 'overlap' ? [] : [{ segment: index, share: c.second, far: c.first }])),
    )
    .sort((a, b) => a.far - b.far)[0];
};
