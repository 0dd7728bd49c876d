/** The shop that is taken when nobody names one: invented rates, marked as such, so that a first answer is possible at all. */

import { areInvented, inventedRates } from '../estimate/invented-rates.ts';
import { ratesOn } from '../estimate/rates.ts';
import { usualShifts } from '../estimate/schedule/shifts.ts';
import { standardMachine } from '../physics/cut/machine.ts';
import { wires } from '../physics/wire/wires.ts';
import type { Shop } from './shop.ts';

/** mm. A shop that nobody described refuses no block that some machine may take. */
const LARGEST = 2000;

export const builtInShop: Shop = {
  name: 'A shop without a file of its own (invented rates)',
  machines: [{ ...standardMachine, energySettings: [...standardMachine.energySettings], travel: { x: LARGEST, y: LARGEST } }],
  wires: [...wires],
  materials: [],
  passTables: [],
  rates: [inventedRates],
  shifts: [...usualShifts],
  quotationDays: 30,
};

/** Whether a price would be worked out with the rates above, which nobody has set: a shop that was saved with them is no better off. */
export const ratesInvented = ({ rates }: Pick<Shop, 'rates'>, day: string): boolean => {
  const onDay = ratesOn(rates, day);
  return onDay.kind === 'rates' && areInvented(onDay.rates);
};
