/** What dimensions say a length is, beside how long it is drawn. */

import type { Point } from '../geometry/segment.ts';
import { plainText } from './unit-signs.ts';

export interface DrawnDimension {
  /** In drawing units. */
  readonly drawn: number;
  /** As it is printed, or as the file has it measured. */
  readonly said: string;
  readonly at: Point;
}

/** The numbers of a text with what stands for their unit; none in one that gives no length: angles, threads, words. */
export interface SaidLength {
  readonly values: readonly number[];
  readonly unit: 'mm' | 'inch' | undefined;
  /** Half of the last digit. */
  readonly rounding: number;
}

export const lengthSaid = (text: string): SaidLength | undefined => {
  const plain = plainText(text)
    .replace(/[[(].*?[\])]/g, ' ')
    .replace(/^\s*\d+\s*[x×]\s*/i, '');
  if (/°|\bdeg|%%d/i.test(text) || /^\s*M\s?\d/.test(plain) || plain.includes('<>')) return undefined;
  const unit = /\d\s*(?:mm)\b/i.test(plain) ? 'mm' : /\d\s*(?:["″”]|in\b|inch)/i.test(plain) ? 'inch' : undefined;
  const fraction = /(?:(\d+)[ -])?(\d+)\/(\d+)/.exec(plain);
  if (fraction !== null) {
    const [, whole = '0', over = '0', under = '1'] = fraction;
    return { values: [Number(whole) + Number(over) / Number(under)], unit, rounding: 1 / 256 };
  }
  // Deviations and fits stand behind a sign or a letter.
  const found = [...plain.matchAll(/(?<![\d.,±+\-A-Za-z])(?:R|Ø|⌀|DIA\.?)?\s*(\d+(?:[.,]\d+)?|[.,]\d+)/gi)].map(
    ([, digits = '']) => digits,
  );
  const [first] = found;
  if (first === undefined) return undefined;
  const decimals = first.split(/[.,]/)[1]?.length ?? 0;
  const values = found.map((digits) => Number(digits.replace(',', '.'))).filter((value) => value > 0);
  return values.length === 0 ? undefined : { values, unit, rounding: 0.5 * 10 ** -decimals };
};
