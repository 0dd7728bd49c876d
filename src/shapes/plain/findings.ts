/** What making plain shapes has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'shape-without-room': 'refusal',
} satisfies Catalogue;

export const find = finder(catalogue);
