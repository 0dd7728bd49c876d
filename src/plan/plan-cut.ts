/** The planner's one door: a question in, a plan out, stage by stage. */
import type { Finding } from '../finding/finding.ts';
import { lookupOfSegments } from '../geometry/lookup.ts';
import { accuracyFigure } from './accuracy.ts';
import { blockFindings, blockFor } from './block.ts';
import { clampFindings, edgesOfClamp } from './clamps.ts';
import { type Designed, designFor, openingLookup } from './design.ts';
import { find } from './findings.ts';
import { type KeptLoop, sortLoops } from './kept.ts';
import { heightFigure, massOf } from './mass.ts';
import { movedContour, movedPoint } from './moved.ts';
import { passOf, unknownFigure } from './passes.ts';
import type { ContourPlan, Plan } from './plan.ts';
import type { GivenHole, PlanQuestion } from './question.ts';
import { type Shape, shapesOf } from './shapes.ts';
import { itineraryOf, stepsFor, type VisitsOf } from './steps.ts';
import { pieceArea, surroundingsOf } from './surroundings.ts';
import { thinFindings } from './thin-places.ts';
import { webFindings } from './webs.ts';
import { chooseWire, conditionsOf, type WireTried } from './wires.ts';

export const planCut = (question: PlanQuestion): Plan => {
  const sorted = sortLoops(question);
  const block = blockFor(sorted, question);
  const shapes = shapesOf(surroundingsOf(sorted.cut, holesOf(question, sorted.drawnHoles)));
  const choice = chooseWire(question, shapes);
  const nothing = sorted.cut.length === 0 ? [find('nothing-to-cut', 'No loop of the drawing is left to be cut.')] : [];
  const before = [...nothing, ...sorted.findings, ...choice.findings, ...blockFindings(block, question)];
  const { best } = choice;
  if (choice.kind === 'none' || best === undefined || nothing.length > 0) return refusedPlan(question, block, before, best, shapes);
  const laid = layOut(shapes, best, block, question);
  const limits = { kerf: measuresKerf(best), reach: reachOf(best) };
  const webs = [...webFindings(sorted.cut, shapes, limits), ...thinFindings({ cut: sorted.cut, shapes, block, limits })];
  const findings = [...before, ...laid.findings, ...webs, ...clampsOf(laid, question, limits.kerf / 2)];
  if (findings.some((f) => f.severity === 'refusal')) return refusedPlan(question, block, findings, best, shapes);
  const itinerary = itineraryOf(laid.visits, question);
  return {
    ...commonOf(question, best),
    kind: 'cut',
    block,
    contours: laid.contours,
    order: [...new Set(itinerary.map((stay) => stay.loop.loop.id))],
    // Written out when they are asked for: of thousands of openings the steps are most of what a plan would weigh.
    get steps() {
      return stepsFor(itinerary);
    },
    findings,
  };
};

const clampsOf = ({ contours, visits }: LaidOut, { clamps = [] }: PlanQuestion, halfKerf: number): readonly Finding[] =>
  clampFindings(
    clamps,
    clamps.length === 0
      ? []
      : visits.map(({ loop, by, visits: own }, i) => ({
          loop: loop.loop.id,
          by,
          hole: contours[i]!.hole,
          visits: own,
        })),
    halfKerf,
  );

const holesOf = (question: PlanQuestion, drawn: readonly GivenHole[]): readonly GivenHole[] => [
  ...question.holes,
  ...drawn,
  ...question.marks.map((at) => ({ at, diameter: question.startHole })),
];

const measuresKerf = ({ wire, rows }: WireTried): number => wire.diameter + 2 * rows[0]!.gap.value;

/** From a contour to the far side of its rough cut. */
const reachOf = ({ wire, rows }: WireTried): number => rows[0]!.offset.value + wire.diameter / 2 + rows[0]!.gap.value;

const commonOf = (question: PlanQuestion, best: WireTried) => {
  const last = best.rows.at(-1)!;
  return {
    wire: best.wire,
    height: question.height,
    ...(question.clamps === undefined || question.clamps.length === 0 ? {} : { clamps: question.clamps }),
    passes: best.rows.map(passOf),
    accuracy: accuracyFigure(conditionsOf(best.wire, question), last),
    finish: last.ra,
  };
};

interface LaidOut {
  readonly contours: readonly ContourPlan[];
  readonly visits: readonly VisitsOf[];
  readonly findings: readonly Finding[];
}

