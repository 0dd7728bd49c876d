/** What making splines has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'spline-impossible': { severity: 'refusal' },
  'spline-root-form': { severity: 'refusal' },
  'spline-helical': { severity: 'refusal' },
  'spline-class-not-in-table': { severity: 'refusal' },
  'spline-class-without-room': { severity: 'refusal' },
  'straight-spline-impossible': { severity: 'refusal' },
  'straight-pin-off-flank': { severity: 'warning' },
  'spline-corner-clash': { severity: 'warning' },
  'serration-impossible': { severity: 'refusal' },
  'serration-tip-meets-root': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
