/** Numbers, days and times as the language of whoever looks at the page writes them: the user's own where no locale is given. */

const formats = new Map<string, Intl.NumberFormat>();

/** Kept, since making one takes longer than thousands of numbers. */
const formatFor = (locale: string | undefined, options: Intl.NumberFormatOptions): Intl.NumberFormat => {
  const key = `${locale} ${JSON.stringify(options)}`;
  const known = formats.get(key) ?? new Intl.NumberFormat(locale, { numberingSystem: 'latn', signDisplay: 'negative', ...options });
  formats.set(key, known);
  return known;
};

/** With a true minus, and none before nothing. */
export const localNumber = (value: number, options: Intl.NumberFormatOptions, locale?: string): string =>
  formatFor(locale, options)
    .format(value === 0 ? 0 : value)
    .replace('-', '−');

/** '20,000' */
export const localCount = (n: number, locale?: string): string => localNumber(n, {}, locale);

/** '62 %' of a share. */
export const localShare = (share: number): string => localNumber(share, { style: 'percent' });

/** '26 Nov 2026, 07:10' */
export const localMoment = (when: Date | string | number, locale?: string): string =>
  inFormat(when, new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }));

/** A record may hold a time that is none: it is shown as it was kept. */
const inFormat = (when: Date | string | number, format: Intl.DateTimeFormat): string => {
  const date = new Date(when);
  return Number.isNaN(date.getTime()) ? String(when) : format.format(date);
};

/** 'Thu, 26 Nov' of minutes since 1970 by the clock on the shop's wall. */
export const localDay = (at: number, locale?: string): string =>
  new Intl.DateTimeFormat(locale, { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' }).format(new Date(at * 60_000));

const partOf = (type: 'decimal' | 'group', locale: string | undefined): string | undefined =>
  formatFor(locale, {})
    .formatToParts(1_234_567.5)
    .find((part) => part.type === type)?.value;

/** ',' where the user's language writes decimals with a comma. */
export const decimalMark = (locale?: string): string => partOf('decimal', locale) ?? '.';

/** Between groups of three digits; '' where the language has none. */
export const groupMark = (locale?: string): string => partOf('group', locale) ?? '';
