/** One number or several with their unit for a reader: the digits that it was worked out with, carried into his unit and marks. */
import { firstItem } from '../../sequence/sequence.ts';
import type { Amount, Digits, Part } from '../part.ts';
import type { Reader } from '../reader.ts';
import type { Unit } from '../unit.ts';
import { printNumber } from './figure.ts';

type Marks = Pick<Reader, 'decimalMark' | 'groupMark'>;

/** The digits of a value as the house writes them, with a point and without groups: '0.25', '-3', '1.2e-9'. */
export const digitsOf = (value: number, digits: Digits): string => {
  if (!Number.isFinite(value)) return String(value);
  if ('as' in digits) return withoutMinusZero(String(value));
  if ('deviation' in digits) return printNumber(value, digits.deviation);
  if ('significant' in digits) return withoutMinusZero(String(Number(value.toPrecision(digits.significant))));
  if ('fixed' in digits) return withoutMinusZero(value.toFixed(digits.fixed));
  const text = value.toFixed(digits.upTo);
  return withoutMinusZero(text.includes('.') ? text.replace(/\.?0+$/, '') : text);
};

const withoutMinusZero = (text: string): string => (/^-0(\.0*)?$/.test(text) ? text.slice(1) : text);

/** A written number in the reader's marks, thousands apart where they were asked for. */
export const marked = (written: string, { decimalMark, groupMark }: Marks, grouped = false): string => {
  if (written.includes('e')) return written.replace('.', decimalMark);
  const [, sign = '', whole = '', rest] = /^(-?)(\d+)(?:\.(\d+))?$/.exec(written) ?? [];
  if (whole === '') return written;
  const led = grouped ? whole.replace(/\B(?=(\d{3})+$)/g, groupMark) : whole;
  return `${sign}${led}${rest === undefined ? '' : `${decimalMark}${rest}`}`;
};

export const amountText = ({ value, digits, grouped }: Amount, marks: Marks): string => marked(digitsOf(value, digits), marks, grouped);

interface Scale {
  readonly factor: number;
  readonly name: string;
}

const INCH: Readonly<Partial<Record<Unit, Scale>>> = {
  mm: { factor: 1 / 25.4, name: 'in' },
  'mm/min': { factor: 1 / 25.4, name: 'in/min' },
  'mm²': { factor: 1 / 25.4 ** 2, name: 'in²' },
  'mm²/min': { factor: 1 / 25.4 ** 2, name: 'in²/min' },
  'mm³': { factor: 1 / 25.4 ** 3, name: 'in³' },
  'mm³/min': { factor: 1 / 25.4 ** 3, name: 'in³/min' },
  'mm³/s': { factor: 1 / 25.4 ** 3, name: 'in³/s' },
  m: { factor: 1 / 0.3048, name: 'ft' },
  'm/min': { factor: 1 / 0.3048, name: 'ft/min' },
};
const MICROINCH: Scale = { factor: 1 / 0.0254, name: 'µin' };

/** How a unit is counted for this reader; undefined where it stays as it is. */
export const scaleOf = (unit: Unit, { length, finish }: Pick<Reader, 'length' | 'finish'>): Scale | undefined => {
  if (unit === 'µm') return finish === 'µin' ? MICROINCH : undefined;
  return length === 'inch' ? INCH[unit] : undefined;
};

type Quantity = Extract<Part, { kind: 'quantity' }>;

/** The numbers of a quantity, each in the reader's unit, and the name of that unit ('' for a bare number). */
export const quantityNumbers = (part: Quantity, reader: Reader): { readonly numbers: readonly string[]; readonly unit: string } => {
  const scale = scaleOf(part.unit, reader);
  const named = part.unit === '1' ? '' : part.unit;
  if (scale === undefined) return { numbers: part.amounts.map((a) => amountText(a, reader)), unit: named };
  return { numbers: scaledAlike(part, scale, reader), unit: scale.name };
};

/** A number and how sure it is have their last digit at the same place, the second that counts of how sure. */
const scaledAlike = ({ amounts, joint, limit }: Quantity, { factor }: Scale, marks: Marks): readonly string[] => {
  const sure = joint === '±' ? amounts.at(-1) : undefined;
  if (sure === undefined || sure.value === 0) return amounts.map((a) => scaled(a, factor, marks, limit === true));
  const counting = countingDigits(digitsOf(sure.value, sure.digits));
  const alike = decimalsFor(Math.abs(sure.value * factor), Math.max(2, counting));
  return amounts.map((a) => marked((a.value * factor).toFixed(alike), marks, a.grouped));
};

/**
 * As many digits that count as were shown, at least three: nothing gets surer by being shown in another unit.
 * A limit is rounded up, so that nothing is promised that does not hold.
 */
const scaled = (amount: Amount, factor: number, marks: Marks, limit: boolean): string => {
  const shown = digitsOf(amount.value, amount.digits);
  const size = Math.abs(Number(shown)) * factor;
  if (size === 0) return marked('0', marks);
  const decimals = decimalsFor(size, Math.max(3, countingDigits(shown)));
  const parts = 10 ** decimals;
  const rounded = limit ? Math.ceil(size * parts - 1e-6) / parts : Math.round(size * parts) / parts;
  const text = digitsOf(rounded, { upTo: decimals });
  const longer = Math.trunc(rounded) >= 10_000 && firstItem(shown.split('.')).length < String(Math.trunc(rounded)).length;
  return marked(`${amount.value < 0 ? '-' : ''}${text}`, marks, amount.grouped === true || longer);
};

/** Digits of a written number that count: '0.0250' has three. */
const countingDigits = (written: string): number => firstItem(written.split('e')).replace(/[-.]/g, '').replace(/^0+/, '').length;

/** Decimals with which so many digits of a size count. */
const decimalsFor = (size: number, digits: number): number => Math.min(9, Math.max(0, digits - 1 - Math.floor(Math.log10(size))));
