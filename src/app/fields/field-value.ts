/** Field values as texts and back: how the value in force is shown, what a typed text changes in the job, whether the job allows it. */
import { faultOf } from '../../job/files/fault.ts';
import { jobSchema } from '../../job/job.ts';
import { currencyDecimals } from '../../text/print/money.ts';
import type { Numbers } from '../../text/print/reader.ts';
import { changed, type Input, valueAt } from '../state/input.ts';
import { labelOf } from '../words/fields.ts';
import type { Words } from '../words/words-for.ts';

import { choicesOf, defaultOf, type FieldSpec, noneOf } from './fields.ts';
import type { Lists } from './lists.ts';
import { readCount, readFinish, readLength, readList, readNumber, type Typed } from './typed.ts';
import { type AskedSize, readSizes, sizeText } from './typed-sizes.ts';

/** What the user said of this field, if anything. */
export const saidOf = (field: FieldSpec, input: Input): unknown => {
  if (field.path !== 'size') return valueAt(input, field.path);
  const [width, depth] = [valueAt(input, 'stock.width'), valueAt(input, 'stock.depth')];
  return width === undefined ? undefined : [width, depth];
};

/** The value in force as a text; what stands for one that is left out. */
export const textOf = (field: FieldSpec, input: Input, numbers: Numbers, lists: Lists, words: Words): string => {
  const value = saidOf(field, input) ?? defaultOf(field.path);
  return value === undefined ? (noneOf(field, words) ?? '') : valueText(field, value, numbers, lists, words);
};

/** As it stands in the field to be typed over: empty where nothing is said and nothing assumed. */
export const typedOf = (field: FieldSpec, input: Input, numbers: Numbers, lists: Lists, words: Words): string => {
  const value = saidOf(field, input) ?? defaultOf(field.path);
  return value === undefined ? '' : valueText(field, value, numbers, lists, words);
};

/** A value of this field as it is shown. */
export const valueText = (field: FieldSpec, value: unknown, numbers: Numbers, lists: Lists, words: Words): string => {
  const list = Array.isArray(value) ? value : [value];
  const all = (print: (v: number) => string, between = '; '): string =>
    list.map((v) => (typeof v === 'number' ? print(v) : String(v))).join(between);
  switch (field.kind) {
    case 'length':
    case 'lengths':
      return all(numbers.length);
    case 'size':
      return all(numbers.length, ' × ');
    case 'sizes':
      return (list as readonly AskedSize[]).map((size) => sizeText(size, numbers, words.typed)).join('; ');
    case 'finish':
      return all(numbers.finish);
    case 'money':
      return all(numbers.money);
    case 'number':
      return all((v) => `${numbers.plain(v)}${field.unit === undefined ? '' : ` ${field.unit}`}`);
    case 'choice':
      return choicesOf(field, words).find((c) => c.value === value)?.text ?? String(value);
    case 'material':
      return nameIn(lists.materials, value);
    case 'wire':
      return nameIn(lists.wires, value);
    case 'spot':
      return spotText(value, numbers);
    default:
      return all(numbers.plain);
  }
};

const nameIn = (rows: Lists['wires'], id: unknown): string => rows.find((r) => r.id === id)?.name ?? String(id);

const spotText = (value: unknown, numbers: Numbers): string => {
  const { x, y } = value as { readonly x?: unknown; readonly y?: unknown };
  return [x, y].map((n) => (typeof n === 'number' ? numbers.plain(n) : '')).join('; ');
};

/** Reads a text typed into a field. */
export const read = (field: FieldSpec, text: string, numbers: Numbers, lists: Lists, words: Words): Typed => {
  const plain = text.trim();
  const none = noneOf(field, words);
  if (plain === '' || plain === none) return { kind: 'value', value: undefined, said: none ?? words.sheet.defaultSaid };
  const { typed } = words;
  switch (field.kind) {
    case 'length':
      return readLength(text, numbers, typed);
    case 'lengths':
      return readList(text, (part) => readLength(part, numbers, typed), typed);
    case 'finish':
      return readFinish(text, numbers, typed);
    case 'count':
      return readCount(plain.replace(/\s*\p{L}+$/u, ''), numbers, typed);
    case 'counts':
      return readList(text, (part) => readCount(part, numbers, typed), typed, /[;,\s]+/);
    case 'number':
      return readNumber(field.unit === undefined ? text : text.replace(field.unit, ''), numbers, typed);
    case 'money':
      return readMoney(text, numbers, typed);
    case 'material':
    case 'wire':
      return readRow(field.kind, plain, lists, typed);
    case 'size':
      return readSize(plain, numbers, typed);
    case 'sizes':
      return readSizes(plain, numbers, typed);
    case 'spot':
      return readSpot(plain, numbers, typed);
    case 'texts':
      return readList(text, (part) => ({ kind: 'value', value: part.trim(), said: part.trim() }), typed, /\s*;\s*/);
    case 'day':
      return /^\d{4}-\d\d-\d\d$/.test(plain) ? { kind: 'value', value: plain, said: plain } : { kind: 'wrong', reason: typed.notADay };
    case 'moment':
      return /^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(plain)
        ? { kind: 'value', value: plain, said: plain.replace('T', ' ') }
        : { kind: 'wrong', reason: typed.notAMoment };
    default:
      return { kind: 'value', value: plain, said: plain };
  }
};

