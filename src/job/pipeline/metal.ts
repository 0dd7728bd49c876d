/** Mass and price of metal, as figures that can be asked why. */
import type { EstimateQuestion } from '../../estimate/estimate.ts';
import { ratesOn } from '../../estimate/rates.ts';
import { areaOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { pieceMass } from '../../physics/material/piece-mass.ts';
import type { CutPlan } from '../../plan/plan.ts';
import { type Figure, given } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { materialOf } from '../job-material.ts';
import type { JobRun } from '../job-run.ts';

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
        source: 'the job or the shop file',
      }),
    },
    { key, name },
  );

/** The metal of one piece, as far as the job or the shop says who pays for it and what it costs per kg. */
export const metalFor = ({ job, shop, day }: JobRun, plan: CutPlan): Pick<EstimateQuestion, 'metal'> => {
  const { price: told, suppliedBy } = job.stock ?? {};
  const onDay = ratesOn(shop.rates, day);
  const known = onDay.kind === 'rates' ? onDay.rates.materialPrices?.[job.material] : undefined;
  const price = suppliedBy === 'customer' ? undefined : (told ?? known);
  const found = materialOf(job.material, shop);
  if (found.kind !== 'material' || (price === undefined && suppliedBy !== 'customer')) return {};
  const mass = massOf({
    key: 'metal.mass',
    name: 'mass of the metal of one piece',
    area: metalOf([plan.block]),
    height: job.height,
    density: found.material.density,
  });
  if (price === undefined) return { metal: { mass, suppliedBy: 'customer' } };
  return { metal: { mass, suppliedBy: 'shop', cost: shareOf('price.metal', 'Metal', mass, price) } };
};
