/** Mass and price of metal, as figures that can be asked why. */

import type { EstimateQuestion } from '../../estimate/estimate.ts';
import { massCost } from '../../estimate/formulas.ts';
import { ratesOn } from '../../estimate/rates.ts';
import { areaOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { massOf } from '../../physics/material/piece-mass.ts';
import { workHeight } from '../../physics/work-height.ts';
import type { CutPlan } from '../../plan/plan.ts';
import { type Figure, given } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { materialOf } from '../job-material.ts';
import type { JobRun } from '../job-run.ts';

/** mm² of an outline less its openings, whichever way they run: the first is the outline. */
export const metalOf = ([outline, ...openings]: readonly Contour[]): number =>
  outline === undefined ? 0 : Math.max(0, Math.abs(areaOf(outline)) - openings.reduce((sum, c) => sum + Math.abs(areaOf(c)), 0));

/** Minor money units, at a price per kg. */
export const shareOf = (key: string, name: Text, mass: Figure, price: number): Figure =>
  apply(
    massCost,
    {
      mass,
      price: given({
        key: `${key}.per-kg`,
        name: say('pipeline.per-kg')`price of the metal`,
        value: price,
        unit: 'money/kg',
        basis: 'shop',
        source: saidBy.jobOrShop,
      }),
    },
    { key, name },
  );

/** The metal of one piece, as far as the job or the shop says who pays for it and what it costs per kg. */
export const metalFor = ({ job, shop, day }: JobRun, plan: CutPlan): Pick<EstimateQuestion, 'metal'> => {
  const { price: told, suppliedBy } = job.stock ?? {};
  const onDay = ratesOn(shop.rates, day);
  const known = onDay.kind === 'rates' ? onDay.rates.materialPrices?.[job.material] : undefined;
  const price = told ?? known;
  const found = materialOf(job.material, shop);
  if (found.kind !== 'material' || (price === undefined && suppliedBy === undefined)) return {};
  const mass = massOf({
    key: 'metal',
    what: say('pipeline.metal')`metal for one piece`,
    area: metalOf([plan.block]),
    height: workHeight(job.height),
    density: found.material.density,
  });
  if (price === undefined || suppliedBy === 'customer') return { metal: { mass, suppliedBy: suppliedBy ?? 'shop', cost: undefined } };
  return { metal: { mass, suppliedBy: 'shop', cost: shareOf('price.metal', say('pipeline.price-metal')`Metal`, mass, price) } };
};
