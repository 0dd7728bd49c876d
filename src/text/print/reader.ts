/** Numbers with their units as the user reads them: units by preference, digits by how sure the number is, marks of the user's language. */

import type { Reader } from '../reader.ts';
import type { Unit } from '../unit.ts';
import { scaleOf } from './amount.ts';
import { printDuration } from './duration.ts';
import { printNumber } from './figure.ts';
import { decimalMark, groupMark, localNumber } from './local.ts';
import { currencyDecimals } from './money.ts';

export interface Units {
  readonly lengthUnit: 'mm' | 'inch';
  readonly finishUnit: 'µm' | 'µin';
  /** ISO 4217 of figures of money; minor units are printed as they are without it. */
  readonly currency?: string | undefined;
  /** As the browser names it; the user's own when left out. */
  readonly locale?: string | undefined;
}

/** What is printed: a value with one standard deviation either side. */
export interface Ranged {
  readonly value: number;
  readonly unit: Unit;
  readonly low: number;
  readonly high: number;
}

export interface Numbers extends Units {
  /** '5.6 mm/min': the value alone, with as many digits as its range deserves. */
  value(shown: Ranged): string;
  /** '± 1.7', empty for what is exactly so. */
  range(shown: Ranged): string;
  /** '0.25 mm' of mm. */
  length(mm: number): string;
  /** '±0.006 mm' rounded up, so that nothing is promised that does not hold. */
  within(mm: number): string;
  /** 'Ra 0.8 µm' of µm. */
  finish(ra: number): string;
  /** '412.00 EUR' of minor units. */
  money(minor: number): string;
  /** '9 h 40 min' of minutes. */
  duration(minutes: number): string;
  /** A bare number, up to six digits that count. */
  plain(value: number): string;
  /** '62 %' of a share. */
  share(part: number): string;
}

export const numbersIn = (units: Units): Numbers => {
  const { format, digits, tidy } = formatsOf(units.locale);
  const money = (minor: number): string => {
    if (units.currency === undefined) return tidy(minor, 0);
    const decimals = currencyDecimals(units.currency);
    const major = Math.round(minor) / 10 ** decimals;
    return `${format(major, { minimumFractionDigits: decimals, maximumFractionDigits: decimals })} ${units.currency}`;
  };
  const inMm = units.lengthUnit === 'mm';
  return {
    ...units,
    value: ({ value, unit, low, high }) => {
      if (unit === 'min') return printDuration(value);
      if (unit.startsWith('money')) return `${money(value)}${unit.slice('money'.length)}`;
      const [factor, name] = shownIn(unit, units);
      return `${digits(value * factor, ((high - low) / 2) * factor)} ${name}`.trim();
    },
    range: ({ unit, low, high }) => {
      const deviation = (high - low) / 2;
      if (!(deviation > 0)) return '';
      if (unit === 'min') return `± ${printDuration(deviation)}`;
      if (unit.startsWith('money')) return `± ${money(deviation)}`;
      const [factor] = shownIn(unit, units);
      return `± ${digits(deviation * factor, deviation * factor)}`;
    },
    length: (mm) => (inMm ? `${tidy(mm, 4)} mm` : `${tidy(mm / 25.4, 5)} in`),
    within: (mm) => (inMm ? `±${tidy(upTo(mm, 1e3), 3)} mm` : `±${tidy(upTo(mm / 25.4, 1e5), 5)} in`),
    finish: (ra) => {
      const [factor, name] = shownIn('µm', units);
      return `Ra ${format(ra * factor, { maximumSignificantDigits: 3, useGrouping: false })} ${name}`;
    },
    money,
    duration: printDuration,
    plain: (value) => digits(value, 0),
    share: (part) => `${tidy(part * 100, 0)} %`,
  };
};

/** Factor and name of the unit in which this user reads it. */
const shownIn = (unit: Unit, { lengthUnit, finishUnit }: Units): readonly [factor: number, name: string] => {
  const scale = scaleOf(unit, { length: lengthUnit, finish: finishUnit });
  return scale === undefined ? [1, unit === '1' ? '' : unit] : [scale.factor, scale.name];
};

const formatsOf = (locale: string | undefined) => {
  const format = (value: number, options: Intl.NumberFormatOptions): string => localNumber(value, options, locale);
  /** The digits that the house prints, with the marks of the user's language. */
  const digits = (value: number, deviation: number): string => {
    const printed = printNumber(value, deviation);
    if (!/^-?\d+(\.\d+)?$/.test(printed)) return printed;
    const decimals = printed.split('.')[1]?.length ?? 0;
    return format(Number(printed), { minimumFractionDigits: decimals, maximumFractionDigits: decimals, useGrouping: 'min2' });
  };
  const tidy = (value: number, decimals: number): string => format(value, { maximumFractionDigits: decimals, useGrouping: 'min2' });
  return { format, digits, tidy };
};

/** Rounded up to one part of `parts`; what is there already but for the last bits of a number stays. */
const upTo = (value: number, parts: number): number => Math.ceil(value * parts - 1e-6) / parts;

/** How this user wants numbers told, on papers too. */
export const tellingFor = (units: Units): Reader => ({
  length: units.lengthUnit,
  finish: units.finishUnit,
  decimalMark: decimalMark(units.locale),
  groupMark: groupMark(units.locale),
});
