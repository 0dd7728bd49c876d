/** The wire as a stretched string: how far it gives way, and what lag does to an arc. */

import type { Formula } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';

const tension = { unit: 'N', name: 'wire tension' } as const;
const diameter = { unit: 'mm', name: 'wire diameter' } as const;
const span = { unit: 'mm', name: 'wire between the guides' } as const;

export const wireSag: Formula<'load' | 'span' | 'tension'> = {
  name: say('wire.sag')`deflection of the wire`,
  text: symbols`w = q L² / (8 T)`,
  source: 'statics',
  unit: 'µm',
  inputs: { load: { unit: 'N/m', name: 'push per length' }, span, tension },
  compute: ({ load, span, tension }) => ((load * (span / 1000) ** 2) / (8 * tension)) * 1e6,
};

export const wireMassPerLength: Formula<'density' | 'd'> = {
  name: say('wire.mass-per-length')`mass of the wire per length`,
  text: say('wire.mass-per-length.by')`µ = density · π d² / 4`,
  source: 'definition',
  unit: 'kg/m',
  inputs: { density: { unit: 'g/cm³', name: 'density of the wire' }, d: diameter },
  compute: ({ density, d }) => (density * 1000 * Math.PI * (d / 1000) ** 2) / 4,
};

/** The wire trails along its path by the lag, so on a circle it runs nearer to the centre than it was told. */
export const cornerLag: Formula<'lag' | 'radius'> = {
  name: say('wire.corner-lag')`error of an arc by wire lag`,
  text: say('wire.corner-lag.by')`error = R - √(R² - lag²)`,
  source: 'plane-geometry',
  unit: 'µm',
  inputs: { lag: { unit: 'µm', name: 'wire lag' }, radius: { unit: 'mm', name: 'radius of the wire path' } },
  // R - √(R² - s²) written so that nothing cancels when the lag is small against the radius.
  compute: ({ lag, radius }) => (lag * lag) / (radius * 1000 + Math.sqrt((radius * 1000) ** 2 - lag * lag)),
};
