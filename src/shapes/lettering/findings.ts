/** What making letters has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'font-unusable': { severity: 'refusal' },
  'letter-missing': { severity: 'refusal' },
  'letters-need-shaping': { severity: 'refusal' },
  'text-without-letters': { severity: 'refusal' },
  'letter-without-room': { severity: 'refusal' },
  'letters-too-fine': { severity: 'refusal' },
  'letter-islands-fall': { severity: 'warning' },
  'letter-bridge-impossible': { severity: 'warning' },
  'letter-bridge-wide': { severity: 'warning' },
  'letters-run-together': { severity: 'warning' },
  'letters-in-parts': { severity: 'note' },
} satisfies Catalogue;

export const find = finder(catalogue);
