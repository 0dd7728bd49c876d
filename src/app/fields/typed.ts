/** What a user typed into a field, read as the kind of value the field holds: a value, a choice of readings, or why it is none. */
import { parseFinish } from '../../quantity/finish.ts';
import { parseLength } from '../../quantity/typed-length.ts';
import { decimalMark } from '../../text/print/local.ts';
import type { Numbers } from '../../text/print/reader.ts';
import type { Words } from '../words/words-for.ts';

export interface Reading {
  readonly value: unknown;
  /** As a step of undo names it and a choice shows it. */
  readonly said: string;
}

export type Typed =
  | ({ readonly kind: 'value' } & Reading)
  | { readonly kind: 'choices'; readonly readings: readonly Reading[] }
  | { readonly kind: 'wrong'; readonly reason: string };

const value = (v: unknown, said: string): Typed => ({ kind: 'value', value: v, said });
const wrong = (reason: string): Typed => ({ kind: 'wrong', reason });

/** Reads '.010 in', '10 thou', '1/4 in', '0,25'; a number alone is in the user's unit. Gives mm. */
export const readLength = (text: string, numbers: Numbers, words: Words['typed']): Typed => {
  const answer = parseLength(withoutRa(text), numbers.lengthUnit);
  if (answer.kind === 'not a length') return wrong(words.notALength(answer.reason));
  if (answer.kind === 'length') {
    const other = otherReading(text, numbers);
    if (other === undefined) return value(rounded(answer.mm), numbers.length(answer.mm));
    return choices([answer.mm, other], numbers);
  }
  // Where decimals are written with a comma, 1,250 has one reading only.
  const marked = decimalMark(numbers.locale) === ',' && answer.readings.length === 2 && /\d,\d/.test(text);
  const first = answer.readings[0];
  if (marked && first !== undefined) return value(rounded(first.mm), numbers.length(first.mm));
  return choices(
    answer.readings.map((r) => r.mm),
    numbers,
  );
};

const choices = (all: readonly number[], numbers: Numbers): Typed => ({
  kind: 'choices',
  readings: all.map((mm) => ({ value: rounded(mm), said: numbers.length(mm) })),
});

/** '±' in front of a tolerance is no sign of the number. */
const withoutRa = (text: string): string => text.replace(/^\s*(±|\+\/-|\+-)\s*/, '');

/** Where decimals are written with a comma, the point of 1.250 may group thousands. */
const otherReading = (text: string, numbers: Numbers): number | undefined => {
  if (decimalMark(numbers.locale) !== ',' || !/^\D*[1-9]\d{0,2}\.\d{3}(?!\d)/.test(text)) return undefined;
  const answer = parseLength(withoutRa(text).replace('.', ''), numbers.lengthUnit);
  return answer.kind === 'length' ? answer.mm : undefined;
};

/** A ten thousandth of a micrometre is nothing: 0.01 in is 0.254 mm and not 0.25399999999999995. */
const rounded = (mm: number): number => Number(mm.toFixed(7));

/** Reads 'Ra 0.8', '32 µin', 'N6', 'VDI 24', 'Rz 6.3'; a number alone is in the user's unit. Gives Ra in µm. */
export const readFinish = (text: string, numbers: Numbers, words: Words['typed']): Typed => {
  const bare = /^\s*(ra\s*)?[\d.,]+\s*$/i.test(text);
  const answer = parseFinish(bare && numbers.finishUnit === 'µin' ? `${text.trim()} µin` : text);
  if (answer.kind === 'not a finish') return wrong(words.notAFinish(answer.reason));
  if (answer.kind === 'finish') return value(Number(answer.ra.toPrecision(6)), numbers.finish(answer.ra));
  return {
    kind: 'choices',
    readings: [answer.raSafe, answer.raMight].map((ra, i) => ({
      value: Number(ra.toPrecision(6)),
      said: i === 0 ? words.rzSafe(numbers.finish(ra)) : words.rzMight(numbers.finish(ra)),
    })),
  };
};

/** Reads a bare number with a decimal point or comma. */
export const readNumber = (text: string, numbers: Numbers, words: Words['typed']): Typed => {
  const plain = text
    .trim()
    .replace(/[\s\u00a0\u202f]/g, '')
    .replace('−', '-');
  if (!/^-?(\d+([.,]\d*)?|[.,]\d+)$/.test(plain)) return wrong(words.notANumber(text.trim().slice(0, 40)));
  const read = Number(plain.replace(',', '.'));
  return value(read, numbers.plain(read));
};

/** Reads a whole number, with its thousands grouped or not. */
export const readCount = (text: string, numbers: Numbers, words: Words['typed']): Typed => {
  const plain = text.trim().replace(/(?<=\d)[\s\u00a0\u202f.,'’](?=\d{3}(?!\d))/g, '');
  if (!/^\d{1,9}$/.test(plain)) return wrong(words.notWhole(text.trim().slice(0, 40)));
  return value(Number(plain), numbers.plain(Number(plain)));
};

/** A list apart by semicolons, or commas and a space, since a comma alone may be a decimal mark; each entry is read by `read`. */
export const readList = (text: string, read: (part: string) => Typed, words: Words['typed'], apart = /\s*;\s*|,\s+|\s{2,}/): Typed => {
  const values: Reading[] = [];
  for (const part of text.split(apart).filter((p) => p.trim() !== '')) {
    const one = read(part);
    if (one.kind === 'choices') return wrong(words.ambiguousInList(part));
    if (one.kind === 'wrong') return one;
    values.push(one);
  }
  return value(
    values.map((v) => v.value),
    values.map((v) => v.said).join('; '),
  );
};
