/** Lays out every shape with the wire that was chosen: hole, entry, tab, laps and corners, moved to where its members stand. */
import type { Finding } from '../finding/finding.ts';
import { type Lookup, lookupOfSegments } from '../geometry/lookup.ts';
import type { Point } from '../geometry/segment.ts';
import { edgesOfClamp } from './clamps.ts';
import { lagFindings, worstCorner } from './corner-lag.ts';
import { type Design, designFor, openingLookup } from './design.ts';
import type { KeptLoop } from './kept.ts';
import { heightFigure, massOf } from './mass.ts';
import { movedContour, movedPoint } from './moved.ts';
import { type CornersOfShape, outsideNotes } from './outside-notes.ts';
import type { ContourPlan, Plan, WorstCorner } from './plan.ts';
import type { PlanQuestion } from './question.ts';
import { type Shape, shapeName } from './shapes.ts';
import type { VisitsOf } from './steps.ts';
import { pieceArea } from './surroundings.ts';
import type { WireTried } from './wires.ts';

export interface LaidOut {
  readonly contours: readonly ContourPlan[];
  /** Same index as contours. */
  readonly visits: readonly VisitsOf[];
  readonly findings: readonly Finding[];
}

export interface LayOutAsked {
  readonly shapes: readonly Shape[];
  readonly best: WireTried;
  readonly block: Plan['block'];
  readonly question: PlanQuestion;
  /** From a contour to the far side of its rough cut, mm. */
  readonly reach: number;
}

export const layOut = (asked: LayOutAsked): LaidOut => {
  const { shapes, best, question } = asked;
  const height = heightFigure(question.height);
  const everything = shapes.some((s) => s.first.loop.kept === 'punch') ? lookupOfSegments(allSegments(asked)) : undefined;
  const contours: ContourPlan[] = [];
  const visits: VisitsOf[] = [];
  const findings: Finding[] = [];
  const corners: (CornersOfShape & { readonly radius: number })[] = [];
  shapes.forEach((shape, i) => {
    const { loop } = shape.first;
    const area = pieceArea(shape.first, asked.reach);
    const role = loop.kept === 'die' ? 'slug' : 'part';
    const massFor = (id: string) => massOf(id, role, area, height, question.material.density);
    const mass = massFor(loop.loop.id);
    const designed = designFor({
      shape,
      fit: best.fits[i]!,
      rows: best.rows,
      wireDiameter: best.wire.diameter,
      piece: { mass: mass.value, area },
      clear: clearFor(shape, everything),
      question,
    });
    findings.push(...designed.findings);
    if (designed.kind === 'not laid') return;
    const { design } = designed;
    corners.push({ loop: loop.loop.id, name: shapeName(shape), members: shape.members.length, ...design.outside });
    const corner = cornerOf(shape, design, asked);
    for (const member of shape.members) {
      const id = member.loop.loop.id;
      const piece = { role, area, mass: id === loop.loop.id ? mass : massFor(id) } as const;
      contours.push(contourPlanOf(member, design, { comesOut: best.fits[i]!.comesOut, piece, corner }));
      visits.push({ ...member, visits: design.visits });
    }
  });
  const notes = [...outsideNotes(corners, corners[0]?.radius ?? 0, question), ...lagFindings(contours, question.tolerance)];
  return { contours, visits, findings: [...findings, ...notes] };
};

/** A part's leads keep clear of everything; an opening's of itself and of what stands in it. */
const clearFor = ({ first: { loop, inside } }: Shape, everything: Lookup | undefined): Lookup =>
  everything !== undefined && loop.kept === 'punch'
    ? everything
    : openingLookup(
        loop.loop.contour,
        inside.map((k) => k.loop.contour),
      );

const cornerOf = ({ first }: Shape, { outside }: Design, { best, question }: LayOutAsked): WorstCorner | undefined =>
  worstCorner({
    contour: first.loop.loop.contour,
    kept: first.loop.kept,
    passes: best.rows,
    outsideCorners: question.outsideCorners,
    looped: outside.looped.map((c) => c.at),
  });

const allSegments = ({ shapes, block, question: { clamps = [] } }: LayOutAsked) => [
  ...block.segments,
  ...clamps.flatMap(edgesOfClamp),
  ...shapes.flatMap((s) => s.members.flatMap((m) => m.loop.loop.contour.segments)),
];

const contourPlanOf = (
  { loop, by }: { readonly loop: KeptLoop; readonly by: Point },
  design: Design,
  { comesOut, piece, corner }: Pick<ContourPlan, 'comesOut' | 'piece'> & { readonly corner: WorstCorner | undefined },
): ContourPlan => ({
  loop: loop.loop.id,
  kept: loop.kept,
  hole: { ...design.hole, at: movedPoint(design.hole.at, by) },
  entry: { ...design.entry, at: movedPoint(design.entry.at, by) },
  tab: { ...design.tab, from: movedPoint(design.tab.from, by) },
  piece,
  ...(corner && { corner: { ...corner, at: movedPoint(corner.at, by) } }),
  // Moved here when they are asked for: thousands of openings of a few shapes would each keep their own.
  get comesOut() {
    return comesOut.map((c) => movedContour(c, by));
  },
  get courses() {
    return design.courses.map((c) => ({ pass: c.pass, programmed: movedContour(c.programmed, by), centre: movedContour(c.centre, by) }));
  },
});
