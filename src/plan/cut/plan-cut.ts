/** The planner's one door: a question in, a plan out, stage by stage. */

import type { Contour } from '../../geometry/contour.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { filled, lastOf, mapFilled, type NonEmpty, sideBySide } from '../../sequence/sequence.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { count, term } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { coresOfUnknown, withCore } from '../core/core-choice.ts';
import { find } from '../findings.ts';
import { sortLoops } from '../kept-side.ts';
import { type LaidOut, layOut } from '../lay/lay-out.ts';
import { orderFindings } from '../order/order-override.ts';
import { itineraryOf, stepsFor } from '../order/steps.ts';
import type { VisitsOf } from '../path/contour-layout.ts';
import { type LaidLines, layLines } from '../path/lay-out-lines.ts';
import { movedContour } from '../path/moved.ts';
import type { NearestWire, Pass, Plan, PlannedClass, RefusedPlan, WireResult } from '../plan.ts';
import {
  type BlockAsked,
  type DrawnWork,
  type GivenHole,
  isFromEdge,
  type PlanQuestion,
  type ShopAsked,
  type WayAsked,
  type WorkAsked,
} from '../question.ts';
import { type LikeLoops, type Surroundings, shapesOf } from '../same-shape.ts';
import { besideBlock } from '../start/block-edge.ts';
import { holeFindings } from '../start/hole-findings.ts';
import { handOfUnknown, setFindings } from '../start/override.ts';
import { surroundingsOf } from '../surroundings.ts';
import { chooseWire, conditionsOf, type WireWithPasses } from '../wire/choose-wire.ts';
import { accuracyFigure, withShift } from '../wire/deviation-of-passes.ts';
import { type Family, requirementKey, requirementOf, widestOf } from '../wire/families.ts';
import { passOf } from '../wire/pass-of-row.ts';
import { countFindings } from '../wire/passes-for.ts';
import { blockFor, stockFindings, travelFindings } from './block.ts';
import { clampFindings } from './clamps.ts';
import { severalParts } from './several-parts.ts';
import { thinFindings } from './thin-places.ts';
import { roughedFirst } from './thin-webs.ts';
import { webFindings } from './webs.ts';

export const planCut = (question: PlanQuestion): Plan => {
  const sorted = sortLoops(question);
  const block = blockFor(sorted, question);
  const shapes = shapesIn(question, sorted);
  const choice = chooseWire(question, shapes);
  const nothing = sorted.cut.length + (question.open ?? []).length === 0 ? [nothingLeft(sorted.block.length)] : [];
  const before = [
    ...nothing,
    ...sorted.findings,
    ...coresOfUnknown(question, sorted),
    ...handOfUnknown(question, sorted),
    ...countFindings(question),
    ...setFindings(question),
    ...choice.findings,
    ...travelFindings(block, sorted.cut, question),
    ...stockFindings(block, sorted, question),
  ];
  if (choice.kind === 'none') return refusedPlan(question, block, before, nearestWire(question, choice.nearest, shapes));
  const { best } = choice;
  if (nothing.length > 0) return refusedPlan(question, block, before, nearestWire(question, best, shapes));
  const limits = widestOf(best);
  const roughed = question.run === 'attended' ? roughedFirst(sorted.cut, limits, question) : new Set(sorted.cut.map((c) => c.loop.id));
  const laid = layOut({ shapes, best, block, question, roughed });
  const webs = [...webFindings(sorted.cut, shapes, limits), ...thinFindings({ cut: sorted.cut, shapes, block, limits, roughed })];
  const holes = holesOf(question, sorted.drawnHoles);
  const open = layLines({ question, best, block, blockDrawn: sorted.block.length > 0, cut: sorted.cut, holes });
  const visits = [...laid.visits, ...visitsOfLines(open)];
  const findings = [
    ...before,
    ...laid.findings,
    ...holeFindings({ contours: laid.contours, lines: open.lines.map((l) => l.plan), wire: best.wire, question }),
    ...open.findings,
    ...webs,
    ...clampsOf(laid, open, question, limits.kerf / 2),
    ...orderFindings(visits, question),
  ];
  if (findings.some((f) => f.severity === 'refusal')) return refusedPlan(question, block, findings, nearestWire(question, best, shapes));
  const itinerary = itineraryOf(visits, question);
  const order = [...new Set(itinerary.map((stay) => stay.loop.loop.id))];
  return {
    ...plannedOf(question, block),
    ...resultOf(question, best),
    kind: 'cut',
    contours: laid.contours,
    openCuts: open.lines.length === 0 ? undefined : open.lines.map((l) => l.plan),
    order,
    // Written out when they are asked for: of thousands of openings the steps are most of what a plan would weigh.
    get steps() {
      return stepsFor(itinerary);
    },
    findings: [...findings, ...severalParts(sorted.cut, order)],
  };
};

/** The shapes of the loops that are cut, each with what lies in it. */
export const shapesIn = (question: PlanQuestion, sorted = sortLoops(question)): readonly LikeLoops[] => {
  const around = surroundingsOf(sorted.cut, holesOf(question, sorted.drawnHoles)).map((s) => withAsked(withCore(s, question), question));
  return shapesOf(around, (id) => isFromEdge(question, id));
};

