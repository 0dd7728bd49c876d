/** Where a command prints and tells how far it is, and which day it is: given by main, so that tests can give their own. */
import type { Progress } from './progress.ts';

export interface Out {
  readonly print: (text: string) => void;
  readonly progress: Progress;
  /** ISO 8601 */
  readonly today: string;
}
