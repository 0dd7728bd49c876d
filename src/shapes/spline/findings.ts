/** What making splines has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'spline-impossible': 'refusal',
  'spline-root-form': 'refusal',
  'spline-helical': 'refusal',
  'spline-class-not-in-table': 'refusal',
  'spline-class-without-room': 'refusal',
  'straight-spline-impossible': 'refusal',
  'straight-pin-off-flank': 'warning',
  'spline-corner-clash': 'warning',
  'serration-impossible': 'refusal',
  'serration-tip-meets-root': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
