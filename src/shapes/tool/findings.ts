/** What making form tools has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'form-tool-incomplete': 'refusal',
  'form-tool-impossible': 'refusal',
  'form-tool-front-clearance': 'note',
  'form-tool-side-rubs': 'warning',
  'form-tool-rake-skews': 'warning',
  'form-tool-nose-round': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
