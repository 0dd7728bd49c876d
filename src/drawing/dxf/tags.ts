/** What both kinds of DXF file are made of: pairs of a group code and a value, read one after the other. */

export interface Damage {
  /** The line (from 1), or the byte (from 0) of a binary file. */
  readonly place: number;
  /** What stood there instead of a group code. */
  readonly text: string;
}

/**
 * A cursor over the pairs of a file. `next` steps to the following pair and is false at the end of the bytes; comments are
 * passed over. It always consumes something, so a loop over it ends.
 */
export interface Tags {
  readonly binary: boolean;
  /** Group code of the pair under the cursor. */
  readonly code: number;
  /** Line of its group code, or its byte in a binary file. */
  readonly place: number;
  next(): boolean;
  /** The value as a number; NaN when it is not written as one. */
  number(): number;
  /** The value as text without blanks at either end. */
  text(): string;
  /** Every place where no group code could be read; reading went on at the next entity, and what lay between is lost. */
  readonly damages: readonly Damage[];
}

/** Group codes of the standard, with the few negative ones that programs use among themselves. */
export const isGroupCode = (code: number): boolean => code >= -5 && code <= 1071;
