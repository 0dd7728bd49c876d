/** What making splines has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'spline-impossible': { severity: 'refusal', title: 'There is no such spline' },
  'spline-root-form': { severity: 'refusal', title: 'The standard has no such root at this pressure angle' },
  'spline-helical': { severity: 'refusal', title: 'A straight wall cannot have helical splines' },
  'spline-class-not-in-table': { severity: 'refusal', title: 'The standard has no such fit for this spline' },
  'spline-class-without-room': { severity: 'refusal', title: 'The class leaves nothing for the size of the teeth' },
  'straight-spline-impossible': { severity: 'refusal', title: 'There is no such straight-sided spline' },
  'straight-pin-off-flank': { severity: 'warning', title: 'The pin does not rest on straight flanks' },
  'spline-corner-clash': { severity: 'warning', title: 'The corners of the splines would bear before their walls' },
  'serration-impossible': { severity: 'refusal', title: 'There is no such serration' },
  'serration-tip-meets-root': { severity: 'warning', title: 'The tips of the serration touch the roots of its mate' },
} satisfies Catalogue;

export const find = finder(catalogue);
