/** How far the sparks jump, how wide the kerf is, and where the wire centre must run. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';
import { wireRange } from '../starting-model.ts';

const diameter = { unit: 'mm', name: 'wire diameter', low: wireRange.low, high: wireRange.high } as const;
const energy = { unit: '1', name: 'cube root of pulse energy against the rough', low: 0.03, high: 1 } as const;

/** A finer wire stands weaker pulses, so its craters and gaps are smaller; from 0.25 mm on nothing changes. */
export const wireSize: Formula<'d' | 'reference'> = {
  name: say('cut.wire-size')`size of craters and gap against those of the reference wire`,
  text: say('cut.wire-size.by')`s = (the smaller of d and reference / reference)^(1/3)`,
  source: 'starting-model',
  unit: '1',
  inputs: { d: diameter, reference: { unit: 'mm', name: 'reference wire' } },
  compute: ({ d, reference }) => Math.cbrt(Math.min(d, reference) / reference),
};

export const sparkGap: Formula<'least' | 'rise' | 'energy' | 'size' | 'factor'> = {
  name: say('cut.spark-gap')`spark gap`,
  text: say('cut.spark-gap.by')`gap = (least + rise · e) · s · factor`,
  source: 'starting-model',
  unit: 'mm',
  inputs: {
    least: { unit: 'µm', name: 'gap at vanishing energy' },
    rise: { unit: 'µm', name: 'rise to the rough' },
    energy,
    size: { unit: '1', name: 'size for this wire' },
    factor: { unit: '1', name: 'shop factor on gap' },
  },
  compute: ({ least, rise, energy, size, factor }) => ((least + rise * energy) * size * factor) / 1000,
};

export const kerf: Formula<'d' | 'gap'> = {
  name: say('cut.any-kerf')`kerf`,
  text: say('cut.kerf.by')`kerf = d + 2 gap`,
  source: 'definition',
  unit: 'mm',
  inputs: { d: diameter, gap: { unit: 'mm', name: 'spark gap' } },
  compute: ({ d, gap }) => d + 2 * gap,
};

/** Wire centre to the wanted surface. */
export const wireOffset: Formula<'d' | 'gap' | 'stock'> = {
  name: say('cut.wire-offset')`offset of the wire centre`,
  text: say('cut.wire-offset.by')`offset = d / 2 + gap + stock`,
  source: 'definition',
  unit: 'mm',
  inputs: { d: diameter, gap: { unit: 'mm', name: 'spark gap' }, stock: { unit: 'mm', name: 'stock left for later passes' } },
  compute: ({ d, gap, stock }) => d / 2 + gap + stock,
};
