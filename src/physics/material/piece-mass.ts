/** Mass of a straight-walled piece, so that nobody is surprised by a slug. */
import type { Formula } from '../../quantity/formula.ts';

/** Density in g/cm³ is mg/mm³; a kilogram has a million of those. */
export const pieceMass: Formula<'area' | 'height' | 'density'> = {
  name: 'mass of a piece',
  text: 'mass = area · height · density',
  source: 'definition',
  unit: 'kg',
  inputs: {
    area: { unit: 'mm²', name: 'area of the piece' },
    height: { unit: 'mm', name: 'height of the piece' },
    density: { unit: 'g/cm³', name: 'density' },
  },
  compute: ({ area, height, density }) => (area * height * density) / 1e6,
};
