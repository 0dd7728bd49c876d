/** The piece that comes free and its mass, as figures that can be asked why. */
import { pieceMass } from '../physics/material/piece-mass.ts';
import { type Figure, given } from '../quantity/figure.ts';
import { apply } from '../quantity/formula.ts';

/**
 * @param area mm² of the piece, its holes and the kerf taken off.
 * @param height the height of the work, one figure for all pieces.
 */
export const massOf = (loop: string, role: 'slug' | 'part', area: number, height: Figure, density: Figure): Figure => {
  const drawn = given({
    key: `contour.${loop}.area`,
    name: `area of the ${role} of ${loop}`,
    value: area,
    unit: 'mm²',
    basis: 'drawing',
    source: 'the drawing',
  });
  return apply(pieceMass, { area: drawn, height, density }, { key: `contour.${loop}.mass`, name: `mass of the ${role} of ${loop}` });
};

export const heightFigure = (height: number): Figure =>
  given({ key: 'cut.height', name: 'height of the work', value: height, unit: 'mm', basis: 'shop', source: 'the job' });

/** A mass as an operator reads it: '12 g', '0.13 kg', '4.2 kg'. */
export const spokenMass = (kg: number): string => {
  if (kg < 0.001) return 'less than 1 g';
  if (kg < 0.1) return `${(kg * 1000).toFixed(kg < 0.01 ? 1 : 0)} g`;
  return `${kg.toFixed(kg < 1 ? 2 : 1)} kg`;
};
