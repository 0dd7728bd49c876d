/** How a part grows away from the reference temperature, and what follows from a metal's constants. */

import type { Formula } from '../quantity/formula.ts';
import { say } from '../text/say.ts';

/** Sizes on drawings hold at this temperature, °C (ISO 1). */
export const referenceTemperature = 20;

export const thermalGrowth: Formula<'expansion' | 'length' | 'rise'> = {
  name: say('accuracy.thermal-growth')`thermal growth`,
  text: say('accuracy.thermal-growth.by')`growth = expansion · length · (temperature - 20 °C)`,
  source: 'iso-1',
  unit: 'µm',
  inputs: {
    expansion: { unit: '1e-6/K', name: 'thermal expansion' },
    length: { unit: 'mm', name: 'length' },
    rise: { unit: 'K', name: 'temperature above 20 °C', low: -20, high: 80 },
  },
  compute: ({ expansion, length, rise }) => (expansion * length * rise) / 1000,
};

/** Conductivity of metals is often printed in percent of annealed copper, which has 0.017241 µΩm by definition. */
export const resistivityFromCopperShare: Formula<'share'> = {
  name: say('accuracy.resistivity-from-copper-share')`resistivity from conductivity in % IACS`,
  text: say('accuracy.resistivity-from-copper-share.by')`resistivity = 0.017241 / (share / 100)`,
  source: 'annealed-copper-standard',
  unit: 'µΩm',
  inputs: { share: { unit: '%', name: 'conductivity against annealed copper' } },
  compute: ({ share }) => 0.017241 / (share / 100),
};
