/** Everything that is decided for one shape: hole, entry, tab, laps, and the steps of each visit to it. */

import { perimeterOf } from '../../geometry/area.ts';
import { startAt } from '../../geometry/chain.ts';
import type { Contour } from '../../geometry/contour.ts';
import { nearestOnChain } from '../../geometry/near/distance.ts';
import { type Lookup, lookupOf, lookupOfSegments } from '../../geometry/near/lookup.ts';
import { touchingDisc } from '../../geometry/near/touching-disc.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import { isFilled, itemAt, mapFilled, type NonEmpty, sideBySide } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { NOTHING } from '../../text/say.ts';
import { corePathFrom } from '../core/core-laid.ts';
import type { CorePath } from '../core/core-path.ts';
import type { Ring } from '../core/core-rings.ts';
import { noCoreAttended, noCoreUnattended } from '../core/no-core-steps.ts';
import type { Layout, Visit } from '../path/contour-layout.ts';
import { dieAttended, dieUnattended } from '../path/die.ts';
import { centreOf, frameAt, type LapOptions, lapOf, programmedOf } from '../path/lap.ts';
import { leadsClear, leadsLongEnough } from '../path/lead-check.ts';
import type { PassLap } from '../path/leads.ts';
import { withoutShortMoves } from '../path/least-move.ts';
import { cornersToLoop, loopRadius, type OutsideCorner, outsideCorners } from '../path/outside-corners.ts';
import { spokenPiece } from '../path/piece-stops.ts';
import { punchAttended, punchUnattended } from '../path/punch.ts';
import type { Course, Entry, Kept, LoosePiece, StartHole, Tab } from '../plan.ts';
import type { GivenHole, PlanQuestion, WayAsked } from '../question.ts';
import { type LikeLoops, shapeName } from '../same-shape.ts';
import { besideBlock, noWayIn } from '../start/block-edge.ts';
import { type EdgeAsked, edgeCandidates } from '../start/edge-entry.ts';
import { type Candidate, type Candidates, candidatesFor, type EntryAsked } from '../start/entry.ts';
import { type Effort, QUICK, THOROUGH } from '../start/entry-places.ts';
import { LEAST_ROOM, type Measures, measuresOf, ROOMY_LEAD } from '../start/lead-lengths.ts';
import type { PlacedOverride } from '../start/override.ts';
import { pocketBreaks } from '../start/pocket-breaks.ts';
import { isRefused } from '../start/refused-start.ts';
import { slugBreaks } from '../start/slug-breaks.ts';
import { strengthened, type TabSize, tabAgainstBending, tabFor, tabFromOverride } from '../start/tab.ts';
import type { Fit } from '../wire/fit-of-shape.ts';
import { entryFindings, holeFinding, leadFinding, passedOverFindings, unusableFindings } from './design-findings.ts';
import { enteredFrom } from './entered-from-edge.ts';

export interface Design {
  readonly hole: StartHole;
  readonly entry: Entry;
  /** None where the opening is cut without a core. */
  readonly tab?: Tab | undefined;
  readonly core?: CorePath | undefined;
  readonly courses: readonly Course[];
  readonly visits: readonly Visit[];
  /** Sharp outside corners that are gone round by a loop, and the radius of the loops; those left to the control. */
  readonly outside: { readonly looped: readonly OutsideCorner[]; readonly left: readonly OutsideCorner[]; readonly radius: number };
}

export type Designed =
  | { readonly kind: 'laid'; readonly design: Design; readonly findings: readonly Finding[] }
  | { readonly kind: 'not laid'; readonly findings: readonly Finding[] };

/** What of the loose piece decides where and how it hangs; mass in kg, area in mm². */
export type WeighedPiece = Omit<LoosePiece, 'mass'> & { readonly mass: number };

export interface DesignAsked {
  readonly shape: LikeLoops;
  readonly fit: Fit;
  readonly rows: NonEmpty<LadderRow>;
  readonly wireDiameter: number;
  /** The piece that comes loose, as its first member has it. */
  readonly piece: WeighedPiece;
  /** Contours that leads and drill must keep clear of: its own, and what stands in the opening or around the part. */
  readonly clear: Lookup;
  readonly shared: readonly GivenHole[];
  /** Given where the contour is begun from the edge of the block. */
  readonly edge?: Pick<EdgeAsked, 'edge' | 'others'>;
  /** The rings of an opening that is cut without a core. */
  readonly rings?: Ring;
  /** What the user sets of it. */
  readonly override?: PlacedOverride | undefined;
  readonly question: PlanQuestion;
}

