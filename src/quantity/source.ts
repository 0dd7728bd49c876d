/** Who says a number. */
import { name, term } from '../text/part.ts';
import { only, phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';

/** A file in sources/ by its name without ending. */
export interface Citation {
  readonly file: string;
}

/** What is cited, or whoever gave the number. */
export type Source = Citation | Text;

export const saidBy = phrases('said-by', {
  drawing: say`the drawing`,
  request: say`the requirements`,
  plan: say`the plan`,
  stack: say`the stack`,
  program: say`the program`,
  programRead: say`the program as read back`,
  shopLog: say`the shop log`,
  jobOrShop: say`the job or the shop file`,
  measurer: say`the measurement`,
  passLadder: say`the pass planner`,
  passTable: say`the shop's pass table`,
  job: say`the job`,
  shopFile: say`the shop file`,
});

/** Files in sources/ that are of the house: they have no name of their own, so that each language has its words for them. */
const ofTheHouse: Readonly<Record<string, Text>> = phrases('said-by-file', {
  definition: say`definition`,
  'starting-model': say`starting model`,
  'common-practice': say`common practice`,
});

/** Who says it, in words: the file that is cited, or whoever gave the number. */
export const sourceText = (source: Source): Text => ('file' in source ? (ofTheHouse[source.file] ?? only(term(source.file))) : source);

/** A wire, a machine: what the shop says of the thing that bears this name. */
export const saidOf = (given: string): Text => only(name(given));
