/** The energy that melting takes. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';

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