/** Major units as typed, minor ones as kept. */
const readMoney = (text: string, numbers: Numbers, typed: Words['typed']): Typed => {
  const major = readNumber(text.replace(/[A-Za-z]{3}\s*$/, ''), numbers, typed);
  if (major.kind !== 'value') return major;
  const minor = Math.round((major.value as number) * 10 ** currencyDecimals(numbers.currency ?? 'EUR'));
  return { kind: 'value', value: minor, said: numbers.money(minor) };
};

const readRow = (what: 'material' | 'wire', text: string, lists: Lists, typed: Words['typed']): Typed => {
  const rows = what === 'material' ? lists.materials : lists.wires;
  const wanted = text.toLowerCase();
  const row =
    rows.find((r) => r.id.toLowerCase() === wanted || r.name.toLowerCase() === wanted) ??
    only(rows.filter((r) => `${r.id} ${r.name}`.toLowerCase().includes(wanted)));
  return row === undefined
    ? { kind: 'wrong', reason: typed.unknown(what, text.slice(0, 40)) }
    : { kind: 'value', value: row.id, said: row.name };
};

const only = <T>(all: readonly T[]): T | undefined => (all.length === 1 ? all[0] : undefined);

const readSize = (text: string, numbers: Numbers, typed: Words['typed']): Typed => {
  const sides = text.split(/\s*[x×*]\s*/i);
  const unit = /[a-zµ"″]+$/i.exec(sides[1] ?? '')?.[0] ?? '';
  const read = sides.map((side) => readLength(/[a-zµ"″]$/i.test(side) || unit === '' ? side : `${side} ${unit}`, numbers, typed));
  const [width, depth] = read;
  if (read.length !== 2 || width?.kind !== 'value' || depth?.kind !== 'value') return { kind: 'wrong', reason: typed.notASize };
  return { kind: 'value', value: [width.value, depth.value], said: `${width.said} × ${depth.said}` };
};

const readSpot = (text: string, numbers: Numbers, typed: Words['typed']): Typed => {
  const read = text.split(/\s*;\s*|\s+/).map((part) => readNumber(part, numbers, typed));
  const [x, y] = read;
  if (read.length !== 2 || x?.kind !== 'value' || y?.kind !== 'value') return { kind: 'wrong', reason: typed.notASpot };
  return { kind: 'value', value: { x: x.value, y: y.value }, said: `${x.said}; ${y.said}` };
};

/** What a value of this field changes in the job file. */
export const changeOf = (field: FieldSpec, value: unknown): Input => {
  if (field.path !== 'size') return { [field.path]: value };
  const [width, depth] = (value as readonly unknown[] | undefined) ?? [];
  const size = { 'stock.width': width, 'stock.depth': depth };
  return value === undefined ? { ...size, 'stock.corner': undefined } : size;
};

/** Why the job file does not allow the change; nothing when it does. Faults of other fields are not this one's matter. */
export const refused = (field: FieldSpec, input: Input, change: Input, words: Words): string | undefined => {
  const result = jobSchema.safeParse(changed(input, change), { reportInput: true });
  if (result.success) return undefined;
  const touched = Object.keys(change).map((path) => path.split('.')[0]);
  const issue = result.error.issues.find((i) => touched.includes(String(i.path[0])));
  return issue === undefined ? undefined : words.sheet.refused(labelOf(field.path), faultOf(issue));
};

/** While typing: '1/4 in' is 6.35 mm. Nothing where it would only repeat what was typed. */
export const echoOf = (field: FieldSpec, text: string, typed: Typed): string | undefined =>
  typed.kind !== 'value' || !['length', 'finish'].includes(field.kind) || text.trim() === typed.said ? undefined : `= ${typed.said}`;
