/** Printing and typing of money: minor units (cents) inside the house, major units with the currency's code on paper. */

import { wholeMinor } from '../../quantity/minor-units.ts';

/** Currencies of ISO 4217 that do not have two decimals. */
const OTHER_DECIMALS: readonly (readonly [decimals: number, currencies: string])[] = [
  [0, 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'],
  [3, 'BHD IQD JOD KWD LYD OMR TND'],
  [4, 'CLF UYW'],
];

const decimalsByCurrency: ReadonlyMap<string, number> = new Map(
  OTHER_DECIMALS.flatMap(([decimals, currencies]) => currencies.split(' ').map((currency) => [currency, decimals] as const)),
);

export const currencyDecimals = (currency: string): number => decimalsByCurrency.get(currency.toUpperCase()) ?? 2;

/** '1,234.50 EUR' from 123450 minor units; halves are rounded away from zero. */
export const printMoney = (minor: number, currency: string): string => `${minorDigits(wholeMinor(minor), currency)} ${currency}`;

/** '0.285 EUR' from 28.5 minor units: a rate is shown as it was entered, and never with fewer decimals than a sum. */
export const printRate = (minor: number, currency: string): string => {
  const decimals = currencyDecimals(currency);
  const [, more = ''] = String(Number((minor / 10 ** decimals).toPrecision(12))).split('.');
  return more.length <= decimals || more.includes('e')
    ? printMoney(minor, currency)
    : `${minorDigits(Math.round(minor * 10 ** (more.length - decimals)), currency, more.length)} ${currency}`;
};

const minorDigits = (whole: number, currency: string, decimals = currencyDecimals(currency)): string => {
  const digits = Math.abs(whole)
    .toFixed(0)
    .padStart(decimals + 1, '0');
  const major = digits.slice(0, digits.length - decimals).replace(/\B(?=(\d{3})+$)/g, ',');
  return `${whole < 0 ? '-' : ''}${major}${decimals === 0 ? '' : `.${digits.slice(-decimals)}`}`;
};
