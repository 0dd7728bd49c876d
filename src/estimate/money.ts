/** What one piece costs and how the price falls with the quantity. Money in minor units. */
import type { Wire } from '../physics/wire.ts';
import type { Figure } from '../quantity/figure.ts';
import { given } from '../quantity/figure.ts';
import { apply } from '../quantity/formula.ts';
import type { PriceBreak, PriceLine } from './estimate.ts';
import { hourly, massCost, powerCost, priceEach, priceTotal, spoolShare, sumOf, wireKilograms, wireMetres } from './formulas.ts';
import { fromShop, type Hours } from './hours.ts';
import type { Rates } from './rates.ts';

export interface WireUse {
  readonly length: Figure;
  readonly mass: Figure;
  readonly spools: Figure;
}

/** Wire used up by one piece: it runs at its speed for as long as the machine sparks. */
export const wireUse = (hours: Hours, wire: Wire): WireUse => {
  const speed = fromShop('wire.speed', 'wire speed', wire.speed, 'm/min', 0.1);
  const length = apply(wireMetres, { minutes: hours.sparking, speed }, { key: 'wire.length', name: 'wire used for one piece' });
  const diameter = fromShop('wire.diameter', 'wire diameter', wire.diameter, 'mm');
  const density = fromShop('wire.density', 'density of the wire', wire.density, 'g/cm³');
  const mass = apply(wireKilograms, { length, diameter, density }, { key: 'wire.mass', name: 'mass of the wire used for one piece' });
  return {
    length,
    mass,
    spools: apply(
      spoolShare,
      { mass, spool: fromShop('wire.spool', 'wire on one spool', wire.spool, 'kg') },
      { key: 'wire.spools', name: 'spools used for one piece' },
    ),
  };
};

export const priceLines = (hours: Hours, use: WireUse, wire: Wire, rates: Rates): readonly PriceLine[] => {
  const labour = fromShop('shop.labour', 'labour rate', rates.labourHour, 'money/h');
  const people = (key: string, name: string, minutes: number): Figure =>
    fromShop(`shop.minutes.${key}`, name, minutes, 'min', rates.spread);
  const cost = (key: string, name: string, minutes: Figure, rate: Figure): Figure =>
    apply(hourly, { minutes, rate }, { key: `price.${key}`, name });
  const handling = sumOf(
    [
      hours.attended,
      people('load', 'changing the piece', rates.minutes.load),
      people('inspection', 'measuring and cleaning', rates.minutes.inspection),
    ],
    'min',
    {
      key: 'hours.people',
      name: 'work on one piece',
    },
  );
  const lines: readonly (readonly ['job' | 'piece', Figure])[] = [
    ['job', cost('programming', 'Programming', hours.programming, labour)],
    ['job', cost('set-up', 'Set-up', hours.setUp, labour)],
    ['piece', cost('machine', 'Machine time', hours.total, fromShop('shop.machine', 'machine rate', rates.machineHour, 'money/h'))],
    ['piece', cost('people', 'Stops, loading and measuring', handling, labour)],
    ['piece', cost('drilling', 'Start holes', hours.drilling, fromShop('shop.drilling', 'drilling rate', rates.drillingHour, 'money/h'))],
    [
      'piece',
      apply(
        massCost,
        { mass: use.mass, price: fromShop('wire.price', 'price of the wire', wire.price, 'money/kg') },
        { key: 'price.wire', name: 'Wire' },
      ),
    ],
    ['piece', cost('filters', 'Filters', hours.sparking, fromShop('shop.filters', 'filters', rates.filtersHour, 'money/h'))],
    ['piece', cost('resin', 'Resin', hours.sparking, fromShop('shop.resin', 'resin', rates.resinHour, 'money/h'))],
    ['piece', powerLine(hours, rates)],
  ];
  return lines.map(([per, figure]) => ({ name: figure.name, cost: figure, per }));
};

const powerLine = (hours: Hours, rates: Rates): Figure =>
  apply(
    powerCost,
    {
      minutes: hours.total,
      power: fromShop('shop.power', 'mean power', rates.power, 'kW', 0.1),
      price: fromShop('shop.power-price', 'price of power', rates.powerPrice, 'money/kWh'),
    },
    { key: 'price.power', name: 'Power' },
  );

/** Prices for each quantity asked, smallest first, each quantity once. */
export const priceBreaks = (lines: readonly PriceLine[], quantities: readonly number[], rates: Rates): readonly PriceBreak[] => {
  const of = (per: PriceLine['per'], name: string): Figure =>
    sumOf(
      lines.filter((l) => l.per === per).map((l) => l.cost),
      'money',
      { key: `price.per-${per}`, name },
    );
  const once = of('job', 'cost once for the job');
  const piece = of('piece', 'cost of each piece');
  const margin = fromShop('shop.margin', 'margin', rates.margin, '1');
  return [...new Set(quantities)]
    .toSorted((a, b) => a - b)
    .map((count) => {
      const quantity = given({
        key: `job.quantity.${count}`,
        name: 'quantity',
        value: count,
        unit: '1',
        basis: 'drawing',
        source: 'the job',
      });
      const each = apply(priceEach, { once, piece, quantity, margin }, { key: `price.${count}.each`, name: `price each for ${count}` });
      return {
        quantity: count,
        each,
        total: apply(priceTotal, { each, quantity }, { key: `price.${count}.total`, name: `price of ${count}` }),
      };
    });
};
