/** Cells of the shop's tables as texts and back, and what a spreadsheet puts on the clipboard. */
import { changed, type Input, valueAt } from '../state/input.ts';
import type { Column } from './columns.ts';

type Row = Readonly<Record<string, unknown>>;

/** As a cell shows it: money in the currency, shares in percent, lists with semicolons. */
export const cellText = (row: Input, column: Column, decimalMark: string): string => {
  const value = valueAt(row, column.path);
  return value === undefined ? '' : WRITERS[column.kind](value, column, decimalMark);
};

type Writer = (value: unknown, column: Column, mark: string) => string;

const numberText: Writer = (value, { scale, decimals }, mark) => {
  if (typeof value !== 'number') return String(value);
  const [whole = '', more = ''] = String(settled(value / scale)).split('.');
  const behind = more.padEnd(decimals, '0');
  return behind === '' ? whole : `${whole}${mark}${behind}`;
};

/** What is no list or no record stands as it is, for the schema to judge. */
const WRITERS: Readonly<Record<Column['kind'], Writer>> = {
  number: numberText,
  text: String,
  choice: String,
  yes: (value) => (value === true ? 'yes' : 'no'),
  numbers: (value, column, mark) => (Array.isArray(value) ? value.map((v) => numberText(v, column, mark)).join(BETWEEN) : String(value)),
  words: (value) => (Array.isArray(value) ? value.join(BETWEEN) : String(value)),
  rows: (value, column, mark) =>
    Array.isArray(value) ? value.map((entry: Row) => entryText(entry, column, mark)).join(BETWEEN) : String(value),
  prices: (value, column, mark) =>
    typeof value === 'object' && value !== null
      ? Object.entries(value)
          .map(([key, price]) => `${key} ${numberText(price, column, mark)}`)
          .join(BETWEEN)
      : String(value),
};

const BETWEEN = '; ';
const BESIDE = ' / ';

/** Values that are left out at the end leave no bar behind. */
const entryText = (entry: Row, column: Column, mark: string): string => {
  const texts = column.parts.map(({ key }) => (entry[key] === undefined ? '' : numberText(entry[key], column, mark)));
  const last = texts.findLastIndex((text) => text !== '');
  return texts.slice(0, last + 1).join(BESIDE);
};

/** The row with one cell changed. A text that is no number stays a text, so that the schema can say what is wrong and nothing is lost. */
export const withCell = (row: Input, column: Column, text: string): Input =>
  changed(row, { [column.path]: cellValue(column, text.trim(), valueAt(row, column.path)) });

/** A list that was emptied stays a list. */
const cellValue = (column: Column, text: string, before: unknown): unknown => {
  if (text === '') return Array.isArray(before) ? [] : undefined;
  return READERS[column.kind](text, column);
};

type Reading = (text: string, column: Column) => unknown;

const scaled: Reading = (text, { scale, unit }) => {
  const value = numberIn(withoutUnit(text, unit));
  return value === undefined ? text : settled(value * scale);
};

/** '45 EUR', '45 EUR/h' and '18 %' where the head of the column says EUR/h and %; another currency is no number, and is told. */
const withoutUnit = (text: string, unit: string): string => {
  const said = [unit, unit.split('/')[0] ?? ''].find((u) => u !== '' && text.toUpperCase().endsWith(u.toUpperCase()));
  return said === undefined ? text : text.slice(0, -said.length).trim();
};

const entriesIn = (text: string): readonly string[] =>
  text
    .split(';')
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '');

const READERS: Readonly<Record<Column['kind'], Reading>> = {
  number: scaled,
  text: (text) => text,
  choice: (text) => text,
  yes: (text) => YES.has(text.toLowerCase()),
  numbers: (text, column) => entriesIn(text).map((entry) => scaled(entry, column)),
  words: entriesIn,
  rows: (text, column) => entriesIn(text).map((entry) => entryIn(entry, column)),
  prices: (text, column) =>
    Object.fromEntries(
      entriesIn(text).map((entry) => {
        const at = entry.lastIndexOf(' ');
        return at < 0 ? [entry, ''] : [entry.slice(0, at).trim(), scaled(entry.slice(at + 1), column)];
      }),
    ),
};

const entryIn = (text: string, column: Column): Row => {
  const values = text.split('/').map((value) => value.trim());
  const entries = column.parts.flatMap(({ key, isNumber }, i): readonly (readonly [string, unknown])[] => {
    const value = values[i] ?? '';
    if (value === '') return [];
    return [[key, isNumber ? scaled(value, column) : value]];
  });
  return Object.fromEntries(entries);
};

const YES = new Set(['yes', 'y', 'true', '1', 'x']);

/** Without the last bits that a change of unit leaves. */
const settled = (value: number): number => Number(value.toPrecision(12));

/** '1,5' and '1.5'; with both marks the last one is the decimal mark. */
const numberIn = (text: string): number | undefined => {
  const last = Math.max(text.lastIndexOf(','), text.lastIndexOf('.'));
  const plain = last < 0 ? text : `${text.slice(0, last).replace(/[.,\s]/g, '')}.${text.slice(last + 1)}`;
  const value = Number(plain.replace(/\s/g, ''));
  return plain.trim() === '' || !Number.isFinite(value) ? undefined : value;
};

/** Rows and cells of what a spreadsheet copied: tabs between cells, quotation marks round those that hold tabs or line breaks. */
export const gridOf = (text: string): readonly (readonly string[])[] => {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < text.length; i += 1) {
    const c = text[i] as string;
    if (quoted && c === '"' && text[i + 1] === '"') {
      cell += '"';
      i += 1;
    } else if (c === '"' && (quoted || cell === '')) quoted = !quoted;
    else if (!quoted && (c === '\t' || c === '\n')) {
      rows.at(-1)?.push(cell);
      cell = '';
      if (c === '\n') rows.push([]);
    } else if (c !== '\r' || quoted) cell += c;
  }
  rows.at(-1)?.push(cell);
  return rows.filter((row, i) => i < rows.length - 1 || row.length > 1 || row[0] !== '');
};

export interface Pasted {
  readonly rows: readonly Input[];
  readonly cells: readonly { readonly row: number; readonly column: Column }[];
}

/** A grid laid over the rows from a cell on, each cell as if it were `typed`; rows that are not there yet are added, columns that are not there are left out. */
export const withPaste = (
  rows: readonly Input[],
  columns: readonly Column[],
  typed: (row: Input, column: Column, text: string) => Input,
  at: { readonly row: number; readonly column: number },
  text: string,
): Pasted => {
  const next = [...rows];
  const cells: { row: number; column: Column }[] = [];
  gridOf(text).forEach((line, i) => {
    line.forEach((value, j) => {
      const column = columns[at.column + j];
      if (column === undefined) return;
      const row = at.row + i;
      next[row] = typed(next[row] ?? {}, column, value);
      cells.push({ row, column });
    });
  });
  return { rows: next, cells };
};
