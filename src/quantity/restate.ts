/**
 * Sentences of the core told in the units and with the number marks of whoever reads them. All layers print quantities in one grammar:
 * a number with a decimal point, a blank, a unit of the house. What is no quantity stays: names, ids, dates, words of programs.
 */

export interface Telling {
  readonly length: 'mm' | 'inch';
  readonly finish: 'µm' | 'µin';
  /** '.' or ','. */
  readonly decimalMark: string;
  /** Between groups of three digits, as in 1,234: '' where the language has none. */
  readonly groupMark: string;
  /** Names that happen to look like quantities, as '0.25 mm brass': left as they are. */
  readonly names: readonly string[];
}

const NUMBER = String.raw`\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?`;
const UNITS = ['mm³/min', 'mm²/min', 'mm/min', 'mm³', 'mm²', 'mm', 'MM', 'µm', 'm/min', 'm'] as const;
type Restated = (typeof UNITS)[number];

/** A quantity, with the first end of a range or the other sides of a size before it: '1 to 3 mm', '44 × 47.7 mm', '±0.02 mm'. */
const QUANTITY = new RegExp(
  String.raw`(?<![\p{L}\d.,/_])((?:(?:${NUMBER})(?:\s(?:to|×|x|…|±)\s|\s?[×…–]\s?))*)(${NUMBER})([\s\u00a0])(${UNITS.map((u) => u.replace('/', '\\/')).join('|')})(?![\p{L}\d²³/])`,
  'gu',
);

/** A number with a decimal point that stands alone; what has more points is a date, a version or the number of a steel. */
const DECIMAL = /(?<![\p{L}\d.,:/_-])(\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+\.\d+)(?![\p{L}\d:/_-]|[.,]\d)/gu;

const FACTORS: Readonly<Record<Restated, readonly [factor: number, name: string]>> = {
  mm: [1 / 25.4, 'in'],
  // As comments of a program say it.
  MM: [1 / 25.4, 'IN'],
  'mm/min': [1 / 25.4, 'in/min'],
  'mm²': [1 / 25.4 ** 2, 'in²'],
  'mm²/min': [1 / 25.4 ** 2, 'in²/min'],
  'mm³': [1 / 25.4 ** 3, 'in³'],
  'mm³/min': [1 / 25.4 ** 3, 'in³/min'],
  µm: [1 / 25_400, 'in'],
  m: [1 / 0.3048, 'ft'],
  'm/min': [1 / 0.3048, 'ft/min'],
};

/** The same sentence for this reader. */
export const restated = (sentence: string, telling: Telling): string => {
  if (telling.length === 'mm' && telling.finish === 'µm' && telling.decimalMark === '.' && telling.groupMark === ',') return sentence;
  return partsAround(sentence, telling.names)
    .map(({ text, isName }) => (isName ? text : marked(converted(text, telling), telling)))
    .join('');
};

interface Part {
  readonly text: string;
  readonly isName: boolean;
}

const partsAround = (sentence: string, names: readonly string[]): readonly Part[] => {
  const found = names.filter((n) => n !== '' && sentence.includes(n)).toSorted((a, b) => b.length - a.length);
  if (found.length === 0) return [{ text: sentence, isName: false }];
  const pattern = new RegExp(`(${found.map((n) => n.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|')})`);
  return sentence.split(pattern).map((text, i) => ({ text, isName: i % 2 === 1 }));
};

/** Stands for a decimal point that was set by the conversion and for one that was there before alike. */
const converted = (text: string, telling: Telling): string =>
  text.replace(QUANTITY, (whole: string, before: string, last: string, blank: string, unit: Restated, at: number) => {
    const scale = scaleOf(unit, telling, /Ra (?:[\d.]+ to )?$/.test(text.slice(0, at)));
    if (scale === undefined) return whole;
    const [factor, name] = scale;
    const told = (number: string): string => withDigits(Number(number.replaceAll(',', '')) * factor, number);
    return `${before.replace(new RegExp(NUMBER, 'g'), told)}${told(last)}${blank}${name}`;
  });

const scaleOf = (unit: Restated, { length, finish }: Telling, isFinish: boolean): readonly [number, string] | undefined => {
  if (unit === 'µm' && (isFinish || length === 'mm')) return isFinish && finish === 'µin' ? [1 / 0.0254, 'µin'] : undefined;
  return length === 'inch' ? FACTORS[unit] : undefined;
};

/** As many digits that count as before, at least three; nothing stays nothing. */
const withDigits = (value: number, before: string): string => {
  if (value === 0) return '0';
  const counting = before.replace(/[,.]/g, '').replace(/^0+/, '').length;
  const digits = Math.max(3, counting);
  const decimals = Math.min(9, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value)))));
  return value.toFixed(decimals);
};

const marked = (text: string, { decimalMark, groupMark }: Telling): string => {
  if (decimalMark === '.' && groupMark === ',') return text;
  // Where the comma divides decimals it cannot divide the two numbers of a place as well.
  const apart = decimalMark === ',' ? text.replace(/\(([-−]?\d[\d.]*), ([-−]?\d[\d.]*)\)/gu, '($1; $2)') : text;
  return apart.replace(DECIMAL, (number: string) => [...number].map((c) => (c === '.' ? decimalMark : c === ',' ? groupMark : c)).join(''));
};
