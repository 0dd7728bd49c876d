/** Where a command prints and tells how far it is, and which day it is: given by main, so that tests can give their own. */
import { name } from '../text/part.ts';
import { printPlain } from '../text/print/print.ts';
import { phrases, say } from '../text/say.ts';
import type { Progress } from './progress.ts';

export interface Out {
  readonly print: (text: string) => void;
  readonly progress: Progress;
  /** ISO 8601 */
  readonly today: string;
}

/** What is told while a command runs. */
export const stages = phrases('command-stage', {
  reading: (file: string) => say`reading ${{ file: name(file) }}`,
  proving: say`proving the program`,
  papers: say`setting the papers`,
  changes: say`running the job under each change`,
  finish: say`following the price over the finish`,
});

/** The paths of what was written, under their heading; nothing where nothing was. */
export const writtenLines = (written: readonly string[]): readonly string[] =>
  written.length === 0 ? [] : [`${printPlain(words.written)}\n${written.map((path) => `  ${path}`).join('\n')}`];

const words = phrases('command-out', { written: say`Written` });
