/** Printing of numbers and figures: as many digits as the standard deviation deserves, never more. */
import { deviationOf, type Figure } from '../../quantity/figure.ts';
import type { Unit } from '../unit.ts';
import { printMoney, printRate } from './money.ts';

export interface Printing {
  /** ISO 4217 code for figures of money; without it minor units are printed as they are. */
  readonly currency?: string;
}

/** '5.6 ± 1.7 mm/min'; '50 mm' for what is exactly so; '12.40 ± 3.10 EUR/h' for money. */
export const printFigure = (figure: Figure, printing: Printing = {}): string => {
  const deviation = deviationOf(figure);
  if (printing.currency !== undefined && isMoney(figure.unit)) return printMoneyFigure(figure, deviation, printing.currency);
  const value = printNumber(figure.value, deviation);
  const unit = figure.unit === '1' ? '' : ` ${figure.unit}`;
  return deviation > 0 ? `${value} ± ${printDeviation(deviation)}${unit}` : `${value}${unit}`;
};

/** The value with as many decimals as its standard deviation has when printed; up to six significant digits when it is exact. */
export const printNumber = (value: number, deviation = 0): string => {
  if (!Number.isFinite(value)) return String(value);
  if (!(deviation > 0)) return plain(Number(value.toPrecision(6)));
  const decimals = decimalsFor(deviation);
  if (decimals >= 0) return withoutMinusZero(value.toFixed(Math.min(decimals, 12)));
  const step = 10 ** -decimals;
  return plain(Math.round(value / step) * step);
};

/** Two significant digits: one alone would change a deviation of 1.4 to 1. */
export const printDeviation = (deviation: number): string => printNumber(deviation, deviation);

/** Decimals of a number printed with two significant digits; negative for tens and hundreds. */
const decimalsFor = (deviation: number): number => {
  const [, exponent] = deviation.toExponential(1).split('e');
  return 1 - Number(exponent);
};

/** Without an exponent as long as a person can read it so. */
const plain = (value: number): string => {
  const size = Math.abs(value);
  if (size !== 0 && (size >= 1e15 || size < 1e-6)) return value.toExponential().replace('e+', 'e');
  return withoutMinusZero(String(value));
};

const withoutMinusZero = (text: string): string => (/^-0(\.0*)?$/.test(text) ? text.slice(1) : text);

const isMoney = (unit: Unit): boolean => unit === 'money' || unit.startsWith('money/');

const printMoneyFigure = (figure: Figure, deviation: number, currency: string): string => {
  const per = figure.unit.slice('money'.length);
  const value = `${(per === '' ? printMoney : printRate)(figure.value, currency)}${per}`;
  return deviation > 0 ? `${value} ± ${printMoney(deviation, currency)}${per}` : value;
};
