/** Mass and price of metal, as figures that can be asked why. */
import { areaOf } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import { pieceMass } from '../physics/mass.ts';
import { type Figure, given } from '../quantity/figure.ts';
import { apply, type Formula } from '../quantity/formula.ts';

/** mm² of an outline less its openings, whichever way they run: the first is the outline. */
export const metalOf = ([outline, ...openings]: readonly Contour[]): number =>
  outline === undefined ? 0 : Math.max(0, Math.abs(areaOf(outline)) - openings.reduce((sum, c) => sum + Math.abs(areaOf(c)), 0));

export interface Weighed {
  readonly key: string;
  readonly name: string;
  /** mm² */
  readonly area: number;
  /** mm */
  readonly height: number;
  readonly density: Figure;
}

/** kg */
export const massOf = ({ key, name, area, height, density }: Weighed): Figure =>
  apply(
    pieceMass,
    {
      area: given({ key: `${key}.area`, name: 'area', value: area, unit: 'mm²', basis: 'drawing', source: 'the drawing' }),
      height: given({ key: `${key}.height`, name: 'height', value: height, unit: 'mm', basis: 'drawing', source: 'the job' }),
      density,
    },
    { key, name },
  );

const metalCost: Formula<'mass' | 'price'> = {
  name: 'cost of metal',
  text: 'cost = mass × price',
  source: 'definition',
  unit: 'money',
  inputs: { mass: { unit: 'kg', name: 'mass' }, price: { unit: 'money/kg', name: 'price of the metal' } },
  compute: ({ mass, price }) => mass * price,
};

/** Minor money units, at a price per kg. */
export const shareOf = (key: string, name: string, mass: Figure, price: number): Figure =>
  apply(
    metalCost,
    {
      mass,
      price: given({
        key: `${key}.per-kg`,
        name: 'price of the metal',
        value: price,
        unit: 'money/kg',
        basis: 'shop',
        source: 'the shop or nest file',
      }),
    },
    { key, name },
  );
