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
