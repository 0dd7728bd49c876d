/** What the chapter of the papers says. */
import type { PaperName } from '../../result/paper-names.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

const NAMES: Readonly<Record<PaperName, Text>> = phrases('page.paper', {
  'set-up-sheet': say`Set-up sheet`,
  'hole-table': say`Hole table`,
  'inspection-sheet': say`Inspection sheet`,
  quotation: say`Quotation`,
  annex: say`Calculation sheet`,
});

export const paperWords = phrases('page.papers', {
  name: (name: PaperName) => NAMES[name],
  choose: say`Paper shown`,
  working: say`Preparing the paper…`,
  none: say`This paper needs a program; there is none yet.`,
  download: (name: PaperName) => say`${{ paper: NAMES[name] }} as PDF`,
  program: say`Program`,
  setup: say`Set-up file`,
  making: say`The file is being made…`,
  gone: say`The server does not answer; try again when it is back.`,
  notSaved: say`The server does not have your latest inputs yet, so the files would be out of date. Try again when it is back.`,
});
