/** What laying pieces into a plate has to say to a user. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'nest-value-unusable': { severity: 'refusal' },
  'nest-outline-unusable': { severity: 'refusal' },
  'plate-too-small': { severity: 'refusal' },
  'piece-too-large': { severity: 'warning' },
  'pieces-left': { severity: 'warning' },
  'pieces-too-many': { severity: 'refusal' },
  'nest-stopped': { severity: 'note' },
  'stack-sheets': { severity: 'note' },
  'stack-too-high': { severity: 'refusal' },
  'stack-flush': { severity: 'warning' },
  'stack-value-unusable': { severity: 'refusal' },
  'stack-uneven': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
