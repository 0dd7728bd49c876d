/** The few formulas by which program and rates become minutes and money. */

import type { Figure } from '../quantity/figure.ts';
import { type Applied, apply, type Formula } from '../quantity/formula.ts';
import { list } from '../text/part.ts';
import { say, symbols } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import type { Unit } from '../text/unit.ts';

/** Arithmetic needs no source; the numbers that go in carry theirs. */
const SOURCE = 'definition';

export const cuttingMinutes: Formula<'length' | 'feed'> = {
  name: say('estimate.cutting-minutes')`cutting time`,
  text: say('estimate.cutting-minutes.by')`time = length / feed`,
  source: SOURCE,
  unit: 'min',
  inputs: { length: { unit: 'mm', name: 'path of the wire' }, feed: { unit: 'mm/min', name: 'feed' } },
  compute: ({ length, feed }) => length / feed,
};

export const repeated: Formula<'count' | 'minutes'> = {
  name: say('estimate.repeated')`repeated work`,
  text: say('estimate.repeated.by')`time = number × minutes each`,
  source: SOURCE,
  unit: 'min',
  inputs: { count: { unit: '1', name: 'how often' }, minutes: { unit: 'min', name: 'minutes each' } },
  compute: ({ count, minutes }) => count * minutes,
};

export const drillingMinutes: Formula<'holes' | 'depth' | 'feed' | 'setting'> = {
  name: say('estimate.drilling-minutes')`start-hole drilling`,
  text: say('estimate.drilling-minutes.by')`time = holes × (depth / feed + setting)`,
  source: SOURCE,
  unit: 'min',
  inputs: {
    holes: { unit: '1', name: 'holes to drill' },
    depth: { unit: 'mm', name: 'depth' },
    feed: { unit: 'mm/min', name: 'drilling feed' },
    setting: { unit: 'min', name: 'setting one hole' },
  },
  compute: ({ holes, depth, feed, setting }) => holes * (depth / feed + setting),
};

export const hourly: Formula<'minutes' | 'rate'> = {
  name: say('estimate.hourly')`cost of time`,
  text: say('estimate.hourly.by')`cost = minutes / 60 × rate`,
  source: SOURCE,
  unit: 'money',
  inputs: { minutes: { unit: 'min', name: 'time' }, rate: { unit: 'money/h', name: 'rate' } },
  compute: ({ minutes, rate }) => (minutes / 60) * rate,
};

export const powerCost: Formula<'minutes' | 'power' | 'price'> = {
  name: say('estimate.power-cost')`cost of power`,
  text: say('estimate.power-cost.by')`cost = minutes / 60 × power × price`,
  source: SOURCE,
  unit: 'money',
  inputs: {
    minutes: { unit: 'min', name: 'machine time' },
    power: { unit: 'kW', name: 'mean power' },
    price: { unit: 'money/kWh', name: 'price of power' },
  },
  compute: ({ minutes, power, price }) => (minutes / 60) * power * price,
};

/** Of wire and of metal alike. */
export const massCost: Formula<'mass' | 'price'> = {
  name: say('estimate.mass-cost')`cost by mass`,
  text: say('estimate.mass-cost.by')`cost = mass × price`,
  source: SOURCE,
  unit: 'money',
  inputs: { mass: { unit: 'kg', name: 'mass' }, price: { unit: 'money/kg', name: 'price' } },
  compute: ({ mass, price }) => mass * price,
};

export const priceEach: Formula<'once' | 'piece' | 'quantity' | 'markup'> = {
  name: say('estimate.price-each')`price of one piece`,
  text: say('estimate.price-each.by')`price = (per job / quantity + per piece) × (1 + markup), rounded to the smallest coin`,
  source: SOURCE,
  unit: 'money',
  inputs: {
    once: { unit: 'money', name: 'cost once for the job' },
    piece: { unit: 'money', name: 'cost of each piece' },
    quantity: { unit: '1', name: 'quantity' },
    markup: { unit: '1', name: 'markup' },
  },
  paid: true,
  compute: ({ once, piece, quantity, markup }) => (once / quantity + piece) * (1 + markup),
};

export const stackShare: Formula<'own' | 'run' | 'runs' | 'quantity'> = {
  name: say('estimate.stack-share')`share of a stack`,
  text: say('estimate.stack-share.by')`per piece = own + per stack × stacks / quantity`,
  source: SOURCE,
  unit: 'money',
  inputs: {
    own: { unit: 'money', name: 'cost of each piece' },
    run: { unit: 'money', name: 'cost of each stack' },
    runs: { unit: '1', name: 'stacks that are cut' },
    quantity: { unit: '1', name: 'quantity' },
  },
  compute: ({ own, run, runs, quantity }) => own + (run * runs) / quantity,
};

export const priceTotal: Formula<'each' | 'quantity'> = {
  name: say('estimate.price-total')`price of all pieces`,
  text: say('estimate.price-total.by')`total = price each × quantity`,
  source: SOURCE,
  unit: 'money',
  inputs: { each: { unit: 'money', name: 'price each' }, quantity: { unit: '1', name: 'quantity' } },
  compute: ({ each, quantity }) => each * quantity,
};

/** The sum of figures of one unit, as a figure of its own. */
export const sumOf = (figures: readonly Figure[], unit: Unit, as: Applied & { readonly name: Text }): Figure => {
  const names = figures.map((_, i) => `a${i}`);
  const formula: Formula<string> = {
    name: as.name,
    text: symbols`${as.name} = ${list(
      figures.map((f) => f.name),
      'plus',
    )}`,
    source: SOURCE,
    unit,
    inputs: Object.fromEntries(figures.map((f, i) => [names[i] as string, { unit, name: f.key }])),
    compute: (values) => names.reduce((sum, n) => sum + (values[n] as number), 0),
  };
  return apply(formula, Object.fromEntries(figures.map((f, i) => [names[i] as string, f])), as);
};
