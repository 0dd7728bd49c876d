/** The words of a dialect, made ready for looking them up in a block: exact letters and numbers, longest first. */
import type { Dialect, WordName } from '../dialect/dialect.ts';
import type { Word } from './line.ts';

export type Meaning = Exclude<WordName, 'condition'>;

interface Spelling {
  readonly meaning: Meaning;
  readonly parts: readonly { readonly letter: string; readonly value: number }[];
}

export interface DialectWords {
  /** By the first letter of the word. */
  readonly spellings: ReadonlyMap<string, readonly Spelling[]>;
  /** Letter that chooses the condition, or none. */
  readonly condition?: string | undefined;
  /** What has no word, so that a stop with a comment stands in for it. */
  readonly conditionByComment: boolean;
}

export const dialectWords = (dialect: Dialect): DialectWords => {
  const spellings = new Map<string, Spelling[]>();
  for (const [meaning, text] of Object.entries(dialect.words)) {
    if (meaning === 'condition' || text === undefined) continue;
    const parts = text.split(' ').map((part) => ({ letter: part[0] as string, value: Number(part.slice(1)) }));
    const letter = (parts[0] as { letter: string }).letter;
    spellings.set(letter, [...(spellings.get(letter) ?? []), { meaning: meaning as Meaning, parts }]);
  }
  for (const list of spellings.values()) list.sort((a, b) => b.parts.length - a.parts.length);
  const condition = dialect.words.condition?.[0];
  return { spellings, condition, conditionByComment: condition === undefined };
};

/** The word of the dialect that begins at `index` of a block, with the number of parts it takes up. */
export const spelledAt = (
  words: DialectWords,
  block: readonly Word[],
  index: number,
): { readonly kind: 'spelled'; readonly meaning: Meaning; readonly parts: number } | { readonly kind: 'not a word of the dialect' } => {
  for (const spelling of words.spellings.get((block[index] as Word).letter) ?? []) {
    const fits = spelling.parts.every((part, k) => block[index + k]?.letter === part.letter && block[index + k]?.value === part.value);
    if (fits) return { kind: 'spelled', meaning: spelling.meaning, parts: spelling.parts.length };
  }
  return { kind: 'not a word of the dialect' };
};
