/** What the error budget and the correction of registers have to say to a user. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'budget-over-tolerance': 'warning',
  'correction-suspicious': 'warning',
  'correction-arc-too-tight': 'refusal',
  'register-below-gap': 'refusal',
  'corrections-disagree': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
