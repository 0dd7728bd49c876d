/** The price of one order as lines that add up to the coin: what each line comes to, the markup, and what rounding each piece makes of it. */

import type { Figure } from '../quantity/figure.ts';
import { wholeMinor } from '../quantity/minor-units.ts';

/** A cost as it enters the price. */
interface Cost {
  readonly cost: Figure;
  readonly per: 'job' | 'piece' | 'run';
}

/** Amounts are whole minor units. */
export interface OrderSum {
  readonly quantity: number;
  /** Of each line, in their order. */
  readonly lines: readonly number[];
  readonly markup: { readonly share: number; readonly amount: number };
  /** What is left between the lines with their markup and a whole price for each piece; the lines are rounded as well. */
  readonly rounding: number;
  /** `quantity` times the price each: lines + markup + rounding. */
  readonly total: number;
}

export interface Ordered {
  readonly quantity: number;
  readonly stack: number;
  readonly markup: number;
  /** Price of all pieces. */
  readonly total: number;
}

export const orderSum = (costs: readonly Cost[], { quantity, stack, markup, total }: Ordered): OrderSum => {
  const times: Readonly<Record<Cost['per'], number>> = { job: 1, piece: quantity, run: Math.ceil(quantity / stack) };
  const exact = costs.map(({ cost, per }) => cost.value * times[per]);
  const lines = exact.map(wholeMinor);
  const amount = wholeMinor(sum(exact) * markup);
  return { quantity, lines, markup: { share: markup, amount }, rounding: total - sum(lines) - amount, total };
};

const sum = (values: readonly number[]): number => values.reduce((all, v) => all + v, 0);
