/** Printing and typing of money: minor units (cents) inside the house, major units with the currency's code on paper. */

/** Decimals of ISO 4217 currencies that do not have two. */
const decimalsByCurrency: Readonly<Record<string, number>> = {
  JPY: 0,
  KRW: 0,
  VND: 0,
  CLP: 0,
  ISK: 0,
  PYG: 0,
  UGX: 0,
  KWD: 3,
  BHD: 3,
  OMR: 3,
  JOD: 3,
  TND: 3,
};

export const currencyDecimals = (currency: string): number => decimalsByCurrency[currency] ?? 2;

/** '1,234.50 EUR' from 123450 minor units; halves are rounded away from zero. */
export const printMoney = (minor: number, currency: string): string => {
  const decimals = currencyDecimals(currency);
  const whole = Math.round(Math.abs(minor));
  const sign = minor < 0 && whole > 0 ? '-' : '';
  const digits = whole.toFixed(0).padStart(decimals + 1, '0');
  const major = digits.slice(0, digits.length - decimals).replace(/\B(?=(\d{3})+$)/g, ',');
  const cents = decimals === 0 ? '' : `.${digits.slice(-decimals)}`;
  return `${sign}${major}${cents} ${currency}`;
};
