/** Mass of a straight-walled piece, so that nobody is surprised by a slug. */

import { type Figure, given } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import { contour } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

/** Density in g/cm³ is mg/mm³; a kilogram has a million of those. */
export const pieceMass: Formula<'area' | 'height' | 'density'> = {
  name: say('material.piece-mass')`mass of a piece`,
  text: say('material.piece-mass.by')`mass = area · height · density`,
  source: 'definition',
  unit: 'kg',
  inputs: {
    area: { unit: 'mm²', name: 'area of the piece' },
    height: { unit: 'mm', name: 'height of the piece' },
    density: { unit: 'g/cm³', name: 'density' },
  },
  compute: ({ area, height, density }) => (area * height * density) / 1e6,
};

export interface Weighed {
  /** Begins the keys of both figures: 'contour.L1'. */
  readonly key: string;
  /** Goes behind 'mass of' and 'area of'. */
  readonly what: Text;
  /** mm², by the drawing. */
  readonly area: number;
  readonly height: Figure;
  readonly density: Figure;
}

/** What comes off a contour or an open line, as it is weighed. */
export const pieceOf = phrases('weighed-piece', {
  part: (id: string) => say`the part of ${{ loop: contour(id) }}`,
  slug: (id: string) => say`the slug of ${{ loop: contour(id) }}`,
});

/** kg, as a figure that can be asked why. */
export const massOf = ({ key, what, area, height, density }: Weighed): Figure =>
  apply(
    pieceMass,
    {
      area: given({
        key: `${key}.area`,
        name: say('material.area-of')`area of ${{ what }}`,
        value: area,
        unit: 'mm²',
        basis: 'drawing',
        source: saidBy.drawing,
      }),
      height,
      density,
    },
    { key: `${key}.mass`, name: say('material.mass-of')`mass of ${{ what }}` },
  );
