/** What can be wrong with a dialect file. */
import type { Catalogue } from '../../text/finding.ts';
import { finder } from '../../text/finding.ts';

export const catalogue = {
  'dialect-not-json': { severity: 'refusal', title: 'The dialect file is not JSON' },
  'dialect-too-long': { severity: 'refusal', title: 'The dialect file is longer than the limit' },
  'dialect-field-bad': { severity: 'refusal', title: 'A field of the dialect is missing, unknown or out of its range' },
  'dialect-word-twice': { severity: 'refusal', title: 'One word of the dialect would have two meanings' },
  'dialect-word-taken': { severity: 'refusal', title: 'A word of the dialect has another meaning in the standards' },
  'dialect-pair-incomplete': { severity: 'warning', title: 'The dialect names one word of a pair and not the other' },
  'dialect-coarse': { severity: 'warning', title: 'The last digit of the dialect is coarse for wire cutting' },
  'dialect-cannot-speak': { severity: 'warning', title: 'The dialect has neither a word nor a comment to ask the operator with' },
} satisfies Catalogue;

export const find = finder(catalogue);
