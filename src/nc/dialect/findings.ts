/** What can be wrong with a dialect file. */
import type { Catalogue } from '../../text/finding.ts';
import { finder } from '../../text/finding.ts';

export const catalogue = {
  'dialect-not-json': 'refusal',
  'dialect-too-long': 'refusal',
  'dialect-field-bad': 'refusal',
  'dialect-word-twice': 'refusal',
  'dialect-word-taken': 'refusal',
  'dialect-pair-incomplete': 'warning',
  'dialect-coarse': 'warning',
  'dialect-cannot-speak': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
