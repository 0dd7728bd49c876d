/** What one piece costs and how the price falls with the quantity. Money in minor units. */

import type { Wire } from '../physics/wire/wire.ts';
import { wireLeaf } from '../physics/wire/wire-leaves.ts';
import { spoolShare, wireKilograms, wireMetres } from '../physics/wire/wire-use.ts';
import type { Figure } from '../quantity/figure.ts';
import { given } from '../quantity/figure.ts';
import { apply } from '../quantity/formula.ts';
import { saidBy } from '../quantity/source.ts';
import { count as counting } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { hourly, massCost, powerCost, priceEach, priceTotal, stackShare, sumOf } from './formulas.ts';
import { fromShop, type Hours, minutesBy } from './hours.ts';
import type { Rates } from './rates.ts';

export interface PriceLine {
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
  const speed = wireLeaf(wire, 'speed');
  const length = apply(
    wireMetres,
    { minutes: hours.sparking, speed },
    { key: 'wire.length', name: say('estimate.wire-length')`wire used for one piece` },
  );
  const diameter = wireLeaf(wire, 'diameter');
  const density = wireLeaf(wire, 'density');
  const mass = apply(
    wireKilograms,
    { length, diameter, density },
    { key: 'wire.mass', name: say('estimate.wire-mass')`mass of the wire used for one piece` },
  );
  return {
    length,
    mass,
    spools: apply(
      spoolShare,
      { mass, spool: wireLeaf(wire, 'spool') },
      { key: 'wire.spools', name: say('estimate.wire-spools')`spools used for one piece` },
    ),
  };
};

export interface Shared {
  /** Pieces of one run of the program. */
  readonly stack: number;
  /** Cost of the metal of one piece. */
  readonly metal?: Figure | undefined;
}

export const priceLines = (
  hours: Hours,
  use: WireUse,
  wire: Wire,
  rates: Rates,
  { stack, metal }: Shared = { stack: 1 },
): readonly PriceLine[] => {
  const hourRate = (key: string, name: Text, value: number): Figure => fromShop(rates, `shop.${key}`, name, value, 'money/h');
  const labour = hourRate('labour', names.shopLabour, rates.labourHour);
  const people = minutesBy(rates);
  const cost = (key: string, name: Text, minutes: Figure, rate: Figure): Figure =>
    apply(hourly, { minutes, rate }, { key: `price.${key}`, name });
  const handling = sumOf(
    [
      hours.attended,
      people('load', names.load, rates.minutes.load),
      people('inspection', stack === 1 ? names.inspection : names.inspectionOfStack, stack * rates.minutes.inspection),
    ],
    'min',
    {
      key: 'hours.people',
      name: stack === 1 ? names.work : names.workOnStack,
    },
  );
  const lines: readonly (readonly ['job' | 'run', Figure])[] = [
    ['job', cost('programming', names.programmingCost, hours.programming, labour)],
    ['job', cost('set-up', names.setUpCost, hours.setUp, labour)],
    ['run', cost('machine', names.machine, hours.total, hourRate('machine', names.shopMachine, rates.machineHour))],
    ['run', cost('people', names.people, handling, labour)],
    ['run', cost('drilling', names.drilling, hours.drilling, hourRate('drilling', names.shopDrilling, rates.drillingHour))],
    ['run', apply(massCost, { mass: use.mass, price: wireLeaf(wire, 'price') }, { key: 'price.wire', name: names.priceWire })],
    ['run', cost('filters', names.filters, hours.total, hourRate('filters', names.shopFilters, rates.filtersHour))],
    ['run', cost('resin', names.resin, hours.total, hourRate('resin', names.shopResin, rates.resinHour))],
    ['run', powerLine(hours, rates)],
  ];
  const all = lines.map(([per, figure]): PriceLine => ({ cost: figure, per: per === 'run' && stack === 1 ? 'piece' : per }));
  return metal === undefined ? all : [...all, { cost: metal, per: 'piece' }];
};

const powerLine = (hours: Hours, rates: Rates): Figure =>
  apply(
    powerCost,
    {
      minutes: hours.total,
      power: fromShop(rates, 'shop.power', say('estimate.shop-power')`mean power`, rates.power, 'kW', 0.1),
      price: fromShop(rates, 'shop.power-price', say('estimate.shop-power-price')`price of power`, rates.powerPrice, 'money/kWh'),
    },
    { key: 'price.power', name: say('estimate.price-power')`Power` },
  );

/** Prices for each quantity asked, smallest first, each quantity once. A stack that is not full costs as much as a full one. */
export const priceBreaks = (lines: readonly PriceLine[], quantities: readonly number[], rates: Rates, stack = 1): readonly PriceBreak[] => {
  const of = (per: PriceLine['per'], name: Text): Figure =>
    sumOf(
      lines.filter((l) => l.per === per).map((l) => l.cost),
      'money',
      { key: `price.per-${per}`, name },
    );
  const once = of('job', say('estimate.job')`cost per job`);
  const own = of('piece', say('estimate.piece')`cost per piece`);
  const run = of('run', say('estimate.run')`cost per stack`);
  const markup = fromShop(rates, 'shop.markup', say('estimate.shop-markup')`markup`, rates.markup, '1');
  return [...new Set(quantities)]
    .toSorted((a, b) => a - b)
    .map((count) => {
      const quantity = given({
        key: `job.quantity.${count}`,
        name: say('estimate.job-quantity')`quantity`,
        value: count,
        unit: '1',
        basis: 'job',
        source: saidBy.job,
      });
      const piece = stack === 1 ? own : withShare(own, run, quantity, stack);
      const each = apply(priceEach, { once, piece, quantity, markup }, { key: `price.${count}.each`, name: names.each(count) });
      return {
        quantity: count,
        each,
        total: apply(priceTotal, { each, quantity }, { key: `price.${count}.total`, name: names.total(count) }),
      };
    });
};

/** What a piece costs by itself, and its share of the runs that all pieces need. */
const withShare = (own: Figure, run: Figure, quantity: Figure, stack: number): Figure => {
  const runs = given({
    key: `job.runs.${quantity.value}`,
    name: names.stacks(stack),
    value: Math.ceil(quantity.value / stack),
    unit: '1',
    basis: 'job',
    source: saidBy.job,
  });
  return apply(
    stackShare,
    { own, run, runs, quantity },
    { key: `price.${quantity.value}.piece`, name: say('estimate.price-piece')`cost per piece with its share of the stacks` },
  );
};

const names = phrases('cost', {
  shopLabour: say`labour rate`,
  load: say`changing the piece`,
  programmingCost: say`Programming`,
  setUpCost: say`Set-up`,
  machine: say`Machine time`,
  shopMachine: say`machine rate`,
  people: say`Stops, loading and measuring`,
  drilling: say`Start holes`,
  shopDrilling: say`drilling rate`,
  priceWire: say`Wire`,
  filters: say`Filters`,
  shopFilters: say`filters`,
  resin: say`Resin`,
  shopResin: say`resin`,
  inspection: say`measuring and cleaning`,
  inspectionOfStack: say`measuring and cleaning all of a stack`,
  work: say`work on one piece`,
  workOnStack: say`work on one stack`,
  each: (quantity: number) => say`price each for ${{ quantity: counting(quantity) }}`,
  total: (quantity: number) => say`price of ${{ quantity: counting(quantity) }}`,
  stacks: (stack: number) => say`stacks of ${{ sheets: counting(stack) }} that are cut`,
});
