/**
 * The one grammar in which the house writes numbers into its sentences, read back: what is a length, a finish or a place can then be
 * told again in other units and marks, without a word of the sentence being known.
 *
 * A number stands free: digits with a point, thousands grouped by commas or not, its sign before it. A quantity is one number or several
 * joined ones and a unit after a blank: '0.25 mm', '78 x 78 x 90 mm', '0.5 to 32 mm', '5.6 ± 1.7 mm/min'. A place is '(98.000, 58.000)'
 * or 'at X 98, Y 58', in units of the drawing. Everything else is words: 'M6', 'L10', '17-4PH', '2026-11-25', '06:00', 'kept.L1', 'plate-0.25.dxf', all that
 * is quoted, and the names a shop gives its things.
 */

export type SaidPart =
  | { readonly kind: 'words'; readonly text: string }
  /** A number that no unit of ours follows, or one whose unit is never told in another. */
  | { readonly kind: 'number'; readonly number: SaidNumber }
  /** `joints` are the words between the numbers; `gap` is the blank before the unit. */
  | {
      readonly kind: 'quantity';
      readonly numbers: readonly SaidNumber[];
      readonly joints: readonly string[];
      readonly gap: string;
      readonly unit: SaidUnit;
    }
  | { readonly kind: 'place'; readonly spelled: 'in brackets' | 'by letters'; readonly x: SaidNumber; readonly y: SaidNumber };

/** A number with all that its digits say. */
export interface SaidNumber {
  readonly text: string;
  /** As written: '-', '−', '+' or nothing. */
  readonly sign: string;
  /** Without its sign. */
  readonly size: number;
  /** Digits behind the point. */
  readonly decimals: number;
  /** Digits that count. */
  readonly digits: number;
  readonly grouped: boolean;
  /** A promise of a limit: '±' stands right before it. */
  readonly within: boolean;
}

/** Units of length and what is made of it, longest first: 'mm' begins 'mm²/min'. */
export const SAID_UNITS = ['mm²/min', 'mm³/min', 'mm/min', 'm/min', 'mm³/s', 'mm²', 'mm³', 'mm', 'µm', 'm', 'MM'] as const;
export type SaidUnit = (typeof SAID_UNITS)[number];

/** `names` of wires, materials, jobs and files are left as they are, numbers and units in them too. */
export const saidParts = (text: string, names: readonly string[] = []): readonly SaidPart[] => {
  const parts: SaidPart[] = [];
  let at = 0;
  const put = (part: SaidPart, from: number, to: number): void => {
    if (from > at) parts.push({ kind: 'words', text: text.slice(at, from) });
    parts.push(part);
    at = to;
  };
  const kept = keptRanges(text, names);
  for (const match of text.matchAll(PATTERN)) {
    const [from, to] = [match.index, match.index + match[0].length];
    if (from < at) continue;
    const inside = kept.find((k) => from < k.to && to > k.from);
    if (inside === undefined) put(partOf(match, text), from, to);
  }
  if (at < text.length) parts.push({ kind: 'words', text: text.slice(at) });
  return parts;
};

/** Free of letters, digits and whatever else would make it part of an address, a name or a date. */
const BEFORE = String.raw`(?<![\p{L}\p{N}_.,:/=@#\\-])`;
const AFTER = String.raw`(?![\p{L}\p{N}_]|[.,:/=]\d|[-.]\p{L}|-\d)`;
const NUMBER = String.raw`[-−+]?(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?(?:e[-+]?\d+)?${AFTER}`;
const JOINT = ' to | by | or | x | X | × | ± |–|,? Y ';
/** After these a number counts: in 'skim 1 by 0.3 µm' the 1 is no length. */
const COUNTS = '(?<!(?:skim|skims|pass|passes|line|lines|block|register|stop|piece|pieces|hole|corner|step|times) )';
const UNIT = String.raw`(?<gap>[ \u00a0\u202f])(?<unit>${SAID_UNITS.join('|')})(?![\p{L}\p{N}²³/]|-\p{L})`;
const PATTERN = new RegExp(
  [
    String.raw`${BEFORE}\((?<x>${NUMBER}), (?<y>${NUMBER})\)`,
    String.raw`\bat X (?<atX>${NUMBER}), Y (?<atY>${NUMBER})(?! (?:${SAID_UNITS.join('|')})(?![\p{L}\p{N}]))`,
    `${BEFORE}(?<numbers>${COUNTS}(?:${NUMBER}(?:${JOINT}))+${NUMBER}|${NUMBER})${UNIT}`,
    `${BEFORE}(?<number>${NUMBER})`,
  ].join('|'),
  'gu',
);
const ONE = new RegExp(`${BEFORE}${NUMBER}`, 'gu');

