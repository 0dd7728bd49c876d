/** A finding: something a user must know, with a code, a sentence as data and the place it concerns. */
import { keyed } from './body.ts';
import type { Text } from './text.ts';

/**
 * `refusal`: cannot be done, the answer is no. `doubt`: a question only the user can answer; an assumption was made and is
 * said. `warning`: works, but read this. `repair`: the input was changed, and how. `note`: good to know.
 */
export type Severity = 'refusal' | 'doubt' | 'warning' | 'repair' | 'note';

export type Place =
  /** A spot on the drawing in drawing units; `reach` is the radius of a circle worth drawing around it. */
  | {
      readonly kind: 'spot';
      readonly x: number;
      readonly y: number;
      readonly reach?: number | undefined;
      readonly loop?: string | undefined;
    }
  /** A line of a text file, counted from 1. */
  | { readonly kind: 'line'; readonly line: number; readonly column?: number; readonly text?: string | undefined }
  /** A byte of a binary file, counted from 0. */
  | { readonly kind: 'byte'; readonly offset: number }
  /** A value in a job, shop or dialect file, or an option: 'wire.diameter'. */
  | { readonly kind: 'field'; readonly path: string };

/** A value of a job, shop or dialect file, or an option. */
export const atField = (path: string): Place => ({ kind: 'field', path });

export interface Finding {
  /** One of the codes in the catalogue of the layer that found it; each has an entry in that layer's manual. */
  readonly code: string;
  readonly severity: Severity;
  /** What was found, in a full sentence with its numbers and units. */
  readonly text: Text;
  /** None only where the whole file or job is meant. */
  readonly place?: Place | undefined;
  /** What the tool did about it. */
  readonly done?: Text | undefined;
  /** The smallest change that would help. */
  readonly remedy?: Remedy | undefined;
  /** How many of its kind it stands for, where a long list was cut short; 1 when it is not given. */
  readonly stands?: number;
}

/**
 * A change that would help. `field` is the input it concerns, as in a job file, and `value` what to put there: page, command line and
 * letter each word it their own way; `text` is how it is said where nothing can be filled in.
 */
export interface Remedy {
  readonly text: Text;
  readonly field?: string | undefined;
  readonly value?: RemedyValue | undefined;
}

/** Of one field; names in a list, a place in the unit that the finding's own places are in. */
export type RemedyValue = string | number | boolean | readonly string[] | { readonly x: number; readonly y: number };

export const remedy = (text: Text, change: Pick<Remedy, 'field' | 'value'> = {}): Remedy => ({ text, ...change });

/** How grave each finding of a layer is, by its code; what it is called and means stands in the manual beside it. */
export type Catalogue = Readonly<Record<string, Severity>>;

/** What a finding may carry beside its sentence. */
interface More {
  readonly place?: Place | undefined;
  readonly done?: Text | undefined;
  readonly remedy?: Text | Remedy | undefined;
  readonly severity?: Severity | undefined;
}

/**
 * Makes the function with which a layer states its findings; the code must be in that layer's catalogue. A code whose findings are worded
 * in several ways names the way behind a slash, which is the key of that sentence for other languages: 'arc-incomplete/no-centre'.
 */
export const finder =
  <C extends Catalogue>(catalogue: C) =>
  (named: (keyof C & string) | `${keyof C & string}/${string}`, sentence: Text, more: More = {}): Finding => {
    const code = codeOf(named);
    const { severity = catalogue[code] as Severity, place, done, remedy: help } = more;
    return {
      code,
      severity,
      text: keyed(sentence, named),
      place,
      done: done === undefined ? undefined : keyed(done, `${named}.done`),
      remedy: help === undefined ? undefined : remedyOf(help, named),
    };
  };

/** The code of a finding or sentence key: what stands before the slash. */
export const codeOf = (key: string): string => key.split('/', 1)[0] as string;

const remedyOf = (given: Text | Remedy, key: string): Remedy => {
  const help = typeof given === 'object' && 'text' in given ? given : remedy(given);
  return { ...help, text: keyed(help.text, `${key}.remedy`) };
};
