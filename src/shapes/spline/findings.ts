/** What making splines has to say. */
import { type Catalogue, finder } from '../../finding/finding.ts';

export const catalogue = {
  'spline-impossible': { severity: 'refusal', title: 'There is no such spline' },
  'spline-root-form': { severity: 'refusal', title: 'The standard has no such root at this pressure angle' },
} satisfies Catalogue;

export const find = finder(catalogue);