const withAsked = (around: Surroundings, question: PlanQuestion): Surroundings => {
  const own = requirementOf(question, around.loop.loop.id);
  return own === undefined ? around : { ...around, asked: requirementKey(own) };
};

const NOWHERE = { x: 0, y: 0 };

const visitsOfLines = ({ lines }: LaidLines): readonly VisitsOf[] =>
  lines.map(({ plan, visits, depth }) => ({ loop: { loop: { id: plan.chain, depth }, kept: plan.kept }, by: NOWHERE, visits }));

const clampsOf = ({ contours, visits }: LaidOut, { lines }: LaidLines, { clamps = [] }: BlockAsked, halfKerf: number): readonly Finding[] =>
  clampFindings(
    clamps,
    clamps.length === 0
      ? []
      : [
          ...sideBySide(visits, contours).map(([{ loop, by, visits: own }, { hole }]) => ({ loop: loop.loop.id, by, hole, visits: own })),
          ...lines.map(({ plan, visits: own }) => ({ loop: plan.chain, by: NOWHERE, hole: besideBlock(plan.from.at), visits: own })),
        ],
    halfKerf,
  );

const holesOf = (question: DrawnWork & WayAsked, drawn: readonly GivenHole[]): readonly GivenHole[] => [
  ...question.holes,
  ...drawn,
  ...question.marks.map((at) => ({ at, diameter: question.startHole, toDrill: true as const })),
];

/** What is known of any plan, cut or refused. */
const plannedOf = ({ height, clamps = [] }: BlockAsked & WorkAsked, block: Contour) => ({
  height,
  block,
  clamps: clamps.length === 0 ? undefined : clamps,
});

const resultOf = (question: ShopAsked & WorkAsked, { wire, families }: WireWithPasses): WireResult => {
  const [first, ...others] = families;
  const passes = mapFilled(first.rows, passOf);
  const own = lastingOf(question, wire, first);
  const alike = first.classes.length === 1 && first.classes[0].ofJob && others.length === 0;
  const result = { wire, passes, ...own };
  if (alike) return result;
  const each = [
    { family: first, passes, own },
    ...others.map((family) => ({ family, passes: mapFilled(family.rows, passOf), own: lastingOf(question, wire, family) })),
  ];
  const classes = each.flatMap((e) =>
    e.family.classes.map(({ loops, asked }): PlannedClass => ({ loops, asked, passes: e.passes, ...e.own })),
  );
  return {
    ...result,
    passes: [...passes, ...each.slice(1).flatMap((e) => e.passes)] as unknown as NonEmpty<Pass>,
    classes: filled(classes, 'every family cuts for a class'),
  };
};

/** What the last pass of a family leaves. */
const lastingOf = (
  question: ShopAsked & WorkAsked,
  wire: Wire,
  { rows, shift, classes }: Family,
): Pick<WireResult, 'accuracy' | 'shift' | 'finish'> => {
  const last = lastOf(rows);
  const accuracy = withShift(accuracyFigure(conditionsOf(wire, question), rows, { ...question, ...classes[0].asked }), shift);
  return { accuracy, shift, finish: last.ra };
};

/** What the wire that comes nearest would leave of each contour. */
const nearestWire = (
  question: ShopAsked & WorkAsked,
  best: WireWithPasses | undefined,
  shapes: readonly LikeLoops[],
): NearestWire | undefined => {
  if (best === undefined) return undefined;
  const result = resultOf(question, best);
  return {
    ...result,
    accuracy: { ...result.accuracy, key: 'nearest.accuracy' },
    comesOut: sideBySide(best.fits, shapes).flatMap(([fit, { members }]) =>
      members.map(({ loop, by }) => ({ loop: loop.loop.id, contours: fit.comesOut.map((c) => movedContour(c, by)) })),
    ),
  };
};

const refusedPlan = (
  question: PlanQuestion,
  block: Contour,
  findings: readonly Finding[],
  nearest: NearestWire | undefined,
): RefusedPlan => ({ ...plannedOf(question, block), kind: 'refused', nearest, findings });

/** @param edges outermost loops that are the edge of the block. */
const nothingLeft = (edges: number): Finding => {
  if (edges === 0) return find('nothing-to-cut', say`No contour of the drawing is left to cut.`);
  const more = {
    place: atField('outline'),
    remedy: remedy(
      say('nothing-to-cut/edges.remedy')`To cut the outermost contours, set ${{ field: term('outline') }} to ${{ value: term('cut') }}.`,
      { field: 'outline', value: 'cut' },
    ),
  } as const;
  return edges === 1
    ? find('nothing-to-cut/edge', say`No contour of the drawing is left to cut: its only outermost contour is the block edge.`, more)
    : find(
        'nothing-to-cut/edges',
        say`No contour of the drawing is left to cut: its ${{ loops: count(edges) }} outermost contours are the block edge.`,
        more,
      );
};
