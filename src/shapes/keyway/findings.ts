/** What making keyways has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'shaft-not-in-table': { severity: 'refusal' },
  'keyway-impossible': { severity: 'refusal' },
  'keyway-corner-beyond-standard': { severity: 'warning' },
  'bore-wall-thin': { severity: 'warning' },
  'shaft-at-step': { severity: 'note' },
} satisfies Catalogue;

export const find = finder(catalogue);
