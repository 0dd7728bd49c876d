/** Rates that nobody set: invented, so that a first answer is possible at all. */
import type { Rates } from './rates.ts';

export const inventedRates: Rates = {
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
};

const CHARGED = ['currency', 'machineHour', 'labourHour', 'drillingHour', 'filtersHour', 'resinHour', 'powerPrice'] as const;

/** What nobody has set: the rates above, and those of the example that comes with the program and stands in every new folder. */
const INVENTED: readonly Pick<Rates, (typeof CHARGED)[number]>[] = [
  inventedRates,
  { currency: 'EUR', machineHour: 4200, labourHour: 4600, drillingHour: 3600, filtersHour: 110, resinHour: 60, powerPrice: 26 },
  { currency: 'EUR', machineHour: 4400, labourHour: 4900, drillingHour: 3800, filtersHour: 120, resinHour: 65, powerPrice: 29 },
];

/** Whether a price would be worked out with rates that nobody has set: a shop that was saved with them is no better off. */
export const areInvented = (rates: Rates): boolean => INVENTED.some((r) => CHARGED.every((key) => r[key] === rates[key]));
