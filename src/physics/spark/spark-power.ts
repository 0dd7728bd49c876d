/** The mean power a rough cut puts into the gap: far more than melting needs, and it grows with height less than in proportion. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';

/**
 * Goes with the rate that the same wire has in tool steel at that height, from one measured cut: 588 W with 0.30 wire in 80 mm.
 */
export const sparkPower: Formula<'reference' | 'wire' | 'height' | 'referenceWire' | 'referenceHeight'> = {
  name: say('spark.power')`mean power in the gap`,
  text: say('spark.power.by')`P = reference · f(d) f(H) / (f(d) f(H) of the reference)`,
  source: 'sato-wire-break',
  unit: 'W',
  inputs: {
    reference: { unit: 'W', name: 'power of the measured cut' },
    wire: { unit: '1', name: 'share of the wire' },
    height: { unit: '1', name: 'share of the height' },
    referenceWire: { unit: '1', name: 'share of the wire in the measured cut' },
    referenceHeight: { unit: '1', name: 'share of the height in the measured cut' },
  },
  compute: ({ reference, wire, height, referenceWire, referenceHeight }) => (reference * wire * height) / (referenceWire * referenceHeight),
};
