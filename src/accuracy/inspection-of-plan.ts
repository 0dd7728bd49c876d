/** What of a finished piece is to be measured: profile, sizes across each contour, its tightest corner, finish and straightness. */

import { boundsOfChain } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import { type Arc, distanceBetween } from '../geometry/segment.ts';
import type { Material } from '../physics/material/material.ts';
import { classOf, mainPasses } from '../plan/classes.ts';
import { insideArcs } from '../plan/inside-arcs.ts';
import { numbered } from '../plan/numbered.ts';
import type { CutPlan } from '../plan/plan.ts';
import type { Wanted } from '../proof/proof.ts';
import type { NamedSize, PlanBudgets } from './budget-of-plan.ts';
import type { Inspection, InspectionRow } from './inspection.ts';
import { referenceTemperature, thermalGrowth } from './thermal-growth.ts';

export interface InspectAsked {
  /** Ra, µm. */
  readonly finish: number;
  /** Profile tolerance either side, mm. */
  readonly tolerance: number;
  /** Inside corners drawn sharper may come out with up to this radius, mm. */
  readonly insideCorner: number;
  /** °C of the piece while it is measured. */
  readonly measuring: number;
  readonly sizes: readonly NamedSize[];
  readonly plan: CutPlan;
  readonly material: Material;
  /** Contours that are cut, as drawn. */
  readonly wanted: readonly Wanted[];
  readonly budgets?: PlanBudgets | undefined;
}

/** Of more contours than this only the profile is told: nobody measures hundreds of sizes by a sheet. */
const MOST = 60;

export const inspectionOf = (asked: InspectAsked): Inspection => {
  const { measuring, plan, wanted } = asked;
  const contours = new Map(wanted.map((w) => [w.loop, w]));
  const measure = measures(asked);
  const named = numbered(plan).flatMap((c) => {
    const drawn = contours.get(c.loop);
    return drawn === undefined ? [] : [{ number: c.number, contour: c.loop, drawn, comesOut: c.comesOut }];
  });
  return {
    temperature: measuring,
    rows: [...measure.whole, ...named.slice(0, MOST).flatMap(measure.contour)],
    passedOver: Math.max(0, named.length - MOST),
  };
};

interface Named {
  readonly number: number;
  readonly contour: string;
  readonly drawn: Wanted;
  readonly comesOut: readonly Contour[];
}

const measures = ({ finish, tolerance, insideCorner, measuring, sizes, plan, material, budgets }: InspectAsked) => {
  const within = plan.accuracy.value;
  const reading = (drawn: number): number =>
    drawn + thermalGrowth.compute({ expansion: material.expansion.value, length: drawn, rise: measuring - referenceTemperature }) / 1000;
  const last = mainPasses(plan).at(-1);
  const limitsOf = (id: string) => limitsOn(plan, id, { tolerance, within });
  const size = (row: Pick<InspectionRow, 'number' | 'contour' | 'what' | 'from' | 'to'>, drawn: number): InspectionRow => ({
    ...row,
    drawn,
    reading: reading(drawn),
    // A size lies between two faces, and each may be off by the tolerance of the profile.
    tolerance: 2 * limitsOf(row.contour).tolerance,
    expected: 2 * limitsOf(row.contour).within,
  });
  const whole: readonly InspectionRow[] = [
    { number: 0, contour: 'all', what: 'profile', tolerance, expected: within },
    { number: 0, contour: 'all', what: 'finish', tolerance: finish, onlyUp: true, expected: plan.finish.value },
    ...(last === undefined
      ? []
      : [
          {
            number: 0,
            contour: 'all',
            what: 'straightness over the height' as const,
            tolerance: 2 * tolerance,
            onlyUp: true as const,
            expected: last.formError.value / 1000,
          },
        ]),
    ...sizes.map(
      ({ name, length, tolerance: own }, i): InspectionRow => ({
        number: 0,
        contour: '',
        what: 'named size',
        name,
        drawn: length,
        reading: reading(length),
        tolerance: own,
        expected: (budgets?.sizes[i]?.total.value ?? 2000 * within) / 1000,
      }),
    ),
  ];
  const contour = ({ number, contour: id, drawn, comesOut }: Named): readonly InspectionRow[] => {
    const own = { number, contour: id };
    const round = circleOf(drawn.contour);
    const face = faceRow(own, plan);
    if (round !== undefined) return [size({ ...own, what: 'diameter', from: round.centre }, 2 * round.radius), ...face];
    const { minX, minY, maxX, maxY } = boundsOfChain(drawn.contour);
    return [
      size({ ...own, what: 'size along X', from: { x: minX, y: (minY + maxY) / 2 }, to: { x: maxX, y: (minY + maxY) / 2 } }, maxX - minX),
      size({ ...own, what: 'size along Y', from: { x: (minX + maxX) / 2, y: minY }, to: { x: (minX + maxX) / 2, y: maxY } }, maxY - minY),
      ...cornerRow(own, drawn, comesOut, insideCorner, reading, limitsOf(id).within),
      ...face,
    ];
  };
  return { whole, contour };
};

/** mm that a face of a contour may be off, and is expected to be. */
const limitsOn = (plan: CutPlan, id: string, ofJob: { readonly tolerance: number; readonly within: number }): typeof ofJob => {
  const own = classOf(plan, id);
  if (own === undefined) return ofJob;
  return { tolerance: own.asked.tolerance, within: own.accuracy.value };
};

/** What the passes on a contour leave of its face, where they are not those of the first class: one pass has the finish of one pass. */
const faceRow = (own: Pick<InspectionRow, 'number' | 'contour'>, plan: CutPlan): readonly InspectionRow[] => {
  const asked = classOf(plan, own.contour);
  if (asked === undefined || asked === plan.classes?.[0]) return [];
  return [{ ...own, what: 'finish', tolerance: asked.asked.finish, onlyUp: true, expected: asked.finish.value }];
};

/** The tightest inside corner as it comes out; a corner drawn sharp comes out with what the wire leaves. */
const cornerRow = (
  own: Pick<InspectionRow, 'number' | 'contour'>,
  drawn: Wanted,
  comesOut: readonly Contour[],
  insideCorner: number,
  reading: (drawn: number) => number,
  within: number,
): readonly InspectionRow[] => {
  const tightest = comesOut
    .flatMap((c) => insideArcs(c, drawn.kept))
    .reduce<Arc | undefined>((least, a) => (least === undefined || a.radius < least.radius ? a : least), undefined);
  if (tightest === undefined) return [];
  const wanted = insideArcs(drawn.contour, drawn.kept).find((a) => distanceBetween(a.centre, tightest.centre) < SAME);
  const radius = wanted?.radius ?? tightest.radius;
  return [
    {
      ...own,
      what: 'smallest inside radius',
      from: tightest.centre,
      drawn: wanted?.radius ?? 0,
      reading: reading(radius),
      tolerance: Math.max(radius, insideCorner) + within,
      onlyUp: true,
      expected: tightest.radius,
    },
  ];
};

/** mm between the middles of an arc as drawn and as it comes out. */
const SAME = 0.01;

const circleOf = ({ segments }: Contour): Arc | undefined => {
  const first = segments[0];
  if (first?.kind !== 'arc') return undefined;
  const same = segments.every(
    (s) => s.kind === 'arc' && Math.abs(s.radius - first.radius) < 1e-6 && distanceBetween(s.centre, first.centre) < 1e-6,
  );
  return same ? first : undefined;
};
