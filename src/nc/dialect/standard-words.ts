/**
 * The words that the standards have given a meaning, so that a dialect cannot give them another.
 * From the word lists of RS274NGC (nist-ir-6556) and ISO 6983-1 (from memory, see sources/iso-6983-1.md).
 */

import { term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

/** G words with a meaning in either standard, in tenths so that 59.1 is a whole number too. */
const gWords = new Set(
  [
    0, 1, 2, 3, 4, 9, 10, 17, 18, 19, 20, 21, 28, 30, 38.2, 40, 41, 42, 43, 49, 53, 54, 55, 56, 57, 58, 59, 59.1, 59.2, 59.3, 61, 61.1, 63,
    64, 70, 71, 74, 80, 81, 82, 83, 84, 85, 86, 87, 88, 89, 90, 91, 92, 92.1, 92.2, 92.3, 93, 94, 95, 96, 97, 98, 99,
  ].map((g) => Math.round(g * 10)),
);

/** M words that stop or end every program. What the standards use the others for (spindle, tool, coolant), a wire machine has not: builders give them away. */
const mWords = new Set([0, 1, 2, 30]);

/** Letters that carry coordinates, feed, offsets or block numbers and can therefore not be a word of their own. */
const takenLetters = new Set('DFIJKNORUVWXYZ');

const meanings = phrases('standard-word', {
  preparatory: (word: string) => say`${{ word: term(word) }} is a standard preparatory function`,
  machine: (word: string) => say`${{ word: term(word) }} is a standard machine function`,
  address: (letter: string) => say`${{ letter: term(letter) }} is a standard address of coordinates, offsets, feed or block numbers`,
});

/** The meaning a word would be robbed of, or `free`. */
export const standardMeaning = (letter: string, value: number): { kind: 'free' } | { kind: 'taken'; by: Text } => {
  if (letter === 'G' && gWords.has(Math.round(value * 10))) return { kind: 'taken', by: meanings.preparatory(`G${value}`) };
  if (letter === 'M' && mWords.has(value)) return { kind: 'taken', by: meanings.machine(`M${value}`) };
  if (takenLetters.has(letter)) return { kind: 'taken', by: meanings.address(letter) };
  return { kind: 'free' };
};
