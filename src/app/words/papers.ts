/** What the chapter of the papers says. */
import type { PaperName } from '../../result/paper-names.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

const NAMES: Readonly<Record<PaperName, Text>> = phrases('page.paper', {
  'set-up-sheet': say`Set-up sheet`,
  'hole-table': say`Hole table`,
  'inspection-sheet': say`Inspection sheet`,
  quotation: say`Quotation`,
  annex: say`Annex of whys`,
});

export const paperWords = phrases('page.papers', {
  name: (name: PaperName) => NAMES[name],
  choose: say`Paper on screen`,
  working: say`Setting the paper…`,
  none: say`This paper needs a program, and there is none yet.`,
  download: (name: PaperName) => say`${{ paper: NAMES[name] }} as PDF`,
  program: say`Program`,
  setup: say`Set-up file`,
  making: say`The file is being made…`,
  gone: say`The server does not answer; try again once it is back.`,
  notSaved: say`The server does not have the newest inputs yet; the files would be of older ones. Try again once it is back.`,
});