const layOut = (shapes: readonly Shape[], best: WireTried, block: Plan['block'], question: PlanQuestion): LaidOut => {
  const reach = reachOf(best);
  const height = heightFigure(question.height);
  const { density } = question.material;
  const everything = shapes.some((s) => s.first.loop.kept === 'punch') ? lookupOfSegments(allSegments(shapes, block, question)) : undefined;
  const placed = new Map<string, { readonly contour: ContourPlan; readonly visits: VisitsOf }>();
  const findings: Finding[] = [];
  shapes.forEach((shape, i) => {
    const { loop, inside } = shape.first;
    const area = pieceArea(shape.first, reach);
    const role = loop.kept === 'die' ? 'slug' : 'part';
    const mass = massOf(loop.loop.id, role, area, height, density);
    const clear =
      everything !== undefined && loop.kept === 'punch'
        ? everything
        : openingLookup(
            loop.loop.contour,
            inside.map((k) => k.loop.contour),
          );
    const designed = designFor({
      shape,
      fit: best.fits[i]!,
      rows: best.rows,
      wireDiameter: best.wire.diameter,
      piece: { mass: mass.value, area },
      clear,
      question,
    });
    findings.push(...designed.findings);
    if (designed.kind === 'not laid') return;
    for (const member of shape.members) {
      const id = member.loop.loop.id;
      const own = id === loop.loop.id ? mass : massOf(id, role, area, height, density);
      placed.set(id, {
        contour: contourPlanOf(member, designed, best.fits[i]!.comesOut, { role, area, mass: own }),
        visits: { ...member, visits: designed.design.visits },
      });
    }
  });
  const inOrder = shapes
    .flatMap((s) => s.members)
    .map((m) => placed.get(m.loop.loop.id))
    .filter((p) => p !== undefined);
  return { contours: inOrder.map((p) => p.contour), visits: inOrder.map((p) => p.visits), findings };
};

const allSegments = (shapes: readonly Shape[], block: Plan['block'], { clamps = [] }: PlanQuestion) => [
  ...block.segments,
  ...clamps.flatMap(edgesOfClamp),
  ...shapes.flatMap((s) => s.members.flatMap((m) => m.loop.loop.contour.segments)),
];

const contourPlanOf = (
  { loop, by }: { readonly loop: KeptLoop; readonly by: { readonly x: number; readonly y: number } },
  { design }: Extract<Designed, { readonly kind: 'laid' }>,
  comesOut: ContourPlan['comesOut'],
  piece: ContourPlan['piece'],
): ContourPlan => ({
  loop: loop.loop.id,
  kept: loop.kept,
  hole: { ...design.hole, at: movedPoint(design.hole.at, by) },
  entry: { ...design.entry, at: movedPoint(design.entry.at, by) },
  tab: { ...design.tab, from: movedPoint(design.tab.from, by) },
  piece,
  // Moved here when they are asked for: thousands of openings of a few shapes would each keep their own.
  get comesOut() {
    return comesOut.map((c) => movedContour(c, by));
  },
  get courses() {
    return design.courses.map((c) => ({ pass: c.pass, programmed: movedContour(c.programmed, by), centre: movedContour(c.centre, by) }));
  },
});

/** The plan that says no: no steps, but what the best wire would leave of each contour. */
const refusedPlan = (
  question: PlanQuestion,
  block: Plan['block'],
  findings: readonly Finding[],
  best: WireTried | undefined,
  shapes: readonly Shape[],
): Plan => {
  const common =
    best !== undefined && best.rows.length > 0
      ? commonOf(question, best)
      : {
          wire: best?.wire ?? question.wires[0] ?? NO_WIRE,
          height: question.height,
          passes: [],
          accuracy: unknownFigure('plan.accuracy', 'tolerance asked for; no cut could be worked out', question.tolerance, 'mm'),
          finish: unknownFigure('plan.finish', 'Ra asked for; no cut could be worked out', question.finish, 'µm'),
        };
  const wouldComeOut = (best?.fits ?? []).flatMap((fit, i) =>
    shapes[i]!.members.map(({ loop, by }) => ({ loop: loop.loop.id, contours: fit.comesOut.map((c) => movedContour(c, by)) })),
  );
  return { ...common, kind: 'refused', block, contours: [], wouldComeOut, order: [], steps: [], findings };
};

/** Stands where a shop file without any wire leaves nothing to name. */
const NO_WIRE: Plan['wire'] = {
  id: 'none',
  name: 'no',
  diameter: 0.25,
  kind: 'brass',
  density: 8.5,
  tension: 12,
  speed: 10,
  price: 0,
  spool: 0,
  inStock: false,
};
