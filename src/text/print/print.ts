/** The one place where what is said becomes words: unit, digits, marks, frame and language of whoever reads it. */

import { bodyOf, type TextBody } from '../body.ts';
import type { Language, Template } from '../language.ts';
import { nouns } from '../noun.ts';
import type { Joint, Part } from '../part.ts';
import { HOUSE, type Reader } from '../reader.ts';
import type { Text } from '../text.ts';
import type { Unit } from '../unit.ts';
import { amountText, digitsOf, marked, quantityNumbers, scaleOf } from './amount.ts';
import { printDuration } from './duration.ts';
import { printMoment } from './moment.ts';
import { printMoney, printRate } from './money.ts';

type NotForPrinted =
  | 'replace'
  | 'replaceAll'
  | 'match'
  | 'matchAll'
  | 'split'
  | 'slice'
  | 'substring'
  | 'search'
  | 'startsWith'
  | 'endsWith';

/** Words for a reader: to be joined and laid out, not to be read again. */
export type Printed = string & { readonly [Method in NotForPrinted]: never };

/** A stretch of a printed text and what it stands for, so that a page can mark it up: make bold, link, point. */
export interface PrintedPart {
  readonly text: Printed;
  /** 'words' for those of the sentence itself. */
  readonly of: Part['kind'] | 'words';
  /** Names of the holes that it fills, that of the text itself first; none for its own words. */
  readonly holes: readonly string[];
  /** The contour it names. */
  readonly contour?: string | undefined;
}

export const print = (text: Text, reader: Reader): Printed => joined(printedParts(text, reader).map((p) => p.text));

/** As the house writes: mm, µm, a point, English. For program comments, logs and machine-read answers. */
export const printPlain = (text: Text): Printed => print(text, HOUSE);

export const joined = (texts: readonly (Printed | ' ' | ', ' | '')[], between = ''): Printed => texts.join(between) as Printed;

export const printedParts = (text: Text, reader: Reader): readonly PrintedPart[] => {
  const body = bodyOf(text);
  const parts = chunksOf(templateFor(body, reader), body).flatMap((chunk) => printedChunk(chunk, reader));
  return reader.decimalMark === ',' ? parts.map((p, i) => apart(p, parts[i - 1], parts[i + 1])) : parts;
};

/** '0.1, 0.2' would become '0,1, 0,2', in which nobody sees where one number ends. */
const apart = (part: PrintedPart, before?: PrintedPart, after?: PrintedPart): PrintedPart =>
  (part.text as string) === ', ' && isNumber(before) && isNumber(after) ? { ...part, text: '; ' as Printed } : part;
const isNumber = (part: PrintedPart | undefined): boolean => part?.of === 'number' || part?.of === 'quantity';

const templateFor = ({ key, template, holes }: TextBody, { language }: Reader): string => {
  const other: Template | undefined = key === undefined ? undefined : language?.templates[key];
  if (language === undefined || other === undefined) return template;
  if (typeof other === 'string') return other;
  const counted = holes[other.by];
  return other.forms[categoryOf(language, counted?.kind === 'count' ? counted.count : 0)] ?? other.forms.other;
};

const categoryOf = ({ code }: Language, n: number): string => new Intl.PluralRules(code).select(n);

/** Words, or a hole with its part and the form in which a counted noun stands there. */
type Chunk = string | { readonly part: Part; readonly form: string; readonly hole: string };

const HOLE = /\{(\w+)(?::(\w+))?\}/g;

const chunksOf = (template: string, { holes, key }: TextBody): readonly Chunk[] => {
  const chunks: Chunk[] = [];
  let at = 0;
  for (const found of template.matchAll(HOLE)) {
    const [whole, hollow = '', form = ''] = found;
    const part = holes[hollow];
    if (part === undefined) throw new Error(`The template of '${key}' has a hole '${hollow}' that nothing fills.`);
    if (found.index > at) chunks.push(template.slice(at, found.index));
    chunks.push({ part, form, hole: hollow });
    at = found.index + whole.length;
  }
  if (at < template.length) chunks.push(template.slice(at));
  return chunks;
};

const printedChunk = (chunk: Chunk, reader: Reader): readonly PrintedPart[] => {
  if (typeof chunk === 'string') return [{ text: chunk as Printed, of: 'words', holes: [] }];
  return filled(chunk, reader).map((p) => ({ ...p, holes: [chunk.hole, ...p.holes] }));
};

const filled = ({ part, form }: Exclude<Chunk, string>, reader: Reader): readonly PrintedPart[] => {
  if (part.kind === 'text') return printedText(part, reader);
  if (part.kind === 'list') return printedList(part, reader);
  return [{ text: printedPart(part, form, reader), of: part.kind, holes: [], contour: part.kind === 'contour' ? part.id : undefined }];
};

const printedText = ({ text, inside, clause, begins }: Extract<Part, { kind: 'text' }>, reader: Reader): readonly PrintedPart[] => {
  const parts = printedParts(text, reader);
  const english = reader.language === undefined;
  const begun = english && inside ? withInitial(parts, 'small') : english && begins ? withInitial(parts, 'capital') : parts;
  return clause === undefined ? begun : withoutStop(begun);
};

const withInitial = ([first, ...more]: readonly PrintedPart[], initial: 'small' | 'capital'): readonly PrintedPart[] => {
  if (first === undefined) return [];
  const letter = first.text.charAt(0);
  const text = `${initial === 'small' ? letter.toLowerCase() : letter.toUpperCase()}${(first.text as string).slice(1)}` as Printed;
  return [{ ...first, text }, ...more];
};

