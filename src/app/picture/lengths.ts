/** Lengths of the picture in the user's unit and with the decimal mark of the user's language. */
import { localNumber } from '../../text/print/local.ts';
import { mmIn, type PictureUnit } from './scale-bar.ts';

export interface Lengths {
  readonly unit: PictureUnit;
  /** The decimal mark is a comma. */
  readonly comma: boolean;
  /** '12.5' without its unit. */
  bare(mm: number, decimals: number): string;
  /** '12.5 mm', without trailing zeros. */
  full(mm: number, decimals?: number): string;
  /** As it stands in a field to be typed over: all digits, no unit, no grouping. */
  typed(mm: number): string;
  /** '0.18 µm' or '7 µin': three digits that count. */
  small(mm: number): string;
  /** '+0.18 µm', with a true minus below nothing. */
  signed(mm: number): string;
  /** '+0.18', in µm or µin. */
  signedBare(mm: number): string;
  /** '20,000' */
  count(n: number): string;
}

const UNIT_WORDS: Readonly<Record<PictureUnit, string>> = { mm: 'mm', inch: 'in' };

/** `locale` as the browser names it; the user's own when left out. */
export const lengthsIn = (unit: PictureUnit, locale?: string): Lengths => {
  const print = (value: number, options: Parameters<typeof localNumber>[1]): string => localNumber(value, options, locale);
  const bare = (mm: number, decimals: number): string =>
    print(rounded(mm / mmIn[unit], decimals), { minimumFractionDigits: decimals, maximumFractionDigits: decimals, useGrouping: false });
  const most = unit === 'mm' ? 4 : 5;
  const smallBare = (mm: number): string => {
    const value = unit === 'mm' ? mm * 1e3 : (mm / 25.4) * 1e6;
    const shown = Math.abs(value) < 5e-4 ? 0 : value;
    return print(shown, { maximumSignificantDigits: 3, useGrouping: false });
  };
  const small = (mm: number): string => `${smallBare(mm)}\u00a0${unit === 'mm' ? 'µm' : 'µin'}`;
  return {
    unit,
    comma: bare(0.5, 1).includes(','),
    bare,
    full: (mm, decimals = most) =>
      `${print(rounded(mm / mmIn[unit], decimals), { maximumFractionDigits: decimals, useGrouping: false })}\u00a0${UNIT_WORDS[unit]}`,
    typed: (mm) => print(rounded(mm / mmIn[unit], most), { maximumFractionDigits: most, useGrouping: false }),
    small,
    signedBare: (mm) => `${mm > 0 ? '+' : ''}${smallBare(mm)}`,
    signed: (mm) => `${mm > 0 ? '+' : ''}${small(mm)}`,
    count: (n) => print(n, { maximumFractionDigits: 0 }),
  };
};

/** Without a minus before nothing. */
const rounded = (value: number, decimals: number): number => {
  const all = Math.round(value * 10 ** decimals) / 10 ** decimals;
  return all === 0 ? 0 : all;
};
