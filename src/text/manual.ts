/** What each finding is called and what the manual says of it: plain strings by code, so that the catalogue of another language can take their place. */
import type { Catalogue } from './finding.ts';

/** How grave it is stands in the catalogue beside it. Names and values that are typed as they stand are set between backticks. */
export interface ManualEntry {
  /** What it is called, in one line. */
  readonly title: string;
  /** What was found, and what was done with it. */
  readonly meaning: string;
  /** Why it matters in the shop; left out where the meaning leaves no question. */
  readonly matters?: string;
  /** What to do. */
  readonly remedy: string;
}

/** The manual of a layer: an entry for each code of its catalogue, and for no other. */
export type Manual<C extends Catalogue> = Readonly<Record<keyof C & string, ManualEntry>>;

/** The findings of one folder, and what the manual says of each. */
export interface ManualChapter {
  /** Below src/. */
  readonly folder: string;
  readonly catalogue: Catalogue;
  readonly manual: Readonly<Record<string, ManualEntry>>;
}

/** Ties a manual to the catalogue whose codes it explains. */
export const chapter = <C extends Catalogue>(folder: string, catalogue: C, manual: Manual<C>): ManualChapter => ({
  folder,
  catalogue,
  manual,
});

/** A stretch of manual text, and whether it is typed as it stands. */
export interface ManualStretch {
  /** Which of the stretches it is. */
  readonly number: number;
  readonly words: string;
  readonly typed: boolean;
}

export const stretchesOf = (text: string): readonly ManualStretch[] =>
  text
    .split('`')
    .map((words, i) => ({ number: i, words, typed: i % 2 === 1 }))
    .filter(({ words }) => words !== '');
