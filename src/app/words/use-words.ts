/** Who reads the page, and the words of the page for this reader. */
import { createContext, useContext } from 'react';
import { print } from '../../text/print/print.ts';
import { HOUSE, type Reader } from '../../text/reader.ts';
import type { Text } from '../../text/text.ts';
import { type Words, wordsFor } from './words-for.ts';

export const ReaderContext = createContext<Reader>(HOUSE);

export const useReader = (): Reader => useContext(ReaderContext);

/** Prints what is no entry of the table of words, as what a key of a file means. */
export const useSaid = (): ((text: Text) => string) => {
  const reader = useReader();
  return (text) => print(text, reader);
};

export const useWords = (): Words => wordsFor(useReader());
