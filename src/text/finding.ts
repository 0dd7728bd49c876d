/** A finding: something a user must know, with a code, a plain sentence and the place it concerns. */

/**
 * `refusal`: cannot be done, the answer is no. `doubt`: a question only the user can answer; an assumption was made and is
 * said. `warning`: works, but read this. `repair`: the input was changed, and how. `note`: good to know.
 */
export type Severity = 'refusal' | 'doubt' | 'warning' | 'repair' | 'note';

export type Place =
  /** A spot on the drawing in drawing units; `reach` is the radius of a circle worth drawing around it. */
  | { readonly kind: 'spot'; readonly x: number; readonly y: number; readonly reach?: number; readonly loop?: string }
  /** A line of a text file, counted from 1. */
  | { readonly kind: 'line'; readonly line: number; readonly column?: number; readonly text?: string }
  /** A byte of a binary file, counted from 0. */
  | { readonly kind: 'byte'; readonly offset: number }
  /** A value in a job, shop or dialect file, or an option: 'wire.diameter'. */
  | { readonly kind: 'field'; readonly path: string };

export interface Finding {
  /** One of the codes in the catalogue of the layer that found it; each has an entry in that layer's manual. */
  readonly code: string;
  readonly severity: Severity;
  /** What was found, in a full sentence with its numbers and units. */
  readonly sentence: string;
  /** None only where the whole file or job is meant. */
  readonly place?: Place;
  /** What the tool did about it. */
  readonly done?: string;
  /** The smallest change that would help. */
  readonly remedy?: string;
  /** How many of its kind it stands for, where a long list was cut short; 1 when it is not given. */
  readonly stands?: number;
}

/** One entry of a layer's catalogue of findings; what it is called and means stands in the manual beside it. */
export interface FindingKind {
  readonly severity: Severity;
}

export type Catalogue = Readonly<Record<string, FindingKind>>;

/** Makes the function with which a layer states its findings; the code must be in that layer's catalogue. */
export const finder =
  <C extends Catalogue>(catalogue: C) =>
  (code: keyof C & string, sentence: string, more: Partial<Pick<Finding, 'place' | 'done' | 'remedy' | 'severity'>> = {}): Finding => ({
    code,
    severity: (catalogue[code] as FindingKind).severity,
    sentence,
    ...more,
  });