export const designFor = (asked: DesignAsked): Designed => {
  const { shape, rows, wireDiameter, rings, piece } = asked;
  const { contour } = shape.first.loop.loop;
  const measures = measuresOf(rows, wireDiameter);
  // An opening that is cut without a core is begun where its slug would be, so that there is a way in whenever there is one for a slug.
  const tab = overrideTab(asked.override) ?? tabFor({ ...piece, perimeter: perimeterOf(contour) });
  const noCore = rings !== undefined;
  const wasRefused = isRefused(shape, asked.question);
  let refusal = leadFinding(shape, measures);
  for (const effort of [QUICK, THOROUGH]) {
    const slug = noCore ? 0 : piece.area;
    const candidates = candidatesOf({ ...asked, measures, tab: tab.length, slug, ...pullOf(piece) }, asked.edge, effort);
    if (candidates.kind === 'no way in') {
      refusal = noWayIn(shapeName(shape), shape.first.loop.loop.id, contour.segments[0].from);
      continue;
    }
    if (candidates.kind === 'no hole') {
      refusal = holeFinding(shape, candidates, asked.question);
      continue;
    }
    refusal = leadFinding(shape, measures);
    for (const candidate of candidates.ranked) {
      if (wasRefused(candidate.spot.at)) continue;
      const own = noCore ? NO_TAB : hangingTab(asked, candidate, tab);
      const design = laidOut(asked, measures, candidate, own);
      if (design === undefined) continue;
      const laid = { tab: own.length, piece, measures, noCore, weak: own.weak, override: asked.override };
      const entry = entryFindings(shape, candidate, laid);
      return {
        kind: 'laid',
        design,
        findings: [...unusableFindings(shape, candidates.unusable), ...passedOver(shape, candidates, candidate), ...entry],
      };
    }
  }
  return { kind: 'not laid', findings: [refusal] };
};

/** Holes of an opening from which the cut could begin and does not. */
const passedOver = (
  shape: LikeLoops,
  { splitting = [] }: Extract<Candidates, { kind: 'ranked' }>,
  { hole }: Candidate,
): readonly Finding[] => (shape.first.loop.kept === 'punch' || hole.origin !== 'placed' ? [] : passedOverFindings(shape, splitting));

/** Of an opening that is cut without a core nothing is left to be held. */
const NO_TAB = { length: 0, reason: NOTHING, weak: false };

const overrideTab = (override: PlacedOverride | undefined): TabSize | undefined =>
  override?.tab === undefined ? undefined : tabFromOverride(override.tab);

/** kg: heavier pieces are begun, and so hang, near where their weight acts. */
const HEAVY = 2;

const pullOf = ({ mass, balance }: WeighedPiece): Pick<EntryAsked, 'balance'> => (mass < HEAVY ? {} : { balance });

/** The tab at a candidate's entry, long enough for the weight beside it. */
const hangingTab = (
  { piece, shape, question, override }: DesignAsked,
  { spot }: Candidate,
  tab: TabSize,
): TabSize & { readonly weak: boolean } => {
  const lever = distanceBetween(spot.at, piece.balance);
  const { height, material } = question;
  const needed = tabAgainstBending({ mass: piece.mass, lever, height, family: material.family });
  if (override?.tab !== undefined) return { ...tab, weak: needed > tab.length + 0.01 };
  return strengthened(tab, needed, perimeterOf(shape.first.loop.loop.contour));
};

const candidatesOf = (asked: EntryAsked, edge: DesignAsked['edge'], effort: Effort): Candidates | { readonly kind: 'no way in' } => {
  if (edge === undefined) return candidatesFor(asked, effort);
  const ranked = edgeCandidates({ ...asked, ...edge }, effort);
  return ranked.length === 0 ? { kind: 'no way in' } : { kind: 'ranked', ranked, unusable: [] };
};

/** The design from one candidate for entry and hole; none when the leads from there would touch metal that stays. */
const laidOut = (asked: DesignAsked, measures: Measures, candidate: Candidate, tab: TabSize): Design | undefined => {
  const { shape, fit, clear, piece, question } = asked;
  const { contour } = shape.first.loop.loop;
  const { kept } = shape.first.loop;
  const { spot, hole } = candidate;
  const rotated = fit.opened
    .flatMap((opened) => startedAt(opened, spot.at) ?? [])
    .map((opened) => withoutShortMoves(opened, question.leastMove));
  if (!isFilled(rotated) || rotated.length < fit.opened.length) return undefined;
  const side = kept === 'die' ? 1 : -1;
  const outside = outsideOf(asked, measures);
  const loops: Pick<LapOptions, 'loops'> =
    outside.looped.length === 0 ? {} : { loops: { radius: outside.radius, at: outside.looped.map((c) => c.at) } };
  const laps = mapFilled(
    rotated,
    (opened, i): PassLap => ({
      lap: lapOf(opened, { side, offset: itemAt(measures.offsets, i), outsideCorners: question.outsideCorners, ...loops }),
      pass: i + 1,
    }),
  );
  const own = kept === 'die' ? lookupOf(contour) : clear;
  const hold = holdOf(asked, candidate, { measures, tab: tab.length, round: laps[0].lap.length });
  const layout: Layout = {
    laps,
    hole: hole.at,
    tab: hold.tab,
    breaks: hold.breaks,
    measures,
    piece: spokenPiece(piece, distanceBetween(spot.at, piece.balance), question.material.family),
    ...turningOf(kept, own, laps, measures),
  };
  const core = asked.rings && corePathFrom({ layout, rings: asked.rings, hole, height: question.height });
  if (core === 'no way') return undefined;
  const visits = core === undefined ? visitsOf(kept, question, layout) : noCoreVisits(question, layout, core);
  if (!visits.every((v) => leadsLongEnough(v.steps, measures.offsets) && leadsClear(v.steps, own, measures.offsets))) return undefined;
  const from = laps[0].lap.length - hold.tab;
  const { beside } = candidate;
  return {
    hole: beside === undefined ? hole : besideBlock(beside),
    entry: { at: spot.at, segment: spot.segment, share: spot.share },
    ...(core === undefined ? { tab: { from: frameAt(laps[0].lap, from).at, length: hold.tab, reason: tab.reason } } : { core }),
    courses: sideBySide(laps, rotated).map(([{ lap, pass }, opened]) => ({
      pass,
      programmed: outside.looped.length === 0 ? opened : programmedOf(lap),
      centre: centreOf(lap),
    })),
    visits: beside === undefined ? visits : enteredFrom(visits, beside, hole.at),
    outside,
  };
};

