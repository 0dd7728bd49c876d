/** One discharge: its energy, what that could melt, the crater it leaves, how deep its heat goes. */

import type { Formula } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';

const pulse = {
  voltage: { unit: 'V', name: 'discharge voltage' },
  current: { unit: 'A', name: 'peak current' },
  duration: { unit: 'µs', name: 'pulse duration' },
} as const;

export const rectangleEnergy: Formula<'voltage' | 'current' | 'duration'> = {
  name: say('spark.rectangle-energy')`energy of a rectangular pulse`,
  text: symbols`E = u i t`,
  source: 'definition',
  unit: 'mJ',
  inputs: pulse,
  compute: ({ voltage, current, duration }) => (voltage * current * duration) / 1000,
};

export const triangleEnergy: Formula<'voltage' | 'current' | 'duration'> = {
  name: say('spark.triangle-energy')`energy of a triangular pulse`,
  text: symbols`E = u î t / 2`,
  source: 'definition',
  unit: 'mJ',
  inputs: pulse,
  compute: ({ voltage, current, duration }) => (voltage * current * duration) / 2000,
};

export const meanPower: Formula<'energy' | 'frequency'> = {
  name: say('spark.mean-power')`mean power`,
  text: say('spark.mean-power.by')`P = E · frequency`,
  source: 'definition',
  unit: 'W',
  inputs: { energy: { unit: 'mJ', name: 'pulse energy' }, frequency: { unit: 'Hz', name: 'pulses per second' } },
  compute: ({ energy, frequency }) => (energy / 1000) * frequency,
};

export const meanCurrent: Formula<'current' | 'duration' | 'frequency'> = {
  name: say('spark.mean-current')`mean current of triangular pulses`,
  text: say('spark.mean-current.by')`I = î t · frequency / 2`,
  source: 'definition',
  unit: 'A',
  inputs: { current: pulse.current, duration: pulse.duration, frequency: { unit: 'Hz', name: 'pulses per second' } },
  compute: ({ current, duration, frequency }) => (current * duration * 1e-6 * frequency) / 2,
};

/** No spark can remove metal with less. */
export const meltEnergy: Formula<'density' | 'heat' | 'rise' | 'fusion'> = {
  name: say('spark.melt-energy')`energy to melt`,
  text: say('spark.melt-energy.by')`h = density (c ΔT + L)`,
  source: 'physics-textbook',
  unit: 'J/mm³',
  inputs: {
    density: { unit: 'g/cm³', name: 'density' },
    heat: { unit: 'J/kgK', name: 'specific heat' },
    rise: { unit: 'K', name: 'from room temperature to melting' },
    fusion: { unit: 'kJ/kg', name: 'heat of fusion' },
  },
  compute: ({ density, heat, rise, fusion }) => density * 1e-6 * (heat * rise + fusion * 1000),
};

/** The share of the energy that reaches the work is the great unknown of the literature: it is asked for, never assumed here. */
export const craterVolume: Formula<'share' | 'energy' | 'melt'> = {
  name: say('spark.crater-volume')`crater volume by energy balance`,
  text: say('spark.crater-volume.by')`V = share · E / h`,
  source: 'physics-textbook',
  unit: 'µm³',
  inputs: {
    share: { unit: '1', name: 'share of the energy that melts', low: 0.05, high: 0.5 },
    energy: { unit: 'mJ', name: 'pulse energy' },
    melt: { unit: 'J/mm³', name: 'energy to melt' },
  },
  compute: ({ share, energy, melt }) => ((share * energy) / 1000 / melt) * 1e9,
};

export const hemisphereRadius: Formula<'volume'> = {
  name: say('spark.hemisphere-radius')`radius of a hemispherical crater`,
  text: symbols`r = (3 V / (2 π))^(1/3)`,
  source: 'plane-geometry',
  unit: 'µm',
  inputs: { volume: { unit: 'µm³', name: 'crater volume' } },
  compute: ({ volume }) => Math.cbrt((3 * volume) / (2 * Math.PI)),
};

/** Crater volume goes with energy, so crater size and Ra with its cube root. Measured exponents scatter from 0.2 to 0.45. */
export const finishRatio: Formula<'energyRatio'> = {
  name: say('spark.finish-ratio')`Ra against that of another pulse energy`,
  text: say('spark.finish-ratio.by')`ratio = (E / E of the other)^(1/3)`,
  source: 'klocke-koenig',
  unit: '1',
  inputs: { energyRatio: { unit: '1', name: 'energy ratio' } },
  compute: ({ energyRatio }) => Math.cbrt(energyRatio),
};

/** Of the same size as measured recast layers. */
export const heatDepth: Formula<'diffusivity' | 'duration'> = {
  name: say('spark.heat-depth')`depth that heat reaches within a pulse`,
  text: say('spark.heat-depth.by')`depth = 2 √(κ t)`,
  source: 'carslaw-jaeger',
  unit: 'µm',
  inputs: { diffusivity: { unit: 'm²/s', name: 'thermal diffusivity' }, duration: { unit: 'µs', name: 'time' } },
  compute: ({ diffusivity, duration }) => 2 * Math.sqrt(diffusivity * duration * 1e-6) * 1e6,
};
