/** What making forms has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'form-impossible': { severity: 'refusal', title: 'The numbers give no such form' },
  'sprocket-pointed': { severity: 'warning', title: 'The teeth of the sprocket end in a point below the tip circle' },
  'ratchet-throws-pawl': { severity: 'warning', title: 'The ratchet throws its pawl out under load' },
  'ratchet-pawl-out-of-reach': { severity: 'warning', title: 'The pawl does not reach the faces of the ratchet' },
  'ratchet-pointed': { severity: 'warning', title: 'The teeth of the ratchet end in points' },
} satisfies Catalogue;

export const find = finder(catalogue);
