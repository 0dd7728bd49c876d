/** What physics has to say to a user before any number is given. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'material-unknown': { severity: 'refusal', title: 'The material is not in the list' },
  'material-not-conducting': { severity: 'refusal', title: 'The material does not conduct well enough to be spark cut' },
  'material-index-estimated': { severity: 'warning', title: 'The cutting rate was estimated from material constants' },
  'wire-out-of-range': { severity: 'refusal', title: 'No wire of this diameter is made' },
  'wire-not-for-machine': { severity: 'refusal', title: 'The machine cannot thread this wire' },
  'height-out-of-range': { severity: 'refusal', title: 'The work is too tall for the machine, or has no height' },
  'pass-table-inconsistent': { severity: 'refusal', title: 'A pass table of the shop cannot be run as entered' },
  'another-process-would-do': { severity: 'note', title: 'Another process holds what is asked, and quicker' },
  'height-hardly-known': { severity: 'warning', title: 'The cutting rate at this height is hardly known' },
} satisfies Catalogue;

export const find = finder(catalogue);
