/** What making keyways has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'shaft-not-in-table': 'refusal',
  'keyway-impossible': 'refusal',
  'keyway-corner-beyond-standard': 'warning',
  'bore-wall-thin': 'warning',
  'shaft-at-step': 'note',
} satisfies Catalogue;

export const find = finder(catalogue);
