/** What the chapter of the papers says. */
import type { PaperName } from '../../result/paper-names.ts';

const NAMES: Readonly<Record<PaperName, string>> = {
  'set-up-sheet': 'Set-up sheet',
  'hole-table': 'Hole table',
  'inspection-sheet': 'Inspection sheet',
  quotation: 'Quotation',
  annex: 'Annex of whys',
};

export const paperWords = {
  name: (name: PaperName): string => NAMES[name],
  choose: 'Paper on screen',
  working: 'Setting the paper…',
  none: 'This paper needs a program, and there is none yet.',
  download: (name: PaperName): string => `${NAMES[name]} as PDF`,
  program: 'Program',
  setup: 'Set-up file',
  notSaved: 'The server does not have the newest inputs yet; the files would be of older ones. Try again once it is back.',
} as const;