/** Where the slug comes apart on the way, and the tab, longer where it would begin behind such a place. */
const holdOf = (
  { shape, rings, question }: DesignAsked,
  candidate: Candidate,
  { measures, tab, round }: { readonly measures: Measures; readonly tab: number; readonly round: number },
): Pick<Layout, 'breaks' | 'tab'> => {
  if (rings !== undefined) return { breaks: [], tab };
  const loose = breaksAtNecks(shape, question, candidate, measures);
  if (shape.first.loop.kept === 'punch') return { breaks: loose.filter((b) => b.end <= round - tab - NEAR_TAB), tab };
  const breaks = [...slugBreaks({ around: shape.first, candidate, measures, tab }), ...loose].sort((a, b) => a.start - b.start);
  const late = breaks.find((b) => b.end > round - tab - NEAR_TAB);
  return late === undefined
    ? { breaks, tab }
    : { breaks: breaks.filter((b) => b.end <= late.start), tab: Math.min(round, Math.max(tab, round - late.start + tab)) };
};

/** Waste behind necks, looked for where the proof refused the contour before. */
const breaksAtNecks = ({ first, members }: LikeLoops, { refused }: WayAsked, { spot }: Candidate, measures: Measures): Layout['breaks'] =>
  members.some((m) => refused?.[m.loop.loop.id] !== undefined) ? pocketBreaks(first.loop, spot, measures) : [];

/** A break that ends nearer to the tab, mm, is cut with the tab: between the two hardly anything would be left to hold. */
const NEAR_TAB = 0.5;

/** Sharp outside corners with room for it are gone round by a loop where the job asks for that. */
const outsideOf = ({ shape, clear, question }: DesignAsked, measures: Measures): Design['outside'] => {
  const { loop, kept } = shape.first.loop;
  const halfKerf = measures.kerf / 2;
  const radius = loopRadius(measures.offsets[0], halfKerf);
  const corners = outsideCorners(loop.contour, kept);
  if (question.sharpOutside !== 'loop') return { looped: [], left: corners, radius };
  return { ...cornersToLoop(corners, loop.contour, clear, { radius, halfKerf }), radius };
};

/** The opened contour begun at the entry; none when the entry is rounded away there. */
const startedAt = (opened: Contour, at: { readonly x: number; readonly y: number }): Contour | undefined => {
  const found = nearestOnChain(opened, at);
  if (found.distance > 1e-6) return undefined;
  return startAt(opened, found.segment, found.share);
};

/** In an opening with its slug out there may be room to turn in the open; a part is cut free last, so the kerf must do. */
const turningOf = (kept: Kept, own: Lookup, laps: Layout['laps'], measures: Measures): Pick<Layout, 'lead' | 'turning'> => {
  const rough = measures.offsets[0];
  if (kept === 'punch') return { lead: measures.kerfLead, turning: 'in stubs' };
  const most = rough + ROOMY_LEAD;
  const room = Math.min(
    ...[0, measures.overlap].map((at) => {
      const frame = frameAt(laps[0].lap, at);
      return touchingDisc(own, frame.at, frame.aside, most).radius;
    }),
  );
  if (room >= rough + LEAST_ROOM) return { lead: room - 1e-6, turning: 'in the open' };
  return { lead: Math.min(measures.kerfLead, room - 1e-6), turning: 'in the kerf' };
};

const visitsOf = (kept: Kept, question: WayAsked, layout: Layout): readonly Visit[] => {
  const attended = question.run === 'attended';
  if (kept === 'die') return attended ? dieAttended(layout) : dieUnattended(layout);
  return attended ? punchAttended(layout) : punchUnattended(layout);
};

const noCoreVisits = (question: WayAsked, layout: Layout, core: CorePath): readonly Visit[] =>
  question.run === 'attended' ? noCoreAttended(layout, core) : noCoreUnattended(layout, core);

/** For openings: what stands inside, and the contour itself. */
export const openingLookup = (contour: Contour, inside: readonly Contour[]): Lookup =>
  lookupOfSegments([contour, ...inside].flatMap((c) => c.segments));
