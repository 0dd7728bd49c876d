/** How much wire a cut uses up, how long a spool lasts, and what cutting costs per area. */
import type { Formula } from '../../quantity/formula.ts';

const speed = { unit: 'm/min', name: 'wire speed' } as const;
const massPerLength = { unit: 'kg/m', name: 'mass per length of wire' } as const;

export const wireLength: Formula<'minutes' | 'speed'> = {
  name: 'length of wire used',
  text: 'length = run time · wire speed',
  source: 'definition',
  unit: 'm',
  inputs: { minutes: { unit: 'min', name: 'run time' }, speed },
  compute: ({ minutes, speed }) => minutes * speed,
};

export const wireMass: Formula<'length' | 'massPerLength'> = {
  name: 'mass of wire used',
  text: 'mass = length · mass per length',
  source: 'definition',
  unit: 'kg',
  inputs: { length: { unit: 'm', name: 'length of wire' }, massPerLength },
  compute: ({ length, massPerLength }) => length * massPerLength,
};

export const wireMassPerHour: Formula<'speed' | 'massPerLength'> = {
  name: 'wire used per hour',
  text: 'grams per hour = speed · 60 · mass per length',
  source: 'definition',
  unit: 'g/h',
  inputs: { speed, massPerLength },
  compute: ({ speed, massPerLength }) => speed * 60 * massPerLength * 1000,
};

export const spoolHours: Formula<'spool' | 'massPerLength' | 'speed'> = {
  name: 'running time of one spool',
  text: 'hours = mass of the spool / mass per length / (speed · 60)',
  source: 'definition',
  unit: 'h',
  inputs: { spool: { unit: 'kg', name: 'wire on one spool' }, massPerLength, speed },
  compute: ({ spool, massPerLength, speed }) => spool / massPerLength / (speed * 60),
};

/** Machine and wire together, per square metre of cut wall so that the number can be read. */
export const costPerArea: Formula<'machine' | 'wirePerHour' | 'price' | 'rate'> = {
  name: 'machine and wire cost per square metre of wall',
  text: 'cost = (machine rate + wire per hour · price) / (area rate · 60)',
  source: 'definition',
  unit: 'money',
  inputs: {
    machine: { unit: 'money/h', name: 'machine rate' },
    wirePerHour: { unit: 'g/h', name: 'wire used per hour' },
    price: { unit: 'money/kg', name: 'price of the wire' },
    rate: { unit: 'mm²/min', name: 'area rate' },
  },
  compute: ({ machine, wirePerHour, price, rate }) => ((machine + (wirePerHour / 1000) * price) / (rate * 60)) * 1e6,
};
