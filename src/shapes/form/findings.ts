/** What making forms has to say. */
import { type Catalogue, finder } from '../../finding/finding.ts';

export const catalogue = {
  'form-impossible': { severity: 'refusal', title: 'The numbers give no such form' },
  'sprocket-pointed': { severity: 'warning', title: 'The teeth of the sprocket end in a point below the tip circle' },
} satisfies Catalogue;

export const find = finder(catalogue);
