/** What estimating can find. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'rates-not-yet': { severity: 'refusal' },
  'pass-unknown': { severity: 'refusal' },
  'spool-runs-out': { severity: 'warning' },
  'spool-ends-at-night': { severity: 'warning' },
  'stop-at-night': { severity: 'note' },
  'clock-cut-short': { severity: 'note' },
  'nobody-comes': { severity: 'warning' },
  'better-start': { severity: 'note' },
} satisfies Catalogue;

export const find = finder(catalogue);
