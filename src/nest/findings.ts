/** What laying pieces into a plate has to say to a user. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'nest-value-unusable': 'refusal',
  'nest-outline-unusable': 'refusal',
  'plate-too-small': 'refusal',
  'piece-too-large': 'warning',
  'pieces-left': 'warning',
  'pieces-too-many': 'refusal',
  'nest-stopped': 'note',
  'stack-sheets': 'note',
  'stack-too-high': 'refusal',
  'stack-flush': 'warning',
  'stack-value-unusable': 'refusal',
  'stack-uneven': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
