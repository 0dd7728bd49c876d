/** What a pass leaves on the surface: roughness, recast layer and the depth of damage the next pass must take off. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';

const energy = { unit: '1', name: 'cube root of pulse energy against the rough', low: 0.03, high: 1 } as const;
const ra = { unit: 'µm', name: 'Ra' } as const;

/** Nothing here asks for the height: the sparks work along the whole height at once. */
export const passFinish: Formula<'rough' | 'size' | 'fineness' | 'energy' | 'factor'> = {
  name: say('cut.pass-finish')`Ra after a pass`,
  text: say('cut.pass-finish.by')`Ra = Ra of a rough cut · s · fineness · e · factor`,
  source: 'starting-model',
  unit: 'µm',
  inputs: {
    rough: { unit: 'µm', name: 'Ra of a rough cut in tool steel' },
    size: { unit: '1', name: 'size for this wire' },
    fineness: { unit: '1', name: 'Ra in this material against tool steel' },
    energy,
    factor: { unit: '1', name: 'shop factor on Ra' },
  },
  compute: ({ rough, size, fineness, energy, factor }) => rough * size * fineness * energy * factor,
};

export const damageDepth: Formula<'ra' | 'share'> = {
  name: say('cut.damage-depth')`damage depth`,
  text: say('cut.damage-depth.by')`damage = share · Ra, crater and recast layer together`,
  source: 'starting-model',
  unit: 'µm',
  inputs: { ra, share: { unit: '1', name: 'damage in Ra' } },
  compute: ({ ra, share }) => ra * share,
};

/** Falls faster than Ra, as two papers on stainless steel have it; after fine passes a least layer is left. */
export const recastLayer: Formula<'ra' | 'scale' | 'power' | 'least'> = {
  name: say('cut.recast-layer')`recast layer`,
  text: say('cut.recast-layer.by')`recast layer = the larger of scale · (Ra / 1 µm)^power and the least layer`,
  source: 'starting-model',
  unit: 'µm',
  inputs: {
    ra,
    scale: { unit: 'µm', name: 'recast layer at Ra 1 µm' },
    power: { unit: '1', name: 'power' },
    least: { unit: 'µm', name: 'least recast layer' },
  },
  compute: ({ ra, scale, power, least }) => Math.max(scale * ra ** power, least),
  bends: true,
};
