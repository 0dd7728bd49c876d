/** What making forms has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'form-impossible': { severity: 'refusal' },
  'sprocket-pointed': { severity: 'warning' },
  'ratchet-throws-pawl': { severity: 'warning' },
  'ratchet-pawl-out-of-reach': { severity: 'warning' },
  'ratchet-pointed': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
