/** Where a contour is too narrow for the wire, and how wide it is there: asked only once it is known that it is. */
import type { Contour } from '../../geometry/contour.ts';
import { besides } from '../../geometry/frame.ts';
import { boundsOf, curvatureOf, lengthOf, pointAt, tangentAt } from '../../geometry/measure.ts';
import { type Lookup, lookupOf, segmentsNear } from '../../geometry/near/lookup.ts';
import { touchingDisc } from '../../geometry/near/touching-disc.ts';
import { distanceBetween, type Point, type Segment } from '../../geometry/segment.ts';
import type { Kept } from '../plan.ts';

export interface NarrowPlace {
  readonly at: Point;
  /** Where the disc touches the two sides. */
  readonly sides: readonly [Point, Point];
  /** mm between the two sides. */
  readonly width: number;
}

/** Walls that face each other: the disc touches them at places further apart than this share of its diameter. */
const FACING = 0.9;

/**
 * The narrowest place between two walls that face each other on the given side of a counter-clockwise contour.
 *
 * @param most mm: wider places are not looked for. @param counts whether a place is one that is looked for.
 */
export const narrowestPlace = (
  contour: Contour,
  side: Kept,
  most: number,
  counts: (place: NarrowPlace) => boolean = () => true,
): NarrowPlace | undefined => {
  const lookup = lookupOf(contour);
  let found: NarrowPlace | undefined;
  for (const segment of contour.segments) {
    for (const share of sharesOf(segment, lookup, most)) {
      const place = placeAt(segment, share, lookup, side, most);
      if (place !== undefined && (found === undefined || place.width < found.width - 1e-9) && counts(place)) found = place;
    }
  }
  return found;
};

/** The two walls that face each other across one place of a contour, at most `most` mm apart. */
export const placeAt = (
  segment: Segment,
  share: number,
  lookup: Lookup,
  side: Kept,
  most: number,
  facing = FACING,
): NarrowPlace | undefined => {
  const at = pointAt(segment, share);
  const aside = besides(tangentAt(segment, share), side === 'die' ? 1 : -1);
  const disc = touchingDisc(lookup, at, aside, most / 2);
  if (disc.other === undefined) return undefined;
  const width = distanceBetween(at, disc.other);
  if (width < facing * 2 * disc.radius) return undefined;
  return { at: { x: (at.x + disc.other.x) / 2, y: (at.y + disc.other.y) / 2 }, sides: [at, disc.other], width };
};

/** The middle, both ends nearly, feet of ends of other segments nearby, and for arcs a spot every fifteen degrees. */
const sharesOf = (segment: Segment, lookup: Lookup, most: number): readonly number[] => {
  const shares = [0.5, 0.001, 0.999];
  if (curvatureOf(segment) !== 0 && segment.kind === 'arc') {
    const steps = Math.ceil(Math.abs(segment.sweep) / (Math.PI / 12));
    for (let n = 1; n < steps; n += 1) shares.push(n / steps);
    return shares;
  }
  const size = lengthOf(segment);
  const along = tangentAt(segment, 0);
  const { from } = segment;
  // A long wall over a comb of teeth has many feet; a few dozen show the narrowest well enough.
  for (const { segment: other } of segmentsNear(lookup, boundsOf(segment), most).slice(0, 64)) {
    const end = other.to;
    const share = ((end.x - from.x) * along.x + (end.y - from.y) * along.y) / size;
    if (share > 0.001 && share < 0.999) shares.push(share);
  }
  return shares;
};
