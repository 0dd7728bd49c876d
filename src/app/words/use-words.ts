/** Who reads the page, and the words of the page for this reader. */
import { createContext, useContext } from 'react';
import { HOUSE, type Reader } from '../../text/reader.ts';
import { type Words, wordsFor } from './words-for.ts';

export const ReaderContext = createContext<Reader>(HOUSE);

export const useReader = (): Reader => useContext(ReaderContext);

export const useWords = (): Words => wordsFor(useReader());
