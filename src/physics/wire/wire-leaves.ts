/** The numbers of a wire as the shop says them, each one leaf wherever it goes in. */
import type { Figure } from '../../quantity/figure.ts';
import { leafOf } from '../../quantity/leaf-of.ts';
import { saidOf, saidOfBuiltIn } from '../../quantity/source.ts';
import { phrases, say } from '../../text/say.ts';
import type { Unit } from '../../text/unit.ts';
import type { Wire } from './wire.ts';
import { wires } from './wires.ts';

const names = phrases('wire-leaf', {
  diameter: say`wire diameter`,
  tension: say`wire tension`,
  speed: say`wire speed`,
  density: say`density of the wire`,
  spool: say`wire on one spool`,
  price: say`price of the wire`,
});

const units: Readonly<Record<keyof typeof names, Unit>> = {
  diameter: 'mm',
  tension: 'N',
  speed: 'm/min',
  density: 'g/cm³',
  spool: 'kg',
  price: 'money/kg',
};

/** The speed is set by a knob and slips; the rest is as it was bought. One standard deviation as a share. */
const SPREAD: Readonly<Partial<Record<keyof typeof names, number>>> = { speed: 0.1 };

const numbers = Object.keys(units) as readonly (keyof typeof units)[];

/** The shop says its own wires; those of the house are remembered, their prices invented. */
const saidOfWire = (wire: Wire) =>
  wires.some((w) => w.id === wire.id && numbers.every((key) => w[key] === wire[key]))
    ? ({ basis: 'assumed', source: saidOfBuiltIn(wire.name) } as const)
    : ({ basis: 'shop', source: saidOf(wire.name) } as const);

export const wireLeaf = (wire: Wire, what: keyof typeof names): Figure =>
  leafOf(wire, {
    key: `wire.${what}`,
    name: names[what],
    value: wire[what],
    unit: units[what],
    deviation: wire[what] * (SPREAD[what] ?? 0),
    ...saidOfWire(wire),
  });
