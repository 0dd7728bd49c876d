/** Thin walls of kept metal: how thin, and over which length, found by walking along a contour and looking across the metal. */

import type { Contour } from '../../geometry/contour.ts';
import { boundsOf, lengthOf, pointAt } from '../../geometry/measure.ts';
import { type Lookup, lookupOf, nearestIn, segmentsNear } from '../../geometry/near/lookup.ts';
import { midpoint, type Point, type Segment } from '../../geometry/segment.ts';
import { certain, firstItem, lastItem } from '../../sequence/sequence.ts';
import type { Kept } from '../plan.ts';
import { type NarrowPlace, narrowestPlace, placeAt } from '../wire/narrow.ts';

export interface ThinWall {
  /** Its thinnest place, between the two faces. */
  readonly at: Point;
  /** mm there. */
  readonly thickness: number;
  /** mm along which it is thinner than what was asked. */
  readonly length: number;
}

/** Faces that lean by more than about 20° towards each other make a wedge, which is stiff, and no wall. */
const NEARLY_PARALLEL = 0.985;

/** Places along a face stand this far apart, mm; a wall comes out shorter by as much, or by half its thickness at a free end. */
const STEP = 0.1;

/** A face that is longer is looked at in as many places. */
const MOST_STEPS = 400;

/** Walls within one contour on its kept side, each once for either face. `below` mm: thicker ones are not looked for. */
export const wallsWithin = (contour: Contour, kept: Kept, below: number): readonly ThinWall[] => {
  const side: Kept = kept === 'die' ? 'punch' : 'die';
  // Nearly every contour has none, and this costs a few looks only.
  if (narrowestPlace(contour, side, below) === undefined) return [];
  const lookup = lookupOf(contour);
  return runsAlong(contour, (segment, share) => placeAt(segment, share, lookup, side, below, NEARLY_PARALLEL), nearOthers(lookup, below));
};

/** Walls between two contours, as seen along the first. */
export const wallsBetween = (a: Contour, b: Contour, below: number): readonly ThinWall[] => {
  const other = lookupOf(b);
  const across = (segment: Segment, share: number): NarrowPlace | undefined => {
    const p = pointAt(segment, share);
    const { at, distance } = nearestIn(other, p);
    return distance < below ? { at: midpoint(p, at), sides: [p, at], width: distance } : undefined;
  };
  return runsAlong(a, across, (s) => segmentsNear(other, boundsOf(s), below).length > 0);
};

/** Whether anything but the segment itself and its neighbours comes near: a corner alone is no wall. */
const nearOthers =
  (lookup: Lookup, below: number) =>
  (segment: Segment, i: number): boolean => {
    const count = lookup.segments.length;
    const beside = new Set([i, (i + 1) % count, (i + count - 1) % count]);
    return segmentsNear(lookup, boundsOf(segment), below).some(({ index }) => !beside.has(index));
  };

type Across = (segment: Segment, share: number) => NarrowPlace | undefined;

/** Stretches along which there is a wall, one after the other; the last may run into the first. */
const runsAlong = (contour: Contour, across: Across, worthLooking: (segment: Segment, i: number) => boolean): readonly ThinWall[] => {
  const runs: ThinWall[] = [];
  let open = false;
  let beganAtStart = false;
  contour.segments.forEach((segment, i) => {
    const looked = worthLooking(segment, i);
    const steps = looked ? Math.min(MOST_STEPS, Math.max(1, Math.ceil(lengthOf(segment) / STEP))) : 1;
    const length = lengthOf(segment) / steps;
    for (let n = 0; n < steps; n += 1) {
      const place = looked ? across(segment, (n + 0.5) / steps) : undefined;
      if (place === undefined) open = false;
      else if (open) runs.push(joined(certain(runs.pop(), 'an open stretch has begun'), { at: place.at, thickness: place.width, length }));
      else {
        if (i === 0 && n === 0) beganAtStart = true;
        runs.push({ at: place.at, thickness: place.width, length });
        open = true;
      }
    }
  });
  if (!open || !beganAtStart || runs.length < 2) return runs;
  return [joined(lastItem(runs), firstItem(runs)), ...runs.slice(1, -1)];
};

const joined = (a: ThinWall, b: ThinWall): ThinWall => ({
  ...(b.thickness < a.thickness ? { at: b.at, thickness: b.thickness } : { at: a.at, thickness: a.thickness }),
  length: a.length + b.length,
});
