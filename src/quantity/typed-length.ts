/** Lengths as people type them; millimetres inside the house. */
import { count, list, name, type Part } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';

export type LengthUnit = 'mm' | 'inch' | 'thou' | 'µm' | 'cm' | 'm' | 'foot';

/** One way to read it, in mm, and as it would be typed so that no other is left: '1.25 mm'. */
export interface TypedReading {
  readonly mm: number;
  readonly words: string;
}

export type LengthAnswer =
  | { readonly kind: 'length'; readonly mm: number; readonly unit: LengthUnit; readonly unitTyped: boolean }
  /** It can be read in more than one way and nobody should guess: each reading in mm, in words. */
  | { readonly kind: 'ambiguous'; readonly text: string; readonly readings: readonly TypedReading[] }
  | { readonly kind: 'not a length'; readonly text: string; readonly reason: Text };

/** mm in one unit; all exact by definition. */
export const millimetresIn: Readonly<Record<LengthUnit, number>> = {
  mm: 1,
  inch: 25.4,
  thou: 0.0254,
  µm: 0.001,
  cm: 10,
  m: 1000,
  foot: 304.8,
};

/**
 * Reads '0.25', '0,25 mm', '.010 in', '10 thou', '1/4 in', '1 1/2"', '250 µm'. A number without a unit is in `unit`.
 * Not read, but named: '1,250' (decimal comma or thousands?), '5 mil' (thousandths of an inch or millimetres?).
 */
export const parseLength = (text: string, unit: LengthUnit = 'mm'): LengthAnswer => {
  const trimmed = text.trim();
  if (trimmed.length > longest) return { kind: 'not a length', text: `${trimmed.slice(0, 20)}…`, reason: words.tooLong };
  const { number, word } = split(trimmed);
  if (number === '') return { kind: 'not a length', text, reason: words.noNumber };
  const units = word === '' ? [unit] : unitsByWord.get(word.toLowerCase());
  if (units === undefined) return { kind: 'not a length', text, reason: words.noUnit(word) };
  const values = readNumber(number);
  if (values.length === 0) return { kind: 'not a length', text, reason: words.notANumber(number) };
  if (values.some((v) => !Number.isFinite(v) || Math.abs(v) > 1e9)) return { kind: 'not a length', text, reason: words.tooLarge };
  const [[only, otherUnit], [value, otherValue]] = [units, values];
  if (only !== undefined && value !== undefined && otherUnit === undefined && otherValue === undefined)
    return { kind: 'length', mm: value * millimetresIn[only], unit: only, unitTyped: word !== '' };
  return {
    kind: 'ambiguous',
    text,
    readings: units.flatMap((u) => values.map((v) => ({ mm: v * millimetresIn[u], words: `${v} ${printedUnit[u]}` }))),
  };
};

/** '1.25 mm or as 1250 mm' */
export const readingsPart = ([first, ...more]: readonly TypedReading[]): Part =>
  list([...(first === undefined ? [] : [name(first.words)]), ...more.map((r) => words.as(r.words))], 'or');

const longest = 40;

const words = phrases('typed-length', {
  as: (reading: string) => say`as ${{ reading: name(reading) }}`,
  tooLong: say`it is longer than ${{ most: count(longest) }} characters`,
  noNumber: say`there is no number in it`,
  noUnit: (unit: string) => say`'${{ unit: name(unit) }}' is not a unit of length`,
  notANumber: (typed: string) => say`'${{ typed: name(typed) }}' is not a number`,
  tooLarge: say`the number is too large`,
});

const unitsByWord: ReadonlyMap<string, readonly LengthUnit[]> = new Map<string, readonly LengthUnit[]>([
  ['mm', ['mm']],
  ['millimetre', ['mm']],
  ['millimetres', ['mm']],
  ['millimeter', ['mm']],
  ['millimeters', ['mm']],
  ['in', ['inch']],
  ['in.', ['inch']],
  ['inch', ['inch']],
  ['inches', ['inch']],
  ['"', ['inch']],
  ['″', ['inch']],
  ['”', ['inch']],
  ['thou', ['thou']],
  ['mil', ['thou', 'mm']],
  ['mils', ['thou', 'mm']],
  ['µm', ['µm']],
  ['μm', ['µm']],
  ['um', ['µm']],
  ['micron', ['µm']],
  ['microns', ['µm']],
  ['cm', ['cm']],
  ['m', ['m']],
  ['ft', ['foot']],
  ['foot', ['foot']],
  ['feet', ['foot']],
]);

/** Number in front, unit word behind, with or without space. */
const split = (text: string): { readonly number: string; readonly word: string } => {
  const number = /^[+\-−]?[\d.,/\s\u00a0\u202f½¼¾⅛⅜⅝⅞]*(?:(?<=\d)[eE][+-]?\d+)?/.exec(text)?.[0] ?? '';
  return { number: /[\d½¼¾⅛⅜⅝⅞]/.test(number) ? number.trim() : '', word: text.slice(number.length).trim() };
};

const fractions: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8' };

/** All values that the digits may mean: one, two when a comma may be either thing, none when it is no number. */
const readNumber = (text: string): readonly number[] => {
  const sign = /^[-−]/.test(text) ? -1 : 1;
  const body = text
    .replace(/^[+\-−]\s*/, '')
    .replace(/[½¼¾⅛⅜⅝⅞]/, (f) => ` ${fractions[f]}`)
    .trim();
  const values = body.includes('/') ? readFraction(body) : readDecimal(body);
  return values.map((v) => (v === 0 ? 0 : sign * v));
};

/** '1/4' or '1 1/4'. */
const readFraction = (text: string): readonly number[] => {
  const parts = /^(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+)$/.exec(text);
  if (parts === null || Number(parts[3]) === 0) return [];
  return [Number(parts[1] ?? 0) + Number(parts[2]) / Number(parts[3])];
};

const readDecimal = (text: string): readonly number[] => {
  if (/^(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(text)) return [Number(text)];
  // Both marks: the last one is the decimal mark, the others group by three.
  if (/^\d{1,3}(,\d{3})+\.\d+$/.test(text)) return [Number(text.replaceAll(',', ''))];
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(text)) return [Number(text.replaceAll('.', '').replace(',', '.'))];
  if (/^\d{1,3}([ \u00a0\u202f]\d{3})+([.,]\d+)?$/.test(text)) return [Number(text.replace(/[ \u00a0\u202f]/g, '').replace(',', '.'))];
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) return [Number(text.replace(',', '.')), Number(text.replace(',', ''))];
  if (/^[1-9]\d{0,2}(,\d{3}){2,}$/.test(text)) return [Number(text.replaceAll(',', ''))];
  return /^\d*,\d+$/.test(text) ? [Number(text.replace(',', '.'))] : [];
};

const printedUnit: Readonly<Record<LengthUnit, string>> = { mm: 'mm', inch: 'in', thou: 'thou', µm: 'µm', cm: 'cm', m: 'm', foot: 'ft' };
