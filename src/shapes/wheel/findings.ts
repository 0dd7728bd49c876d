/** What making forms has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'form-impossible': 'refusal',
  'sprocket-pointed': 'warning',
  'sprocket-root-outside': 'warning',
  'ratchet-throws-pawl': 'warning',
  'ratchet-pawl-out-of-reach': 'warning',
  'ratchet-pointed': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
