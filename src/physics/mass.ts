/** Mass of a straight-walled piece, so that nobody is surprised by a slug. */
import type { Formula } from '../quantity/formula.ts';

export const pieceMass: Formula<'area' | 'height' | 'density'> = {
  name: 'mass of the piece',
  text: 'mass = area · height · density',
  source: 'definition',
  unit: 'kg',
  inputs: {
    area: { unit: 'mm²', name: 'area' },
    height: { unit: 'mm', name: 'height' },
    density: { unit: 'g/cm³', name: 'density' },
  },
  compute: ({ area, height, density }) => (area * height * density) / 1e6,
};
