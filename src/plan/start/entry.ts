/** Where a contour is begun, and from which hole: all likely pairs, the best first. */
import type { Contour } from '../../geometry/contour.ts';
import { awayFrom } from '../../geometry/near/clearance-to.ts';
import { type Lookup, lookupOf } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import type { Kept, StartHole } from '../plan.ts';
import { type GivenHole, originOf, type PlanQuestion } from '../question.ts';
import type { LikeLoops } from '../same-shape.ts';
import { type Effort, type EntryPlace, type StretchWanted, spotAtPlace, spotsOf } from './entry-places.ts';
import { FARTHEST, type HoleRules, isUsable, leastRoom, type PlacedHole, placedBeyond, placedFor, roomFor } from './holes.ts';
import { beyondTab, type Measures } from './lead-lengths.ts';
import type { PlacedOverride } from './override.ts';
import { isInPocket } from './pocket.ts';
import { splitsSlug } from './splitting.ts';

export interface Candidate {
  readonly spot: EntryPlace;
  readonly hole: StartHole;
  /** mm worth: the smaller the better. */
  readonly cost: number;
  /** The slug would come off in two. */
  readonly splits: boolean;
  /** For an opening begun from the edge of the block: beside it, where the wire is threaded; `hole` is where the lead ends then. */
  readonly beside?: Point;
}

export type Candidates =
  | {
      readonly kind: 'ranked';
      readonly ranked: readonly Candidate[];
      readonly unusable: readonly GivenHole[];
      readonly splitting?: readonly GivenHole[];
    }
  /** mm: the most room that was found about a hole's middle, where, and what the smallest hole would need. */
  | { readonly kind: 'no hole'; readonly room: number; readonly at: Point; readonly needed: number };

export interface EntryAsked {
  readonly shape: LikeLoops;
  readonly clear: Lookup;
  readonly measures: Measures;
  readonly tab: number;
  /** mm² of the loose piece. */
  readonly slug: number;
  /** Given for a heavy piece: where its weight acts. */
  readonly balance?: Point;
  /** Holes that are drilled anyway if a neighbour takes them too. */
  readonly shared: readonly GivenHole[];
  /** What the user sets of it. */
  readonly override?: PlacedOverride | undefined;
  readonly question: PlanQuestion;
}

/** As many layouts are tried for each segment looked at, the likeliest first. */
const TRIED_PER_SEGMENT = 2;

/** So many of the holes that are there are tried, the nearest to the contour first. */
const MOST_HOLES = 6;

export const candidatesFor = (asked: EntryAsked, effort: Effort): Candidates => {
  const { shape, clear, measures, question } = asked;
  const { loop, kept } = shape.first.loop;
  const rules: HoleRules = { diameter: question.startHole, roughOffset: measures.offsets[0], height: question.height };
  const { hole: own } = asked.override ?? {};
  if (own !== undefined) return { kind: 'ranked', ranked: fromOverride(own, asked, effort), unusable: [] };
  const usable = shape.first.holes.filter((h) => isUsable(h, clear, rules));
  const unusable = shape.first.holes.filter((h) => !usable.includes(h));
  const given = nearestHoles(usable, loop.contour, kept);
  const splits = splitsIn(asked);
  const fromGiven = given
    .flatMap((hole) => spotsFor(asked, effort, hole.at).map((spot) => withGiven(spot, hole, asked)))
    .sort(byCost)
    .slice(0, effort.segments)
    .map((c) => ({ ...c, splits: splits(c) }));
  const placements = spotsFor(asked, effort).map((spot) => ({ spot, placed: placed(spot, kept, clear, rules) }));
  const fromPlaced = placements.flatMap(({ spot, placed: p }) => (p.kind === 'fits' ? [withPlaced(spot, p, asked, rules)] : []));
  const fromShared = nearestHoles(asked.shared, loop.contour, kept)
    .flatMap((hole) => spotsFor(asked, effort, hole.at).map((spot) => withShared(spot, hole, asked)))
    .sort(byCost)
    .slice(0, effort.segments);
  const whole = fromGiven.filter((c) => !c.splits);
  const split = fromGiven.filter((c) => c.splits);
  const drilled = [...fromPlaced, ...fromShared].sort(byCost);
  // A hole that is there is somebody's wish, and a slug that it splits can be held in parts; once the proof has refused that, another is drilled.
  const once = asked.shape.members.every((m) => question.refused?.[m.loop.loop.id] === undefined);
  const ranked = (once ? [...whole, ...split, ...drilled] : [...whole, ...drilled, ...split]).slice(0, TRIED_PER_SEGMENT * effort.segments);
  if (ranked.length > 0) return { kind: 'ranked', ranked, unusable, splitting: given.filter((h) => split.some((c) => c.hole.at === h.at)) };
  const roomiest = placements.reduce((a, b) => (b.placed.room > a.placed.room ? b : a));
  return { kind: 'no hole', room: roomiest.placed.room, at: roomiest.spot.at, needed: leastRoom(rules) };
};

/** All likely entries, or the one that is set by hand. */
export const spotsFor = (asked: EntryAsked, effort: Effort, towards?: Point): readonly EntryPlace[] => {
  const { loop, kept } = asked.shape.first.loop;
  const wanted = stretchWanted(asked);
  const set = asked.override?.entry;
  return set === undefined ? spotsOf(loop.contour, kept, wanted, effort, towards) : [spotAtPlace(loop.contour, kept, wanted, set)];
};

