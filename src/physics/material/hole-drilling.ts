/** How fast start holes are drilled by sparks through a tube in a material, against tool steel: from memory of the trade, no source. */

import type { Figure } from '../../quantity/figure.ts';
import type { Formula } from '../../quantity/formula.ts';
import { leafOf } from '../../quantity/leaf-of.ts';
import { name } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Family, Material } from './material.ts';

/** Carbide and tungsten wear the tube away, copper and brass lead the heat off. Of diamond nothing is known: it is not drilled. */
const AGAINST_TOOL_STEEL: Readonly<Record<Exclude<Family, 'pcd'>, number>> = {
  'tool steel': 1,
  steel: 1,
  stainless: 1,
  carbide: 0.3,
  aluminium: 2,
  titanium: 0.6,
  'nickel alloy': 0.7,
  copper: 0.4,
  brass: 0.7,
  graphite: 0.8,
  refractory: 0.25,
  magnesium: 2,
  zirconium: 0.6,
};

/** One standard deviation as a share. */
const SPREAD = 0.3;

/** What is asked of a material here. */
export type Drilled = Pick<Material, 'id' | 'name' | 'family'>;

/** As a bare number; diamond counts as carbide, so that a plan that is refused anyway has hours. */
export const drillingIndex = (family: Family): number => AGAINST_TOOL_STEEL[family === 'pcd' ? 'carbide' : family];

export const drillingIndexOf = (material: Drilled): Figure => {
  const index = drillingIndex(material.family);
  return leafOf(material, {
    key: `material.${material.id}.drilling`,
    name: say('material.drilling')`drilling of ${{ material: name(material.name) }} against tool steel`,
    value: index,
    unit: '1',
    deviation: SPREAD * index,
    basis: 'assumed',
    source: { file: 'common-practice' },
  });
};

export const feedInMaterial: Formula<'steel' | 'index'> = {
  name: say('material.drilling-feed')`drilling feed in this material`,
  text: say('material.drilling-feed.by')`feed = feed in tool steel × index`,
  source: 'common-practice',
  unit: 'mm/min',
  inputs: { steel: { unit: 'mm/min', name: 'feed in tool steel' }, index: { unit: '1', name: 'material against tool steel' } },
  compute: ({ steel, index }) => steel * index,
};
