/** What the error budget and the correction of registers have to say to a user. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'budget-over-tolerance': { severity: 'warning' },
  'correction-suspicious': { severity: 'warning' },
  'correction-arc-too-tight': { severity: 'refusal' },
  'register-below-gap': { severity: 'refusal' },
  'corrections-disagree': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
