/** One correction out of all that was measured on a job: new registers for every pass, what can still be saved, and whether it is safe. */

import { classOf, familiesIn, passesOn } from '../plan/classes.ts';
import type { CutPlan, Pass } from '../plan/plan.ts';
import { deviationOf, type Figure } from '../quantity/figure.ts';
import { apply, type Formula } from '../quantity/formula.ts';
import { certain, firstItem, type NonEmpty } from '../sequence/sequence.ts';
import type { Finding } from '../text/finding.ts';
import { contour, fixed, um } from '../text/part.ts';
import { say } from '../text/say.ts';
import { correctionFindings } from './correction-safety.ts';
import { find } from './findings.ts';
import { type Deviation, deviationOfMeasured, type Measured, type NewRegister, newRegisters, sizeAfter } from './registers.ts';
import { type Salvage, salvageOf } from './salvage.ts';

export interface CorrectionQuestion {
  /** A plan that can be cut. */
  readonly plan: CutPlan;
  /** As set in the control, mm by number. */
  readonly registers: ReadonlyMap<number, number>;
  /** At least one. */
  readonly measured: readonly Measured[];
  readonly expansion: Figure;
  /** Either side of the drawing, mm. */
  readonly tolerance: number;
  /** mm by which an arc of the program may be tighter than that of the plan. */
  readonly slack?: number | undefined;
}

export interface CorrectedSize {
  readonly deviation: Deviation;
  readonly salvage: Salvage;
  /** mm at 20 °C, of the next piece. */
  readonly next: number;
}

export interface Correction {
  readonly sizes: readonly CorrectedSize[];
  /** Metal left per side over all that was measured, mm. */
  readonly left: Figure;
  readonly registers: readonly NewRegister[];
  /** Whether the correction is larger than what the measuring can tell apart, one standard deviation. */
  readonly worth: boolean;
  /** Whether the new registers may be set in this program. */
  readonly safe: boolean;
  readonly findings: readonly Finding[];
}

export const correctionOf = ({ plan, registers, measured, expansion, tolerance, slack }: CorrectionQuestion): Correction => {
  const deviations = measured.map((m) => deviationOfMeasured(m, expansion));
  const left = meanOf(
    deviations.map((d) => d.left),
    'correct.left',
  );
  // Registers of a family serve all its contours, also those that nobody measured; a family of which nothing was measured stays as it is.
  const families = familiesIn(plan).flatMap((passes) => familyCorrected(passes, deviations, { plan, registers, left, tolerance }));
  const next = families.flatMap((f) => f.registers);
  const findings = [...families.flatMap((f) => f.findings), ...correctionFindings(plan, next, slack)];
  return {
    sizes: deviations.map((deviation) => {
      const { loop } = deviation.measured;
      const passes = passesOn(plan, loop);
      return {
        deviation,
        salvage: salvageOf(deviation, {
          plan: { ...plan, passes },
          registers: newRegisters(passes, registers, deviation.left, `correct.${loop}`),
          tolerance: toleranceOf(plan, loop, tolerance),
        }),
        next: sizeAfter(deviation, -(families.find((f) => f.passes === passes)?.left ?? left).value),
      };
    }),
    left,
    registers: next,
    worth: Math.abs(left.value) > deviationOf(left),
    safe: !findings.some((f) => f.severity === 'refusal'),
    findings,
  };
};

interface FamilyCorrected {
  readonly passes: NonEmpty<Pass>;
  readonly left: Figure;
  readonly registers: readonly NewRegister[];
  readonly findings: readonly Finding[];
}

interface FamilyAsked {
  readonly plan: CutPlan;
  readonly registers: ReadonlyMap<number, number>;
  /** Over all that was measured. */
  readonly left: Figure;
  readonly tolerance: number;
}

const familyCorrected = (
  passes: NonEmpty<Pass>,
  deviations: readonly Deviation[],
  { plan, registers, left: whole, tolerance }: FamilyAsked,
): readonly FamilyCorrected[] => {
  const own = deviations.filter((d) => passesOn(plan, d.measured.loop) === passes);
  const [first] = own;
  if (first === undefined) return [];
  const left =
    own.length === deviations.length
      ? whole
      : meanOf(
          own.map((d) => d.left),
          `correct.left.${passes[0].register}`,
        );
  const least = Math.min(...own.map((d) => toleranceOf(plan, d.measured.loop, tolerance)));
  return [{ passes, left, registers: newRegisters(passes, registers, left), findings: disagreement(own, left, least) }];
};

const toleranceOf = (plan: CutPlan, loop: string, ofJob: number): number => classOf(plan, loop)?.asked.tolerance ?? ofJob;

const meanOf = (figures: readonly Figure[], key: string): Figure => {
  const keyed = figures.map((figure, i) => [`a${i}`, figure] as const);
  const mean: Formula<string> = {
    name: say('accuracy.mean')`stock left per side`,
    text: say('accuracy.mean.by')`left = mean of all measurements`,
    source: 'definition',
    unit: 'mm',
    inputs: Object.fromEntries(keyed.map(([key, figure]) => [key, { unit: 'mm' as const, name: figure.key }])),
    compute: (v) => keyed.reduce((sum, [key]) => sum + certain(v[key], 'a formula is given all its inputs'), 0) / keyed.length,
  };
  return apply(mean, Object.fromEntries(keyed), { key });
};

/** One register cannot serve contours that want different ones. */
const disagreement = (deviations: readonly Deviation[], left: Figure, tolerance: number): readonly Finding[] => {
  const far = firstItem(
    deviations
      .map((d) => ({ loop: d.measured.loop, rest: d.left.value - left.value }))
      .toSorted((a, b) => Math.abs(b.rest) - Math.abs(a.rest)),
  );
  if (Math.abs(far.rest) <= tolerance / 2) return [];
  const [loop, rest] = [contour(far.loop), um(Math.abs(far.rest) * 1000, fixed(1))];
  const text =
    far.rest > 0
      ? say(
          'corrections-disagree/left',
        )`The measurements call for different corrections: after the common one ${{ loop }} still has ${{ rest }} stock left per side.`
      : say(
          'corrections-disagree/gone',
        )`The measurements call for different corrections: after the common one ${{ loop }} is still ${{ rest }} overcut per side.`;
  return [
    find('corrections-disagree', text, {
      remedy: say`Find what differs between them: temperature, stress, a corner caught by the gauge; or correct and run them one at a time.`,
    }),
  ];
};