/** From a hole set by hand, whether it splits the slug or not. */
const fromOverride = (hole: StartHole, asked: EntryAsked, effort: Effort): readonly Candidate[] => {
  const splits = splitsIn(asked);
  return spotsFor(asked, effort, hole.at)
    .map((spot) => ({ ...withGiven(spot, hole, asked), hole }))
    .map((c) => ({ ...c, splits: splits(c) }))
    .sort((a, b) => Number(a.splits) - Number(b.splits) || byCost(a, b))
    .slice(0, TRIED_PER_SEGMENT * effort.segments);
};

type Splits = (candidate: Candidate) => boolean;

/** A part's waste may fall apart as it likes, and so may a slug that the kerf eats up anyway. */
const splitsIn = ({ shape, measures, tab, slug }: EntryAsked): Splits => {
  if (shape.first.loop.kept === 'punch' || slug < LEAST_SLUG) return () => false;
  const own = lookupOf(shape.first.loop.loop.contour);
  return ({ spot, hole }) => splitsSlug(hole, spot, own, measures, tab);
};

/** mm² of slug below which nothing is left that could fall. */
const LEAST_SLUG = 0.05;

/** A part takes only a hole that is near it: a lead through half the block costs more than drilling. */
const nearestHoles = (holes: readonly GivenHole[], contour: Contour, kept: Kept): readonly GivenHole[] => {
  if (holes.length === 0) return holes;
  const own = lookupOf(contour);
  const measured = holes.map((hole) => ({ hole, away: awayFrom(own, hole.at) }));
  const near = kept === 'die' ? measured : measured.filter(({ away }) => away <= FARTHEST);
  return near
    .toSorted((a, b) => a.away - b.away)
    .slice(0, MOST_HOLES)
    .map(({ hole }) => hole);
};

/** Costs that differ only by rounding are equal, so that a drawing turned or moved is begun at the same spot. */
const byCost = (a: Candidate, b: Candidate): number => Math.round(a.cost * 1e5) - Math.round(b.cost * 1e5);

/** Several kerfs from a corner; behind the entry the tab, and for parts the turning of the skims on both sides. */
export const stretchWanted = ({ shape, measures, tab }: EntryAsked): StretchWanted => {
  const corner = cornerNeed(measures);
  const tightest = 3 * measures.kerf;
  if (shape.first.loop.kept === 'die') {
    return { back: tab + corner, ahead: measures.overlap + corner, tightest };
  }
  const beyond = beyondTab(measures);
  return { back: tab + beyond + corner, ahead: beyond + corner, tightest };
};

/** An entry nearer to a corner than this, mm, is said. */
export const cornerNeed = ({ kerf }: Measures): number => 4 * kerf;

const withGiven = (spot: EntryPlace, hole: GivenHole, asked: EntryAsked): Candidate => {
  const away = distanceBetween(hole.at, spot.at);
  const square = ((hole.at.x - spot.at.x) * spot.aside.x + (hole.at.y - spot.at.y) * spot.aside.y) / away;
  const cost = 0.2 * away + 3 * (1 - square) + spotCost(spot, asked);
  return { spot, hole: { at: hole.at, diameter: hole.diameter, origin: originOf(hole) }, cost, splits: false };
};

/** A hole that serves two is worth a longer way to it, mm. */
const SAVED_HOLE = 3;

const withShared = (spot: EntryPlace, hole: GivenHole, asked: EntryAsked): Candidate => {
  const one = withGiven(spot, hole, asked);
  return { ...one, hole: { ...one.hole, origin: 'placed' }, cost: one.cost - SAVED_HOLE };
};

/** In an opening within the disc that touches there; around a part also further out. */
const placed = (spot: EntryPlace, kept: Kept, clear: Lookup, rules: HoleRules): PlacedHole => {
  const near = placedFor(spot, clear, rules);
  if (kept === 'die' || (near.kind === 'fits' && near.hole.diameter === rules.diameter)) return near;
  const beyond = placedBeyond(spot, clear, rules);
  return beyond.kind === 'fits' ? beyond : near;
};

const withPlaced = (
  spot: EntryPlace,
  { hole, room, lead }: Extract<PlacedHole, { kind: 'fits' }>,
  asked: EntryAsked,
  rules: HoleRules,
): Candidate => {
  const smaller = rules.diameter - hole.diameter;
  const cramped = Math.max(0, roomFor(rules.diameter, rules) + 1 - room);
  return { spot, hole, cost: 0.2 * lead + 10 * smaller + cramped + spotCost(spot, asked), splits: false };
};

/** A heavy piece hangs best near its weight: each mm of lever is worth this much of a way, mm. */
const LEVER = 0.05;

/** mm worth: a start outside a part is worth a long way. */
const POCKET = 20;

/** Curves are worse than straights, and every missing millimetre to a corner counts. */
export const spotCost = (spot: EntryPlace, { shape, measures, tab, balance }: EntryAsked): number => {
  const short = (have: number, need: number): number => Math.max(0, need - have);
  const corner = cornerNeed(measures);
  // To 5 mm, so that of places as good as equal none is preferred for the noise of a fitted curve.
  const lever = balance === undefined ? 0 : LEVER * 5 * Math.round(distanceBetween(spot.at, balance) / 5);
  const { loop, kept } = shape.first.loop;
  const pocket = kept === 'punch' && isInPocket(spot, loop.contour) ? POCKET : 0;
  return pocket + lever + (spot.straight ? 0 : 4) + 2 * short(spot.back, tab + corner) + 2 * short(spot.ahead, measures.overlap + corner);
};
