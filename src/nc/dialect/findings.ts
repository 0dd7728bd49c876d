/** What can be wrong with a dialect file. */
import type { Catalogue } from '../../text/finding.ts';
import { finder } from '../../text/finding.ts';

export const catalogue = {
  'dialect-not-json': { severity: 'refusal' },
  'dialect-too-long': { severity: 'refusal' },
  'dialect-field-bad': { severity: 'refusal' },
  'dialect-word-twice': { severity: 'refusal' },
  'dialect-word-taken': { severity: 'refusal' },
  'dialect-pair-incomplete': { severity: 'warning' },
  'dialect-coarse': { severity: 'warning' },
  'dialect-cannot-speak': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
