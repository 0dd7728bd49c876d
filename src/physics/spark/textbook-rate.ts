/** The textbook's removal rate from current and melting temperature: good for order and plausibility, not for hours. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';

const current = { unit: 'A', name: 'mean current' } as const;
const melting = { unit: '°C', name: 'melting temperature' } as const;

/** Knows nothing of pulse shape, conductivity or specific heat. */
export const textbookRemoval: Formula<'current' | 'melting'> = {
  name: say('spark.textbook-removal')`removal rate by the textbook`,
  text: say('spark.textbook-removal.by')`removal = 664 I / Tm^1.23`,
  source: 'groover',
  unit: 'mm³/s',
  inputs: { current, melting },
  compute: ({ current, melting }) => (664 * current) / melting ** 1.23,
};

/** The same law as printed in US units: in³/min from °F. */
export const textbookRemovalInch: Formula<'current' | 'melting'> = {
  name: say('spark.textbook-removal-inch')`removal rate by the textbook, in³/min`,
  text: say('spark.textbook-removal-inch.by')`removal in in³/min = 5.08 I / (Tm in °F)^1.23`,
  source: 'groover',
  unit: '1',
  inputs: { current, melting: { unit: '1', name: 'melting temperature in °F' } },
  compute: ({ current, melting }) => (5.08 * current) / melting ** 1.23,
};

/** The same law in a third book, rounded to 40,000 per minute. */
export const kalpakjianRemoval: Formula<'current' | 'melting'> = {
  name: say('spark.kalpakjian-removal')`removal rate by a second textbook`,
  text: say('spark.kalpakjian-removal.by')`removal = 40000 I Tm^-1.23`,
  source: 'el-hofy',
  unit: 'mm³/min',
  inputs: { current, melting },
  compute: ({ current, melting }) => 4e4 * current * melting ** -1.23,
};

/** mm and mm³/min, or inches and in³/min throughout. */
export const feedFromRemoval: Formula<'removal' | 'kerf' | 'height'> = {
  name: say('spark.feed-from-removal')`feed from removal rate`,
  text: say('spark.feed-from-removal.by')`feed = removal / (kerf · height)`,
  source: 'groover',
  unit: 'mm/min',
  inputs: {
    removal: { unit: 'mm³/min', name: 'removal rate' },
    kerf: { unit: 'mm', name: 'kerf' },
    height: { unit: 'mm', name: 'height' },
  },
  compute: ({ removal, kerf, height }) => removal / (kerf * height),
};

/** Ranks electrode wear, not cutting speed: it would call titanium easier than aluminium. */
export const erosionResistance: Formula<'heat' | 'density' | 'conductivity' | 'melting'> = {
  name: say('spark.erosion-resistance')`erosion resistance of a metal`,
  text: say('spark.erosion-resistance.by')`index = c · density · conductivity · Tm²`,
  source: 'erosion-index',
  unit: '1',
  inputs: {
    heat: { unit: 'J/kgK', name: 'specific heat' },
    density: { unit: 'g/cm³', name: 'density' },
    conductivity: { unit: 'W/mK', name: 'heat conductivity' },
    melting,
  },
  compute: ({ heat, density, conductivity, melting }) => heat * density * 1000 * conductivity * melting * melting,
};
