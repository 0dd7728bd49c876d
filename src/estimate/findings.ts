/** What estimating can find. */
import { type Catalogue, finder } from '../finding/finding.ts';

export const catalogue = {
  'rates-not-yet': { severity: 'refusal', title: 'No rates hold on the day of the quotation' },
  'pass-unknown': { severity: 'refusal', title: 'The program cuts with a condition that no pass has' },
  'spool-runs-out': { severity: 'warning', title: 'One spool of wire is not enough for one piece' },
} satisfies Catalogue;

export const find = finder(catalogue);
