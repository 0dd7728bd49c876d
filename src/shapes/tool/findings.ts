/** What making form tools has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'form-tool-incomplete': { severity: 'refusal' },
  'form-tool-impossible': { severity: 'refusal' },
  'form-tool-front-clearance': { severity: 'note' },
  'form-tool-side-rubs': { severity: 'warning' },
  'form-tool-rake-skews': { severity: 'warning' },
  'form-tool-nose-round': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
