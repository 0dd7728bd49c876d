/** Lays out every shape with the wire that was chosen: hole, entry, tab, laps and corners, moved to where its members stand. */

import type { Contour } from '../../geometry/contour.ts';
import { type Lookup, lookupOf, lookupOfSegments } from '../../geometry/near/lookup.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import { massOf, pieceOf } from '../../physics/material/piece-mass.ts';
import { workHeight } from '../../physics/work-height.ts';
import { grouped, type NonEmpty, sideBySide } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { edgesOfClamp } from '../clamp.ts';
import type { KeptLoop } from '../kept-side.ts';
import { type VisitsOf, visitInFamily } from '../path/contour-layout.ts';
import { looseOf, nothingLoose } from '../path/loose-piece.ts';
import { movedContour, movedPoint } from '../path/moved.ts';
import type { ContourPlan, NoCoreCut, WorstCorner } from '../plan.ts';
import { isFromEdge, type PlanQuestion } from '../question.ts';
import { kerfOf, reachOf } from '../rough-cut.ts';
import { type LikeLoops, shapeName } from '../same-shape.ts';
import { openedFrame } from '../start/block-edge.ts';
import { sharedFindings, sharedHoles } from '../start/shared-holes.ts';
import { pieceArea } from '../surroundings.ts';
import type { WireWithPasses } from '../wire/choose-wire.ts';
import { askedOf, familyOf } from '../wire/families.ts';
import { lagFindings, worstCorner } from './corner-lag.ts';
import { type Design, type DesignAsked, openingLookup } from './design.ts';
import { membersDesigned } from './members-designed.ts';
import { type CornersOfShape, outsideNotes } from './outside-notes.ts';

export interface LaidOut {
  readonly contours: readonly ContourPlan[];
  /** Same index as contours. */
  readonly visits: readonly VisitsOf[];
  readonly findings: readonly Finding[];
}

export interface LayOutAsked {
  readonly shapes: readonly LikeLoops[];
  readonly best: WireWithPasses;
  readonly block: Contour;
  readonly question: PlanQuestion;
  /** Openings that are roughed before they are finished, beside thin webs. */
  readonly roughed?: ReadonlySet<string> | undefined;
}

export const layOut = (asked: LayOutAsked): LaidOut => {
  const { shapes, best, question } = asked;
  const height = workHeight(question.height);
  const everything = shapes.some((s) => s.first.loop.kept === 'punch') ? lookupOfSegments(allSegments(asked)) : undefined;
  const shared = holesToShare(asked);
  const contours: ContourPlan[] = [];
  const visits: VisitsOf[] = [];
  const findings: Finding[] = [];
  const corners: (CornersOfShape & { readonly radius: number })[] = [];
  for (const [shape, fit] of sideBySide(shapes, best.fits)) {
    const { loop } = shape.first;
    const { rows, base } = familyOf(best, loop.loop.id);
    const reach = reachOf({ wire: best.wire, rows });
    const area = pieceArea(shape.first, reach);
    const role = loop.kept === 'die' ? 'slug' : 'part';
    const massFor = (id: string, of: number) =>
      massOf({ key: `contour.${id}`, what: pieceOf[role](id), area: of, height, density: question.material.density });
    const mass = massFor(loop.loop.id, area);
    const kerf = kerfOf({ wire: best.wire, rows });
    const whole = looseOf(shape.first, { role, area, height: question.height, reach, mass: mass.value });
    const weighed = { ...whole, mass: mass.value };
    const own = questionFor(shape, asked);
    const coreAsked = { shape, piece: weighed, reach, kerf, rough: rows[0], wire: best.wire, question: own };
    const designAsked: DesignAsked = {
      shape,
      fit,
      rows,
      wireDiameter: best.wire.diameter,
      piece: weighed,
      ...clearFor(shape, everything, asked),
      shared: shared.get(loop.loop.id) ?? [],
      question: own,
    };
    const made = membersDesigned(designAsked, coreAsked);
    findings.push(...made.findings);
    const some = made.members[0];
    if (some === undefined) continue;
    corners.push({ loop: loop.loop.id, name: shapeName(shape), members: shape.members.length, ...some.design.outside });
    const corner = cornerOf(shape, some.design, rows, asked);
    for (const { member, design: alone, noCore, overrides } of made.members) {
      const design = inFamily(alone, base);
      const id = member.loop.loop.id;
      const loose = noCore === undefined ? whole : nothingLoose(whole);
      const weight = id === loop.loop.id && noCore === undefined ? mass : massFor(id, loose.area);
      const piece = { ...loose, mass: weight, balance: movedPoint(loose.balance, member.by) };
      contours.push(contourPlanOf(member, design, { comesOut: fit.comesOut, piece, corner, core: noCore, overrides }));
      visits.push({ ...member, visits: design.visits });
    }
  }
  const notes = [
    ...outsideNotes(corners, corners[0]?.radius ?? 0, question),
    ...[...grouped(contours, (c) => askedOf(question, c.loop).tolerance)].flatMap(([tolerance, own]) =>
      lagFindings(own, { ...question, tolerance }),
    ),
    ...contours.filter((c) => c.hole.origin === 'block edge').map(openedFrame),
    ...sharedFindings(contours),
  ];
  return { contours, visits, findings: [...findings, ...notes] };
};

