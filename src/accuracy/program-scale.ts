/**
 * The program scaled for temperature. Sign: a warm block is cut larger. The factor is that by which every coordinate of the
 * drawing is multiplied, so that the part, cut at `temperature` and brought to 20 °C, has the sizes of the drawing.
 * The machine's scales are taken as true at any temperature; where they grow with the room, put in the part's temperature less the scales'.
 */

import type { Formula } from '../quantity/formula.ts';
import { say } from '../text/say.ts';
import { referenceTemperature } from './thermal-growth.ts';

const inputs = {
  expansion: { unit: '1e-6/K', name: 'thermal expansion' },
  temperature: { unit: '°C', name: 'temperature of the part', low: 0, high: 100 },
} as const;

export const programScale: Formula<'expansion' | 'temperature'> = {
  name: say('accuracy.program-scale')`scale of the program`,
  text: say('accuracy.program-scale.by')`scale = 1 + expansion · (temperature - 20 °C)`,
  source: 'iso-1',
  unit: '1',
  inputs,
  compute: ({ expansion, temperature }) => 1 + expansion * 1e-6 * (temperature - referenceTemperature),
};

/** The other way about: what a size of a part at a temperature is at 20 °C. Undoes programScale exactly. */
export const sizeAtReference: Formula<'size' | 'expansion' | 'temperature'> = {
  name: say('accuracy.size-at-reference')`size at 20 °C`,
  text: say('accuracy.size-at-reference.by')`size at 20 °C = size / (1 + expansion · (temperature - 20 °C))`,
  source: 'iso-1',
  unit: 'mm',
  inputs: { size: { unit: 'mm', name: 'size' }, ...inputs },
  compute: ({ size, expansion, temperature }) => size / programScale.compute({ expansion, temperature }),
};

/** A scaled program leaves only what is not known of the metal's expansion; swings of temperature are counted elsewhere. */
export const growthLeft: Formula<'doubt' | 'length' | 'rise'> = {
  name: say('accuracy.growth-left')`growth that scaling leaves`,
  text: say('accuracy.growth-left.by')`growth left = uncertainty of the expansion · length · (temperature - 20 °C)`,
  source: 'definition',
  unit: 'µm',
  inputs: {
    doubt: { unit: '1e-6/K', name: 'doubt about the expansion' },
    length: { unit: 'mm', name: 'length' },
    rise: { unit: 'K', name: 'temperature above 20 °C' },
  },
  compute: ({ doubt, length, rise }) => (doubt * length * rise) / 1000,
};
