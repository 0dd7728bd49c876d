/** How much wire a cut uses up, how much of a spool that is, and what a minute of cutting costs. Money in minor units. */

import type { Formula, Input } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';
import { wireMassPerLength } from './wire-string.ts';

const speed: Input = { unit: 'm/min', name: 'wire speed' };
const diameter: Input = { unit: 'mm', name: 'wire diameter' };
const density: Input = { unit: 'g/cm³', name: 'density' };

/** The wire runs at its speed for as long as the machine sparks. */
export const wireMetres: Formula<'minutes' | 'speed'> = {
  name: say('wire.metres')`wire used`,
  text: say('wire.metres.by')`length = sparking time × wire speed`,
  source: 'definition',
  unit: 'm',
  inputs: { minutes: { unit: 'min', name: 'sparking time' }, speed },
  compute: ({ minutes, speed }) => minutes * speed,
};

export const wireKilograms: Formula<'length' | 'diameter' | 'density'> = {
  name: say('wire.kilograms')`mass of the wire used`,
  text: say('wire.kilograms.by')`mass = length × π d² / 4 × density`,
  source: 'definition',
  unit: 'kg',
  inputs: { length: { unit: 'm', name: 'length' }, diameter, density },
  compute: ({ length, diameter, density }) => length * wireMassPerLength.compute({ density, d: diameter }),
};

/** The other way about: how far so much wire goes. */
export const metresOfWire: Formula<'mass' | 'diameter' | 'density'> = {
  name: say('wire.metres-of-wire')`length of so much wire`,
  text: say('wire.metres-of-wire.by')`length = mass / (π d² / 4 × density)`,
  source: 'definition',
  unit: 'm',
  inputs: { mass: { unit: 'kg', name: 'mass' }, diameter, density },
  compute: ({ mass, diameter, density }) => mass / wireMassPerLength.compute({ density, d: diameter }),
};

export const spoolShare: Formula<'mass' | 'spool'> = {
  name: say('wire.spool-share')`spools used`,
  text: say('wire.spool-share.by')`spools = mass / mass of one spool`,
  source: 'definition',
  unit: '1',
  inputs: { mass: { unit: 'kg', name: 'wire used' }, spool: { unit: 'kg', name: 'one spool' } },
  compute: ({ mass, spool }) => mass / spool,
};

export const cuttingMinuteCost: Formula<'machine' | 'speed' | 'diameter' | 'density' | 'price'> = {
  name: say('wire.cutting-minute-cost')`cost of a minute of cutting`,
  text: say('wire.cutting-minute-cost.by')`cost = machine rate / 60 + wire speed × π d² / 4 × density × price`,
  source: 'definition',
  unit: 'money',
  inputs: {
    machine: { unit: 'money/h', name: 'machine rate' },
    speed,
    diameter,
    density,
    price: { unit: 'money/kg', name: 'price of the wire' },
  },
  compute: ({ machine, speed, diameter, density, price }) =>
    machine / 60 + price * wireKilograms.compute({ length: wireMetres.compute({ minutes: 1, speed }), diameter, density }),
};
