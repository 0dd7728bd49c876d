/** Hours, wire and money of one job, worked out from the program as it was read back. */

import type { ReadProgram } from '../nc/read/program.ts';
import type { Machine } from '../physics/cut/machine.ts';
import type { Drilled } from '../physics/material/hole-drilling.ts';
import type { CutPlan } from '../plan/plan.ts';
import type { Figure } from '../quantity/figure.ts';
import { atField, type Finding } from '../text/finding.ts';
import { fixed, mass, number, quantity } from '../text/part.ts';
import { say } from '../text/say.ts';
import { find } from './findings.ts';
import { type Hours, hoursOf } from './hours.ts';
import { type PriceBreak, type PriceLine, priceBreaks, priceLines, wireUse } from './money.ts';
import { type OrderSum, orderSum } from './order-sum.ts';
import { type Rates, ratesOn } from './rates.ts';
import { tallyOf } from './tally.ts';

export interface EstimateQuestion {
  readonly program: ReadProgram;
  readonly plan: CutPlan;
  readonly machine: Machine;
  readonly rates: readonly Rates[];
  /** Day of the quotation, ISO 8601: it decides which rates hold. */
  readonly day: string;
  readonly quantity: number;
  /** Further quantities to price. */
  readonly breaks: readonly number[];
  /** Pieces that one run of the program gives: sheets cut in a stack. One when left out. */
  readonly stack?: number | undefined;
  /** What start holes are drilled in. */
  readonly material: Drilled;
  /** Metal of one piece, where somebody said what it costs or that it is the customer's. */
  readonly metal?: Metal | undefined;
}

export interface Metal {
  /** kg of one piece, slugs and scrap and all. */
  readonly mass: Figure;
  readonly suppliedBy: 'shop' | 'customer';
  /** Money for one piece; none where the customer brings it, or where the shop does and nobody gave a price. */
  readonly cost?: Figure | undefined;
}

export type Estimated =
  | { readonly kind: 'estimate'; readonly estimate: Estimate }
  | { readonly kind: 'refused'; readonly finding: Finding };

export interface EstimatedHours extends Omit<Hours, 'sparking'> {
  /** Pieces of one run, where that is more than one: hours, wire and spools are those of the run. */
  readonly stack?: number | undefined;
}

export interface EstimatedWire {
  readonly wireLength: Figure;
  readonly wireMass: Figure;
  readonly spools: Figure;
}

export interface EstimatedPrice {
  readonly lines: readonly PriceLine[];
  /** The same for all pieces asked for, adding up to the price. */
  readonly order: OrderSum;
  readonly metal?: Metal | undefined;
  readonly each: Figure;
  readonly breaks: readonly PriceBreak[];
  readonly currency: string;
  /** Day from which the rates used hold, ISO 8601. */
  readonly ratesFrom: string;
}

export interface Estimate extends EstimatedHours, EstimatedWire, EstimatedPrice {
  readonly findings: readonly Finding[];
}

/** Works out hours and price. Refused when no rates hold on the day or the program cuts with a pass nobody planned. */
export const estimateJob = (question: EstimateQuestion): Estimated => {
  const { program, plan, machine, day, quantity, breaks } = question;
  const onDay = ratesOn(question.rates, day);
  if (onDay.kind === 'none yet') return { kind: 'refused', finding: onDay.finding };
  const tallied = tallyOf(program, plan.passes);
  if (tallied.kind === 'unknown pass') return { kind: 'refused', finding: tallied.finding };
  const { rates } = onDay;
  const { sparking, ...hours } = hoursOf(tallied.tally, plan, machine, rates, question.material);
  const use = wireUse({ ...hours, sparking }, plan.wire);
  const { stack = 1, metal } = question;
  const lines = priceLines({ ...hours, sparking }, use, plan.wire, rates, {
    stack,
    metal: metal?.cost === undefined ? undefined : metal.cost,
  });
  const prices = priceBreaks(lines, [quantity, ...breaks], rates, stack);
  const own = prices.find((p) => p.quantity === quantity) as PriceBreak;
  return {
    kind: 'estimate',
    estimate: {
      ...hours,
      wireLength: use.length,
      wireMass: use.mass,
      spools: use.spools,
      lines,
      order: orderSum(lines, { quantity, stack, markup: rates.markup, total: own.total.value }),
      stack: stack === 1 ? undefined : stack,
      metal,
      each: own.each,
      breaks: prices,
      currency: rates.currency,
      ratesFrom: rates.from,
      findings: [...spoolFindings(use.spools, plan), ...metalFindings(metal)],
    },
  };
};

/** Metal of the shop that nobody gave a price for would cost nothing, without a word. */
const metalFindings = (metal: Metal | undefined): readonly Finding[] =>
  metal === undefined || metal.suppliedBy === 'customer' || metal.cost !== undefined
    ? []
    : [
        find(
          'metal-without-price',
          say`The shop supplies the material, and no price per kg is given for it: ${{ metal: mass(metal.mass.value) }} for each piece is not in the price.`,
          {
            place: atField('stock.price'),
            remedy: say`Give the price per kg in the job, or one for this material in the rates of the shop; or state that the customer supplies it.`,
          },
        ),
      ];

const spoolFindings = (spools: Figure, plan: CutPlan): readonly Finding[] =>
  spools.value <= 1
    ? []
    : [
        find(
          'spool-runs-out',
          say`One piece uses ${{ spools: number(spools.value, fixed(1)) }} spools of ${{ spool: quantity(plan.wire.spool, 'kg', { as: 'given' }) }}: the wire runs out during the cut.`,
          {
            place: atField('wire'),
            remedy: say`Plan the change of spool for an attended stop, or buy the wire on larger spools.`,
          },
        ),
      ];
