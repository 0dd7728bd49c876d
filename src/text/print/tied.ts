/** Printed texts that will be broken into lines: a number stays on one line with its unit. */
import type { Reader } from '../reader.ts';
import type { Text } from '../text.ts';
import { joined, type Printed, type PrintedPart, printedParts } from './print.ts';

/** What somebody wrote, and what is no number, is broken as it likes. */
const NUMBERS: ReadonlySet<PrintedPart['of']> = new Set(['quantity', 'money', 'mass', 'duration']);

/** Between a digit and the letter or sign of a unit, and in 5 h 50 min. */
const BEFORE_UNIT = /(?<=\d) (?=[\p{L}%°])|(?<=\d h) (?=\d)/gu;

/** @param tie stands for the blank before a unit: one that no line is broken at. */
export const printTied = (text: Text, reader: Reader, tie: string): Printed =>
  joined(
    printedParts(text, reader).map(({ text: words, of }) =>
      NUMBERS.has(of) ? ((words as string).replace(BEFORE_UNIT, tie) as Printed) : words,
    ),
  );
