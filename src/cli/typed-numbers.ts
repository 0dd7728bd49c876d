/** Lengths and numbers as they are typed after an option. */
import { parseLength, readingsPart, type TypedReading } from '../quantity/typed-length.ts';
import { name } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { badInput } from './files.ts';

const words = phrases('typed-number', {
  readings: (text: string, readings: readonly TypedReading[]) =>
    say`'${{ typed: name(text) }}' can be read as ${{ readings: readingsPart(readings) }}: specify which.`,
  noLength: (text: string, reason: Text) =>
    say`'${{ typed: name(text) }}' is not a length (${{ reason }}): write it like 0.25, 0.25 mm, .010 in or 10 thou.`,
  noNumber: (text: string) => say`'${{ typed: name(text) }}' is not a number.`,
});

export const millimetres = (key: string, text: string): number => {
  const answer = parseLength(text);
  if (answer.kind === 'length') return answer.mm;
  if (answer.kind === 'ambiguous') throw badInput(words.readings(text, answer.readings), key);
  throw badInput(words.noLength(text, answer.reason), key);
};

export const numberOf = (key: string, text: string): number => {
  const value = Number(text.trim().replace(',', '.'));
  if (text.trim() === '' || !Number.isFinite(value)) throw badInput(words.noNumber(text), key);
  return value;
};
