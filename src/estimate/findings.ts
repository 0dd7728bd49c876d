/** What estimating can find. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'rates-not-yet': { severity: 'refusal', title: 'No rates hold on the day of the quotation' },
  'pass-unknown': { severity: 'refusal', title: 'The program cuts with a condition that no pass has' },
  'spool-runs-out': { severity: 'warning', title: 'One spool of wire is not enough for one piece' },
  'spool-ends-at-night': { severity: 'warning', title: 'The spool of wire runs out when nobody is there' },
  'stop-at-night': { severity: 'note', title: 'A stop comes when nobody is there, and the machine waits' },
  'clock-cut-short': { severity: 'note', title: 'Only the first pieces of a long row are laid on the clock' },
  'nobody-comes': { severity: 'warning', title: 'The shop has no shift in which anybody comes' },
  'better-start': { severity: 'note', title: 'Another start would put more of the cutting into the night' },
} satisfies Catalogue;

export const find = finder(catalogue);
