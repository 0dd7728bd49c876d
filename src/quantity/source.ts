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
  builtIn: say`built in, not set`,
  inventedRates: say`invented rates, not set`,
});

/** Files in sources/ that are of the house: they have no name of their own, so that each language has its words for them. */
const ofTheHouse: Readonly<Record<string, Text>> = phrases('said-by-file', {
  definition: say`definition`,
  'starting-model': say`starting model`,
  'common-practice': say`common practice`,
});

/** Who says it, in words: the file that is cited, or whoever gave the number. */
export const sourceText = (source: Source): Text => ('file' in source ? (ofTheHouse[source.file] ?? only(term(source.file))) : source);

/** Files in sources/ of which no text was seen: what they say is remembered, and nobody may call it published. */
const REMEMBERED: readonly string[] = [
  'base-tangent-tables',
  'din-513',
  'din-5481',
  'gear-textbooks',
  'iso-1',
  'iso-606',
  'iso-6983-1',
  'magnitude-envelope',
  'material-handbooks',
  'measuring-pins',
  'nurbs-book',
  'opentype-format',
  'plane-curves',
  'starting-model',
  'svg-2',
  'zeng-kim',
];

export const basisOf = (source: Source): 'published' | 'assumed' =>
  'file' in source && REMEMBERED.includes(source.file) ? 'assumed' : 'published';

/** A wire, a machine: what the shop says of the thing that bears this name. */
export const saidOf = (given: string): Text => only(name(given));

/** The same of a thing that came with this house and that no shop has set. */
export const saidOfBuiltIn = (given: string): Text => say('said-by.built-in-thing')`${{ thing: name(given) }}, built in`;
