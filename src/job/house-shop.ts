/** The shop that is taken when nobody names one: invented rates, marked as such, so that a first answer is possible at all. */
import { usualShifts } from '../estimate/clock/shifts.ts';
import { ratesOn } from '../estimate/rates.ts';
import { standardMachine } from '../physics/cut/machine.ts';
import { wires } from '../physics/wire/wires.ts';
import type { Shop } from './shop.ts';

/** mm. A shop that nobody described refuses no block that some machine may take. */
const LARGEST = 2000;

export const houseShop: Shop = {
  name: 'A shop without a file of its own (invented rates)',
  machines: [{ ...standardMachine, energySettings: [...standardMachine.energySettings], travel: { x: LARGEST, y: LARGEST } }],
  wires: [...wires],
  materials: [],
  passTables: [],
  rates: [
    {
      from: '2000-01-01',
      currency: 'EUR',
      machineHour: 4500,
      labourHour: 5000,
      drillingHour: 4000,
      drillingFeed: 25,
      drillingHole: 3,
      filtersHour: 120,
      resinHour: 60,
      power: 6,
      powerPrice: 30,
      markup: 0.2,
      minutes: { setUp: 45, programming: 30, programmingContour: 3, load: 15, inspection: 20, stop: 5, handThread: 4, condition: 1 },
      spread: 0.25,
    },
  ],
  shifts: [...usualShifts],
  quotationDays: 30,
};

const CHARGED = ['currency', 'machineHour', 'labourHour', 'drillingHour', 'filtersHour', 'resinHour', 'powerPrice'] as const;

/** Whether a price would be worked out with the rates above, which nobody has set: a shop that was saved with them is no better off. */
export const ratesInvented = ({ rates }: Pick<Shop, 'rates'>, day: string): boolean => {
  const onDay = ratesOn(rates, day);
  return onDay.kind === 'rates' && houseShop.rates.some((r) => CHARGED.every((key) => r[key] === onDay.rates[key]));
};
