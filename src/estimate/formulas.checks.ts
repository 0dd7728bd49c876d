/** The law of the price, worked out by hand apart from this code. Nobody prints the price of a cut: the shop's own rates decide it. */
import type { CheckRow } from '../quantity/check.ts';
import { cuttingMinutes, drillingMinutes, hourly, massCost, powerCost, priceEach, stackShare } from './formulas.ts';

const row = (id: string, question: string, value: string, ours: () => number): CheckRow => ({
  id: `M-${id}`,
  source: 'definition',
  place: 'arithmetic of a quotation',
  how: 'recomputed',
  question,
  value,
  ours,
});

export const checks: readonly CheckRow[] = [
  row('01', 'minutes for 510 mm of path at 3.4 mm/min', '150', () => cuttingMinutes.compute({ length: 510, feed: 3.4 })),
  row('02', '4 holes 50 mm deep at 25 mm/min, 3 min to set each: minutes', '20', () =>
    drillingMinutes.compute({ holes: 4, depth: 50, feed: 25, setting: 3 }),
  ),
  row('03a', '150 min at 80.00 an hour, in coins', '20000', () => hourly.compute({ minutes: 150, rate: 8000 })),
  row('03b', '20 min at 45.00 an hour, in coins', '1500', () => hourly.compute({ minutes: 20, rate: 4500 })),
  row('04a', '150 min at 6 kW and 0.30 a kWh, in coins', '450', () => powerCost.compute({ minutes: 150, power: 6, price: 30 })),
  row('04b', '20 min at 9 kW and 0.25 a kWh, in coins', '75', () => powerCost.compute({ minutes: 20, power: 9, price: 25 })),
  row('05', '0.626 kg of wire at 12.00 a kg, in coins', '751.2', () => massCost.compute({ mass: 0.626, price: 1200 })),
  row('06a', '120.00 for the job and 200.00 a piece, 10 pieces, markup 15 %: each, in coins', '24380', () =>
    priceEach.compute({ once: 12000, piece: 20000, quantity: 10, markup: 0.15 }),
  ),
  row('06b', 'the same for one piece, in coins', '36800', () =>
    priceEach.compute({ once: 12000, piece: 20000, quantity: 1, markup: 0.15 }),
  ),
  row('07', '3.00 a piece, 90.00 a stack, 3 stacks for 10 pieces: a piece, in coins', '3000', () =>
    stackShare.compute({ own: 300, run: 9000, runs: 3, quantity: 10 }),
  ),
];
