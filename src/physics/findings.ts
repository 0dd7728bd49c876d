/** What physics has to say to a user before any number is given. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'material-unknown': { severity: 'refusal' },
  'material-not-conducting': { severity: 'refusal' },
  'material-index-estimated': { severity: 'warning' },
  'wire-out-of-range': { severity: 'refusal' },
  'wire-not-for-machine': { severity: 'refusal' },
  'height-out-of-range': { severity: 'refusal' },
  'pass-table-inconsistent': { severity: 'refusal' },
  'another-process-would-do': { severity: 'note' },
  'height-hardly-known': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
