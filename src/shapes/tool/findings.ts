/** What making form tools has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'form-tool-incomplete': { severity: 'refusal', title: 'The form tool needs another number' },
  'form-tool-impossible': { severity: 'refusal', title: 'The numbers give no such tool' },
  'form-tool-front-clearance': { severity: 'note', title: 'Straight walls give a tool no front clearance of their own' },
  'form-tool-side-rubs': { severity: 'warning', title: 'A side of the point has hardly any clearance' },
  'form-tool-rake-skews': { severity: 'warning', title: 'With rake the thread comes out a little skew' },
  'form-tool-nose-round': { severity: 'warning', title: 'The nose is rounder than the thread allows' },
} satisfies Catalogue;

export const find = finder(catalogue);
