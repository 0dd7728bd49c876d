/** Where the wire is threaded: a hole that is there already, or one to be drilled in the roomiest place near the entry. */

import { awayFrom } from '../../geometry/near/clearance-to.ts';
import type { Lookup } from '../../geometry/near/lookup.ts';
import { touchingDisc } from '../../geometry/near/touching-disc.ts';
import type { Point } from '../../geometry/segment.ts';
import type { StartHole } from '../plan.ts';
import type { GivenHole } from '../question.ts';
import type { EntryPlace } from './entry-places.ts';

export interface HoleRules {
  /** Diameter asked for. */
  readonly diameter: number;
  /** Of the rough cut. */
  readonly roughOffset: number;
  /** Height of the work: a drilled hole wanders by a hundredth of it. */
  readonly height: number;
}

/** Smallest start hole that is drilled, mm. */
const LEAST_DIAMETER = 1;

/** The hole's edge keeps this much, and the rough offset, from every contour, mm. */
const CLEAR = 0.5;

/** Leads get no longer than this for the sake of room, mm. */
export const LEAD = 6;

/** A drilled hole wanders by about one in a hundred of its depth: from memory. */
export const WANDER = 0.01;

/** Distance from the middle of a drilled hole to the nearest contour. */
export const roomFor = (diameter: number, { roughOffset, height }: HoleRules): number =>
  diameter / 2 + CLEAR + roughOffset + WANDER * height;

/** No metal stands so near to the middle of a hole, mm, wherever it wandered to on its way down. */
export const drilledRoom = (diameter: number, height: number): number => Math.max(0, diameter / 2 - WANDER * height - 0.02);

/** The largest hole up to the one asked for that fits with this much room about its middle; 0 when none does. */
export const diameterFor = (room: number, rules: HoleRules): number => {
  const most = 2 * (room - roomFor(0, rules)) + 1e-9;
  if (most >= rules.diameter) return rules.diameter;
  const tenths = Math.floor(most * 10) / 10;
  return tenths >= Math.min(LEAST_DIAMETER, rules.diameter) ? tenths : 0;
};

export type PlacedHole =
  | { readonly kind: 'fits'; readonly hole: StartHole; readonly room: number; readonly lead: number }
  | { readonly kind: 'does not fit'; readonly room: number };

/**
 * A hole on the normal of the spot: at the middle of the largest disc that touches the contour there, unless the lead would
 * get long.
 *
 * @param lookup every contour that the drill must keep clear of.
 */
export const placedFor = (spot: EntryPlace, lookup: Lookup, rules: HoleRules): PlacedHole => {
  const wanted = roomFor(rules.diameter, rules);
  const far = Math.max(LEAD, wanted);
  const room = touchingDisc(lookup, spot.at, spot.aside, far).radius;
  const diameter = diameterFor(room, rules);
  if (diameter === 0) return { kind: 'does not fit', room };
  return { kind: 'fits', hole: { at: onNormal(spot, room), diameter, origin: 'placed' }, room, lead: room };
};

/** Leads out of a bay between teeth get no longer than this, mm. */
export const FARTHEST = 40;

/**
 * A hole further out on the normal, beyond what stands on both sides of the way: for parts with teeth or bays, in the open
 * waste around them. Steps outward by what is missing, so that it never passes a place that is good by much.
 */
export const placedBeyond = (spot: EntryPlace, lookup: Lookup, rules: HoleRules): PlacedHole => {
  const wanted = roomFor(rules.diameter, rules);
  let most = 0;
  for (let lead = wanted; lead <= FARTHEST; ) {
    const at = onNormal(spot, lead);
    const room = awayFrom(lookup, at);
    most = Math.max(most, room);
    if (room >= wanted - 1e-9) return { kind: 'fits', hole: { at, diameter: rules.diameter, origin: 'placed' }, room, lead };
    lead += Math.max(0.1, wanted - room);
  }
  return { kind: 'does not fit', room: most };
};

const onNormal = (spot: EntryPlace, lead: number): Point => ({ x: spot.at.x + spot.aside.x * lead, y: spot.at.y + spot.aside.y * lead });

/** Whether the wire can start from a hole that is there: its middle clear of every contour by the rough offset, its edge not in one. */
export const isUsable = (hole: GivenHole, lookup: Lookup, { roughOffset }: HoleRules): boolean => {
  const away = awayFrom(lookup, hole.at);
  return away > roughOffset + 0.01 && away > hole.diameter / 2;
};
