/** How hot a spot gets under a spark: the disc and the point source on a half space, without melting. SI units throughout. */

import type { Formula } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';
import { erfc, ierfc } from './error-function.ts';

const flux = { unit: 'W/m²', name: 'heat flux' } as const;
const radius = { unit: 'm', name: 'radius of the hot disc' } as const;
const conductivity = { unit: 'W/mK', name: 'heat conductivity' } as const;
const diffusivity = { unit: 'm²/s', name: 'thermal diffusivity' } as const;
const time = { unit: 's', name: 'time' } as const;

/** On the axis of a disc of even flux. */
export const discRise: Formula<'flux' | 'radius' | 'conductivity' | 'diffusivity' | 'time' | 'depth'> = {
  name: say('spark.disc-rise')`temperature rise under a hot disc`,
  text: say('spark.disc-rise.by')`ΔT = (2 q √(κt) / K) (ierfc(z / 2√(κt)) - ierfc(√(z² + a²) / 2√(κt)))`,
  source: 'carslaw-jaeger',
  unit: 'K',
  inputs: { flux, radius, conductivity, diffusivity, time, depth: { unit: 'm', name: 'depth' } },
  compute: ({ flux, radius, conductivity, diffusivity, time, depth }) => {
    const reach = 2 * Math.sqrt(diffusivity * time);
    return ((flux * reach) / conductivity) * (ierfc(depth / reach) - ierfc(Math.hypot(depth, radius) / reach));
  },
};

/** After a long time: centre, mean over the disc, edge. */
export const discSteady: Readonly<Record<'centre' | 'mean' | 'edge', Formula<'flux' | 'radius' | 'conductivity'>>> = {
  centre: {
    name: say('spark.disc-steady-centre')`final temperature rise at the centre of a hot disc`,
    text: symbols`ΔT = q a / K`,
    source: 'carslaw-jaeger',
    unit: 'K',
    inputs: { flux, radius, conductivity },
    compute: ({ flux, radius, conductivity }) => (flux * radius) / conductivity,
  },
  mean: {
    name: say('spark.disc-steady-mean')`final mean temperature rise of a hot disc`,
    text: symbols`ΔT = 8 q a / (3 π K)`,
    source: 'carslaw-jaeger',
    unit: 'K',
    inputs: { flux, radius, conductivity },
    compute: ({ flux, radius, conductivity }) => (8 * flux * radius) / (3 * Math.PI * conductivity),
  },
  edge: {
    name: say('spark.disc-steady-edge')`final temperature rise at the edge of a hot disc`,
    text: symbols`ΔT = 2 q a / (π K)`,
    source: 'carslaw-jaeger',
    unit: 'K',
    inputs: { flux, radius, conductivity },
    compute: ({ flux, radius, conductivity }) => (2 * flux * radius) / (Math.PI * conductivity),
  },
};

/** Fails at small energies, which is just where skims work. */
export const pointRise: Formula<'share' | 'power' | 'conductivity' | 'diffusivity' | 'distance' | 'time'> = {
  name: say('spark.point-rise')`temperature rise beside a point source`,
  text: say('spark.point-rise.by')`ΔT = share · P / (2 π K r) · erfc(r / 2√(κt))`,
  source: 'dibitonto',
  unit: 'K',
  inputs: {
    share: { unit: '1', name: 'share of the power that enters', low: 0.05, high: 0.5 },
    power: { unit: 'W', name: 'discharge power' },
    conductivity,
    diffusivity,
    distance: { unit: 'm', name: 'distance' },
    time,
  },
  compute: ({ share, power, conductivity, diffusivity, distance, time }) =>
    ((share * power) / (2 * Math.PI * conductivity * distance)) * erfc(distance / (2 * Math.sqrt(diffusivity * time))),
};
