/** What making letters has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'font-unusable': 'refusal',
  'letter-missing': 'refusal',
  'letters-need-shaping': 'refusal',
  'text-without-letters': 'refusal',
  'letter-without-room': 'refusal',
  'letters-too-fine': 'refusal',
  'letter-islands-fall': 'warning',
  'letter-bridge-impossible': 'warning',
  'letter-bridge-wide': 'warning',
  'letters-run-together': 'warning',
  'letters-in-parts': 'note',
} satisfies Catalogue;

export const find = finder(catalogue);
