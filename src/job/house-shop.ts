/** The shop that is taken when nobody names one: invented rates, marked as such, so that a first answer is possible at all. */
import { usualShifts } from '../estimate/clock/shifts.ts';
import { type Rates, ratesOn } from '../estimate/rates.ts';
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

type Charged = Pick<Rates, 'currency' | 'machineHour' | 'labourHour' | 'drillingHour' | 'filtersHour' | 'resinHour' | 'powerPrice'>;

/** What nobody has set: the rates above, and those of the example that comes with the program and stands in every new folder. */
const INVENTED: readonly Charged[] = [
  ...houseShop.rates,
  { currency: 'EUR', machineHour: 4200, labourHour: 4600, drillingHour: 3600, filtersHour: 110, resinHour: 60, powerPrice: 26 },
  { currency: 'EUR', machineHour: 4400, labourHour: 4900, drillingHour: 3800, filtersHour: 120, resinHour: 65, powerPrice: 29 },
];

const CHARGED: readonly (keyof Charged)[] = [
  'currency',
  'machineHour',
  'labourHour',
  'drillingHour',
  'filtersHour',
  'resinHour',
  'powerPrice',
];

/** Whether a price would be worked out with rates that nobody has set: a shop that was saved with them is no better off. */
export const ratesInvented = ({ rates }: Pick<Shop, 'rates'>, day: string): boolean => {
  const onDay = ratesOn(rates, day);
  return onDay.kind === 'rates' && INVENTED.some((r) => CHARGED.every((key) => r[key] === onDay.rates[key]));
};
