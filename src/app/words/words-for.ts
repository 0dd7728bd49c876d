/** The words of the page as its reader has them: the table of all texts, each printed, and every maker of one printing what it makes. */
import { type Printed, print } from '../../text/print/print.ts';
import type { Reader } from '../../text/reader.ts';
import type { Text } from '../../text/text.ts';
import { isText } from '../../text/within.ts';
import { messages } from './messages.ts';

export type Spoken<T> = T extends Text
  ? Printed
  : T extends (...given: infer Given) => Text
    ? (...given: Given) => Printed
    : { readonly [Entry in keyof T]: Spoken<T[Entry]> };

export type Words = Spoken<typeof messages>;

/** Printed once for each reader. */
const printed = new WeakMap<Reader, Words>();

export const wordsFor = (reader: Reader): Words => {
  const known = printed.get(reader) ?? spoken(messages, reader);
  printed.set(reader, known);
  return known;
};

const spoken = <T>(table: T, reader: Reader): Spoken<T> => spokenEntry(table, reader) as Spoken<T>;

const spokenEntry = (entry: unknown, reader: Reader): unknown => {
  if (isText(entry)) return print(entry, reader);
  if (typeof entry === 'function') return (...given: readonly unknown[]) => print(entry(...given) as Text, reader);
  return Object.fromEntries(Object.entries(entry as object).map(([name, inner]) => [name, spokenEntry(inner, reader)]));
};
