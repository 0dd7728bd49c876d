/** What making keyways has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'shaft-not-in-table': { severity: 'refusal', title: 'The standard has no key for a shaft of this diameter' },
  'keyway-impossible': { severity: 'refusal', title: 'There is no such bore or keyway' },
  'keyway-corner-beyond-standard': {
    severity: 'warning',
    title: 'The corners of the keyway are rounder or sharper than the standard has them',
  },
  'bore-wall-thin': { severity: 'warning', title: 'The wall between bore or keyway and the teeth is thin' },
  'shaft-at-step': { severity: 'note', title: 'The diameter stands at the edge between two keys' },
} satisfies Catalogue;

export const find = finder(catalogue);
