/** What current a wire stands: fuse laws for still air, heat of one pulse, and why a finer wire must cut slower. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';

/** Constants of Preece's law, A per (inch)^1.5. */
export const preeceConstants = { copper: 10244, aluminium: 7585, platinum: 5172, iron: 3148, tin: 1642, lead: 1379 } as const;

/** A floor for still dry air, not a limit: in flowing water wires carry several times this. */
export const preeceCurrent: Formula<'d' | 'constant'> = {
  name: say('wire.preece-current')`current that melts a wire in still air`,
  text: say('wire.preece-current.by')`I = C d^1.5, d in inches`,
  source: 'fuse-table',
  unit: 'A',
  inputs: { d: { unit: 'mm', name: 'wire diameter' }, constant: { unit: '1', name: 'constant of the metal' } },
  compute: ({ d, constant }) => constant * (d / 25.4) ** 1.5,
};

/** The other way about. */
export const preeceDiameter: Formula<'current' | 'constant'> = {
  name: say('wire.preece-diameter')`wire that a current melts in still air`,
  text: say('wire.preece-diameter.by')`d = (I / C)^(2/3), d in inches`,
  source: 'fuse-table',
  unit: 'mm',
  inputs: { current: { unit: 'A', name: 'current' }, constant: { unit: '1', name: 'constant of the metal' } },
  compute: ({ current, constant }) => (current / constant) ** (2 / 3) * 25.4,
};

/** Copper heated so fast that nothing is lost to its surroundings. */
export const onderdonkCurrent: Formula<'d' | 'seconds' | 'ambient' | 'melting'> = {
  name: say('wire.onderdonk-current')`current that melts a copper wire within a time`,
  text: say('wire.onderdonk-current.by')`I = A √(log10(1 + (Tm - Ta) / (234 + Ta)) / (33 t)), A in circular mils`,
  source: 'fuse-table',
  unit: 'A',
  inputs: {
    d: { unit: 'mm', name: 'wire diameter' },
    seconds: { unit: 's', name: 'time' },
    ambient: { unit: '°C', name: 'temperature before' },
    melting: { unit: '°C', name: 'melting temperature' },
  },
  compute: ({ d, seconds, ambient, melting }) =>
    (d / 0.0254) ** 2 * Math.sqrt(Math.log10(1 + (melting - ambient) / (234 + ambient)) / (33 * seconds)),
};

export const wireResistance: Formula<'resistivity' | 'd'> = {
  name: say('wire.resistance')`resistance of the wire per length`,
  text: say('wire.resistance.by')`R = resistivity / (π d² / 4)`,
  source: 'definition',
  unit: 'Ω/m',
  inputs: { resistivity: { unit: 'µΩm', name: 'resistivity' }, d: { unit: 'mm', name: 'wire diameter' } },
  compute: ({ resistivity, d }) => resistivity / ((Math.PI * d * d) / 4),
};

/**
 * Heat of one triangular pulse in the wire. With current fed from both ends each half carries half, so only a quarter of the
 * heat arises: feeds 1 or 2.
 */
export const pulseHeating: Formula<'peak' | 'duration' | 'resistance' | 'massPerLength' | 'heat' | 'feeds'> = {
  name: say('wire.pulse-heating')`temperature step of the wire by one pulse`,
  text: say('wire.pulse-heating.by')`step = (î² t / 3) R / (µ c) / feeds²`,
  source: 'schacht-thesis',
  unit: 'K',
  inputs: {
    peak: { unit: 'A', name: 'peak current' },
    duration: { unit: 'µs', name: 'pulse duration' },
    resistance: { unit: 'Ω/m', name: 'resistance per length' },
    massPerLength: { unit: 'kg/m', name: 'mass per length' },
    heat: { unit: 'J/kgK', name: 'specific heat' },
    feeds: { unit: '1', name: 'current feeds', low: 1, high: 2 },
  },
  compute: ({ peak, duration, resistance, massPerLength, heat, feeds }) =>
    (((peak * peak * duration * 1e-6) / 3) * resistance) / (massPerLength * heat) / feeds ** 2,
};

/** Thin wires: heat made in the wire decides, and the area rate that they stand goes with the root of the diameter. */
export const thinWireRatio: Formula<'d' | 'other'> = {
  name: say('wire.thin-wire-ratio')`rate of a thin wire against another, limited by heat in the wire`,
  text: say('wire.thin-wire-ratio.by')`ratio = √(d / d of the other)`,
  source: 'schacht-thesis',
  unit: '1',
  inputs: { d: { unit: 'mm', name: 'wire diameter' }, other: { unit: 'mm', name: 'diameter of the other wire' } },
  compute: ({ d, other }) => Math.sqrt(d / other),
};
