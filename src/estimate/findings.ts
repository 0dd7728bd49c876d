/** What estimating can find. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'rates-not-yet': 'refusal',
  'pass-unknown': 'refusal',
  'metal-without-price': 'doubt',
  'spool-runs-out': 'warning',
  'spool-ends-at-night': 'warning',
  'stop-at-night': 'note',
  'schedule-cut-short': 'note',
  'nobody-comes': 'warning',
  'better-start': 'note',
} satisfies Catalogue;

export const find = finder(catalogue);
