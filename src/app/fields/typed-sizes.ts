/** Sizes with limits of their own, as they are typed and shown: 'bore: 24 mm ±0.01 mm; slot: 5 mm ±0.02 mm on one side'. */
import type { JobInput } from '../../job/job.ts';
import type { Numbers } from '../../text/print/reader.ts';
import type { Words } from '../words/words-for.ts';
import { readLength, readList, type Typed } from './typed.ts';

/** As the job file keeps it. */
export type AskedSize = NonNullable<JobInput['sizes']>[number];

/** A name, a length, what it may be off; a colon parts the name where the length is a number and a fraction. */
const SIZE = /^(?<name>[^:]*[^:\s])(?:\s*:\s*|\s+)(?<length>[\d.,][^±:]*?)\s*(?:±|\+\/-|\+-)\s*(?<tolerance>.*?\S)$/i;
/** As it is typed in English, whatever language the page is in. */
const ONE_SIDE = /\s+(?:on\s+)?one\s+side$/i;

export const readSizes = (text: string, numbers: Numbers, words: Words['typed']): Typed =>
  readList(text, (part) => readSize(part.trim(), numbers, words), words, /\s*;\s*/);

const readSize = (text: string, numbers: Numbers, words: Words['typed']): Typed => {
  const sides = text.endsWith(words.oneSide) ? text.slice(0, -words.oneSide.length) : text.replace(ONE_SIDE, '');
  const { name = '', length = '', tolerance = '' } = SIZE.exec(sides)?.groups ?? {};
  if (name === '') return { kind: 'wrong', reason: words.notSizes(text.slice(0, 40)) };
  const [long, off] = [readLength(length, numbers, words), readLength(tolerance, numbers, words)];
  if (long.kind !== 'value') return long;
  if (off.kind !== 'value') return off;
  const size: AskedSize = {
    name,
    length: long.value as number,
    tolerance: off.value as number,
    sides: sides === text ? undefined : 1,
  };
  return { kind: 'value', value: size, said: sizeText(size, numbers, words) };
};

export const sizeText = ({ name, length, tolerance, sides }: AskedSize, numbers: Numbers, words: Words['typed']): string =>
  `${name}: ${numbers.length(length)} ±${numbers.length(tolerance)}${sides === 1 ? words.oneSide : ''}`;