/** A design whose passes bear the numbers of their family. */
const inFamily = (design: Design, base: number): Design =>
  base === 0
    ? design
    : {
        ...design,
        courses: design.courses.map((c) => ({ ...c, pass: c.pass + base })),
        visits: design.visits.map((v) => visitInFamily(v, base)),
      };

/** Beside a thin web openings are cut as in a run without an operator: each roughed up to its tab, and finished when all are. */
const questionFor = ({ members }: LikeLoops, { question, roughed = new Set() }: LayOutAsked): PlanQuestion =>
  members.some(({ loop }) => roughed.has(loop.loop.id)) ? { ...question, run: 'unattended first' } : question;

/** A part's leads keep clear of everything; an opening's of itself and of what stands in it. */
const clearFor = (shape: LikeLoops, everything: Lookup | undefined, asked: LayOutAsked): Pick<DesignAsked, 'clear' | 'edge'> => {
  const { loop, inside } = shape.first;
  const own = () =>
    openingLookup(
      loop.loop.contour,
      inside.map((k) => k.loop.contour),
    );
  if (!isFromEdge(asked.question, loop.loop.id)) return { clear: everything !== undefined && loop.kept === 'punch' ? everything : own() };
  // What is in the way from the edge of the block is everything else, but not the edge itself.
  const others = otherSegments(asked, loop.loop.id);
  const edge = { edge: lookupOf(asked.block), others: others.length === 0 ? undefined : lookupOfSegments(others) };
  return { clear: loop.kept === 'die' ? own() : lookupOfSegments([...loop.loop.contour.segments, ...others]), edge };
};

/** Holes in the waste between two parts that both are begun from a hole. */
const holesToShare = ({ shapes, best, question }: LayOutAsked): ReturnType<typeof sharedHoles> => {
  const parts = shapes.map((s) => s.first.loop).filter((l) => l.kept === 'punch' && !isFromEdge(question, l.loop.id));
  return sharedHoles(parts, {
    diameter: question.startHole,
    roughOffset: Math.max(...best.families.map((f) => f.rows[0].offset.value)),
    height: question.height,
  });
};

const cornerOf = (
  { first }: LikeLoops,
  { outside }: Design,
  rows: NonEmpty<LadderRow>,
  { question }: LayOutAsked,
): WorstCorner | undefined =>
  worstCorner({
    contour: first.loop.loop.contour,
    kept: first.loop.kept,
    passes: rows,
    outsideCorners: question.outsideCorners,
    looped: outside.looped.map((c) => c.at),
  });

const allSegments = (asked: LayOutAsked): readonly Segment[] => [...asked.block.segments, ...otherSegments(asked)];

/** Clamps, and all contours but one. */
const otherSegments = ({ shapes, question: { clamps = [] } }: LayOutAsked, but?: string): readonly Segment[] => [
  ...clamps.flatMap(edgesOfClamp),
  ...shapes.flatMap((s) => s.members.flatMap((m) => (m.loop.loop.id === but ? [] : m.loop.loop.contour.segments))),
];

const contourPlanOf = (
  { loop, by }: { readonly loop: KeptLoop; readonly by: Point },
  design: Design,
  {
    comesOut,
    piece,
    corner,
    core,
    overrides,
  }: Pick<ContourPlan, 'comesOut' | 'piece'> & {
    readonly corner: WorstCorner | undefined;
    readonly core: NoCoreCut | undefined;
    readonly overrides: NonNullable<ContourPlan['overrides']>;
  },
): ContourPlan => ({
  loop: loop.loop.id,
  kept: loop.kept,
  hole: { ...design.hole, at: movedPoint(design.hole.at, by) },
  entry: { ...design.entry, at: movedPoint(design.entry.at, by) },
  tab: design.tab && { ...design.tab, from: movedPoint(design.tab.from, by) },
  piece,
  core,
  overrides: overrides.length === 0 ? undefined : overrides,
  corner: corner && { ...corner, at: movedPoint(corner.at, by) },
  // Moved here when they are asked for: thousands of openings of a few shapes would each keep their own.
  get comesOut() {
    return comesOut.map((c) => movedContour(c, by));
  },
  get courses() {
    return design.courses.map((c) => ({ pass: c.pass, programmed: movedContour(c.programmed, by), centre: movedContour(c.centre, by) }));
  },
});
