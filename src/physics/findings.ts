/** What physics has to say to a user before any number is given. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'material-unknown': 'refusal',
  'material-not-conducting': 'refusal',
  'material-index-estimated': 'warning',
  'wire-out-of-range': 'refusal',
  'wire-not-for-machine': 'refusal',
  'height-out-of-range': 'refusal',
  'pass-table-inconsistent': 'refusal',
  'another-process-would-do': 'note',
  'height-hardly-known': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
