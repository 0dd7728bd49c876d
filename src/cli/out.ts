/** Where a command prints, and which day it is: given by main, so that tests can give their own. */
export interface Out {
  readonly print: (text: string) => void;
  readonly stderr: NodeJS.WriteStream;
  /** ISO 8601 */
  readonly today: string;
}
