/** What one piece costs and how the price falls with the quantity. Money in minor units. */

import type { Wire } from '../physics/wire/wire.ts';
import { spoolShare, wireKilograms, wireMetres } from '../physics/wire/wire-use.ts';
import type { Figure } from '../quantity/figure.ts';
import { given } from '../quantity/figure.ts';
import { apply } from '../quantity/formula.ts';
import { hourly, massCost, powerCost, priceEach, priceTotal, stackShare, sumOf } from './formulas.ts';
import { fromShop, type Hours } from './hours.ts';
import type { Rates } from './rates.ts';

export interface PriceLine {
  readonly name: string;
  readonly cost: Figure;
  /** Once for the job, for each piece, or for each run of the program where a stack gives several pieces. */
  readonly per: 'job' | 'piece' | 'run';
}

export interface PriceBreak {
  readonly quantity: number;
  readonly each: Figure;
  readonly total: Figure;
}

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

export interface Shared {
  /** Pieces of one run of the program. */
  readonly stack: number;
  /** Cost of the metal of one piece. */
  readonly metal?: Figure;
}

export const priceLines = (
  hours: Hours,
  use: WireUse,
  wire: Wire,
  rates: Rates,
  { stack, metal }: Shared = { stack: 1 },
): readonly PriceLine[] => {
  const labour = fromShop('shop.labour', 'labour rate', rates.labourHour, 'money/h');
  const people = (key: string, name: string, minutes: number): Figure =>
    fromShop(`shop.minutes.${key}`, name, minutes, 'min', rates.spread);
  const cost = (key: string, name: string, minutes: Figure, rate: Figure): Figure =>
    apply(hourly, { minutes, rate }, { key: `price.${key}`, name });
  const handling = sumOf(
    [
      hours.attended,
      people('load', 'changing the piece', rates.minutes.load),
      people(
        'inspection',
        stack === 1 ? 'measuring and cleaning' : 'measuring and cleaning all of a stack',
        stack * rates.minutes.inspection,
      ),
    ],
    'min',
    {
      key: 'hours.people',
      name: stack === 1 ? 'work on one piece' : 'work on one stack',
    },
  );
  const lines: readonly (readonly ['job' | 'run', Figure])[] = [
    ['job', cost('programming', 'Programming', hours.programming, labour)],
    ['job', cost('set-up', 'Set-up', hours.setUp, labour)],
    ['run', cost('machine', 'Machine time', hours.total, fromShop('shop.machine', 'machine rate', rates.machineHour, 'money/h'))],
    ['run', cost('people', 'Stops, loading and measuring', handling, labour)],
    ['run', cost('drilling', 'Start holes', hours.drilling, fromShop('shop.drilling', 'drilling rate', rates.drillingHour, 'money/h'))],
    [
      'run',
      apply(
        massCost,
        { mass: use.mass, price: fromShop('wire.price', 'price of the wire', wire.price, 'money/kg') },
        { key: 'price.wire', name: 'Wire' },
      ),
    ],
    ['run', cost('filters', 'Filters', hours.sparking, fromShop('shop.filters', 'filters', rates.filtersHour, 'money/h'))],
    ['run', cost('resin', 'Resin', hours.sparking, fromShop('shop.resin', 'resin', rates.resinHour, 'money/h'))],
    ['run', powerLine(hours, rates)],
  ];
  const all = lines.map(
    ([per, figure]): PriceLine => ({ name: figure.name, cost: figure, per: per === 'run' && stack === 1 ? 'piece' : per }),
  );
  return metal === undefined ? all : [...all, { name: metal.name, cost: metal, per: 'piece' }];
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

/** Prices for each quantity asked, smallest first, each quantity once. A stack that is not full costs as much as a full one. */
export const priceBreaks = (lines: readonly PriceLine[], quantities: readonly number[], rates: Rates, stack = 1): readonly PriceBreak[] => {
  const of = (per: PriceLine['per'], name: string): Figure =>
    sumOf(
      lines.filter((l) => l.per === per).map((l) => l.cost),
      'money',
      { key: `price.per-${per}`, name },
    );
  const once = of('job', 'cost once for the job');
  const own = of('piece', 'cost of each piece');
  const run = of('run', 'cost of each stack');
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
      const piece = stack === 1 ? own : withShare(own, run, quantity, stack);
      const each = apply(priceEach, { once, piece, quantity, margin }, { key: `price.${count}.each`, name: `price each for ${count}` });
      return {
        quantity: count,
        each,
        total: apply(priceTotal, { each, quantity }, { key: `price.${count}.total`, name: `price of ${count}` }),
      };
    });
};

/** What a piece costs by itself, and its share of the runs that all pieces need. */
const withShare = (own: Figure, run: Figure, quantity: Figure, stack: number): Figure => {
  const runs = given({
    key: `job.runs.${quantity.value}`,
    name: `stacks of ${stack} that are cut`,
    value: Math.ceil(quantity.value / stack),
    unit: '1',
    basis: 'drawing',
    source: 'the job',
  });
  return apply(
    stackShare,
    { own, run, runs, quantity },
    { key: `price.${quantity.value}.piece`, name: 'cost of each piece with its share of the stacks' },
  );
};
