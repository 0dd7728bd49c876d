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

/** What is drilled where there is this much room. */
export interface Drilled {
  readonly diameter: number;
  /** mm by which its edge may drift into what must stay; none where that cannot be. */
  readonly past?: number | undefined;
}

/** What the finishing cuts must find beyond a hole that drifted, mm; from common practice. */
const LEAST_CLEAR = 0.05;

/** The largest hole up to the one asked for that fits with this much room about its middle. */
export const drilledFor = (room: number, rules: HoleRules): Drilled | undefined => {
  const ample = fitting(2 * (room - roomFor(0, rules)), rules);
  if (ample !== undefined) return { diameter: ample };
  const within = room - rules.roughOffset - LEAST_CLEAR;
  const narrow = fitting(surelyWithin(within, rules), rules);
  if (narrow !== undefined) return { diameter: narrow };
  // In narrow slots a hole is drilled every week that might drift too far and mostly does not: the shop is told.
  const least = leastDiameter(rules);
  return least / 2 > within + 1e-9 ? undefined : { diameter: least, past: least / 2 + WANDER * rules.height - within };
};

/** mm: the largest hole that stays in what is cut away wherever it drifts, rounded down to a tenth; for the same room as a hole that may not. */
export const safeDiameter = ({ diameter, past = 0 }: Drilled): number => Math.floor(10 * (diameter - 2 * past) + 1e-6) / 10;

const surelyWithin = (within: number, { height }: HoleRules): number => 2 * (within - WANDER * height);

export const leastDiameter = ({ diameter }: Pick<HoleRules, 'diameter'>): number => Math.min(LEAST_DIAMETER, diameter);

const fitting = (most: number, rules: HoleRules): number | undefined => {
  if (most + 1e-9 >= rules.diameter) return rules.diameter;
  const tenths = Math.floor((most + 1e-9) * 10) / 10;
  return tenths >= leastDiameter(rules) ? tenths : undefined;
};

/** What even the smallest hole must have about its middle. */
export const leastRoom = (rules: HoleRules): number => leastDiameter(rules) / 2 + rules.roughOffset + LEAST_CLEAR;

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
  const drilled = drilledFor(room, rules);
  if (drilled === undefined) return { kind: 'does not fit', room };
  return { kind: 'fits', hole: { at: onNormal(spot, room), ...drilled, origin: 'placed' }, room, lead: room };
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