const withoutStop = (parts: readonly PrintedPart[]): readonly PrintedPart[] => {
  const last = parts.at(-1);
  if (last?.of !== 'words' || !(last.text as string).endsWith('.')) return parts;
  return [...parts.slice(0, -1), { ...last, text: (last.text as string).slice(0, -1) as Printed }];
};

const ENGLISH_JUNCTIONS = { and: ' and ', or: ' or ', comma: ', ' } as const;

/** Between items in any language. */
const SIGNS: Readonly<Partial<Record<Extract<Part, { kind: 'list' }>['joined'], string>>> = {
  semicolon: '; ',
  blank: ' ',
  dot: ' · ',
  plus: ' + ',
};

const printedList = ({ items, joined: by }: Extract<Part, { kind: 'list' }>, reader: Reader): readonly PrintedPart[] => {
  const between = SIGNS[by] ?? reader.language?.junctions.comma ?? ENGLISH_JUNCTIONS.comma;
  const last = by === 'and' || by === 'or' ? (reader.language?.junctions[by] ?? ENGLISH_JUNCTIONS[by]) : between;
  return items.flatMap((part, i) => {
    const printed = filled({ part, form: '', hole: '' }, reader);
    if (i === 0) return printed;
    return [{ text: (i === items.length - 1 ? last : between) as Printed, of: 'words' as const, holes: [] }, ...printed];
  });
};

const printedPart = (part: Exclude<Part, { kind: 'text' | 'list' }>, form: string, reader: Reader): Printed =>
  wordsOf(part, form, reader) as Printed;

const wordsOf = (part: Exclude<Part, { kind: 'text' | 'list' }>, form: string, reader: Reader): string => {
  switch (part.kind) {
    case 'name':
      return part.name;
    case 'term':
      return part.term;
    case 'contour':
      return part.id;
    case 'number':
      return amountText(part.amount, reader);
    case 'quantity':
      return quantityText(part, reader);
    case 'count':
      return countText(part, form, reader);
    case 'place':
      return placeText(part, reader);
    case 'unit':
      return unitText(part.unit, reader);
    case 'duration':
      return printDuration(part.minutes);
    case 'moment':
      return printMoment(part.at, part.shown, reader.language?.calendar);
    case 'money':
      return moneyText(part, reader);
    case 'mass':
      return massText(part, reader);
  }
};

const ENGLISH_JOINTS: Readonly<Record<Joint, string>> = {
  to: ' to ',
  by: ' by ',
  x: ' x ',
  '×': ' × ',
  '±': ' ± ',
  or: ' or ',
  and: ' and ',
  '–': '–',
};

const quantityText = (part: Extract<Part, { kind: 'quantity' }>, reader: Reader): string => {
  const { numbers, unit } = quantityNumbers(part, reader);
  const joint = part.joint === undefined ? '' : (reader.language?.joints[part.joint] ?? ENGLISH_JOINTS[part.joint]);
  const below = part.below === true ? (reader.language?.below ?? 'less than ') : '';
  return `${below}${part.limit === true ? '±' : ''}${numbers.join(joint)}${unit === '' || part.bare === true ? '' : ` ${unit}`}`;
};

const unitText = (unit: Unit, reader: Reader): string => {
  const shown = scaleOf(unit, reader)?.name ?? unit;
  return shown === 'in' ? 'inch' : shown;
};

const countText = ({ count, noun }: Extract<Part, { kind: 'count' }>, form: string, reader: Reader): string => {
  const digits = amountText({ value: count, digits: { fixed: 0 } }, reader);
  if (noun === undefined) return digits;
  const { language } = reader;
  const forms = language?.nouns[noun]?.[form];
  if (language === undefined || forms === undefined) return `${digits} ${nouns[noun][count === 1 ? 0 : 1]}`;
  return `${digits} ${forms[categoryOf(language, count)] ?? forms['other'] ?? noun}`;
};

const placeText = ({ x, y, digits, spelled, frame }: Extract<Part, { kind: 'place' }>, reader: Reader): string => {
  const { drawn, decimalMark, length, places = length } = reader;
  const factor = drawn === undefined || frame === 'program' ? 1 : drawn / (places === 'inch' ? 25.4 : 1);
  const [across, up] = [x, y].map((n) =>
    factor === 1 ? amountText({ value: n, digits }, reader) : amountText({ value: n * factor, digits: { upTo: 4 } }, reader),
  );
  if (spelled === 'by letters') return `${reader.language?.at ?? 'at '}X ${across}, Y ${up}`;
  if (spelled === 'as words') return `X${across} Y${up}`;
  if (spelled === 'in brackets') return `(${across}${decimalMark === ',' ? ';' : ','} ${up})`;
  const unit = factor === 1 ? spelled.unit : places === 'inch' ? 'in' : 'mm';
  return `x ${across} ${unit}, y ${up} ${unit}`;
};

const moneyText = ({ minor, currency, per = 'money' }: Extract<Part, { kind: 'money' }>, marks: Reader): string => {
  const [digits = '', code = ''] = (per === 'money' ? printMoney : printRate)(minor, currency).split(' ');
  return `${marked(digits.replaceAll(',', ''), marks, true)} ${code}${per.slice('money'.length)}`;
};

const massText = ({ kilograms, digits }: Extract<Part, { kind: 'mass' }>, marks: Reader): string => {
  const inKilograms = Math.abs(kilograms) >= (digits === 4 ? 0.99995 : 1);
  const value = digitsOf(inKilograms ? kilograms : kilograms * 1000, { significant: digits });
  return `${marked(value, marks)} ${inKilograms ? 'kg' : 'g'}`;
};
