/** What making shapes of any family has to say. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'corner-below-any-wire': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