const partOf = ({ groups = {}, index }: RegExpExecArray, text: string): SaidPart => {
  const { x, y, atX, atY, numbers, gap, unit, number } = groups as Readonly<Record<string, string | undefined>>;
  if (x !== undefined && y !== undefined) return { kind: 'place', spelled: 'in brackets', x: readNumber(x), y: readNumber(y) };
  if (atX !== undefined && atY !== undefined) return { kind: 'place', spelled: 'by letters', x: readNumber(atX), y: readNumber(atY) };
  const before = text[index - 1];
  if (numbers === undefined || gap === undefined) return { kind: 'number', number: readNumber(number ?? '', before) };
  const found = [...numbers.matchAll(ONE)];
  return {
    kind: 'quantity',
    numbers: found.map((m) => readNumber(m[0], m.index === 0 ? before : numbers[m.index - 1])),
    joints: found.slice(1).map((m, i) => numbers.slice((found[i]?.index ?? 0) + (found[i]?.[0].length ?? 0), m.index)),
    gap,
    unit: unit as SaidUnit,
  };
};

const readNumber = (text: string, before?: string): SaidNumber => {
  const sign = /^[-−+]?/.exec(text)?.[0] ?? '';
  const bare = text.slice(sign.length);
  const [mantissa = ''] = bare.split('e');
  return {
    text,
    sign,
    size: Number(bare.replaceAll(',', '')),
    decimals: mantissa.split('.')[1]?.length ?? 0,
    digits: mantissa.replace(/[.,]/g, '').replace(/^0+/, '').length,
    grouped: mantissa.includes(','),
    within: before === '±',
  };
};

interface Range {
  readonly from: number;
  readonly to: number;
}

/** What somebody typed is quoted and stays so; '1 inch = 25.4 mm' says what a unit is. */
const QUOTED = /“[^”]*”|"[^"]*"|`[^`]*`|(?<=^|[\s(])'[^']*'(?=$|[\s.,;:)!?])|\b1 \p{L}+ = [\d.]+ \p{L}+/gu;

const keptRanges = (text: string, names: readonly string[]): readonly Range[] => {
  const ranges: Range[] = [...text.matchAll(QUOTED)].map((m) => ({ from: m.index, to: m.index + m[0].length }));
  for (const name of names) {
    for (let from = /\d/.test(name) ? text.indexOf(name) : -1; from >= 0; from = text.indexOf(name, from + 1)) {
      const to = from + name.length;
      if (isNamed(text, from, to)) ranges.push({ from, to });
    }
  }
  return ranges;
};

/** A whole word, and no quantity: a wire that is called '0.25 mm' and nothing else is a length like any other, a steel '1.2379' is not. */
const isNamed = (text: string, from: number, to: number): boolean => {
  const [before, name, after] = [text.slice(0, from), text.slice(from, to), text.slice(to)];
  if (/[\p{L}\p{N}]$/u.test(before) || /^[\p{L}\p{N}]/u.test(after)) return false;
  return !WHOLE_QUANTITY.test(name) && !(/^[\d.,]+$/.test(name) && UNIT_NEXT.test(after));
};

const WHOLE_QUANTITY = new RegExp(`^[-−+]?[\\d.,]+[ \u00a0\u202f](?:${SAID_UNITS.join('|')})$`, 'u');
const UNIT_NEXT = new RegExp(`^[ \u00a0\u202f](?:${SAID_UNITS.join('|')})(?![\\p{L}\\p{N}²³/])`, 'u');
