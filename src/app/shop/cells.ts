/** Cells of the shop's tables as texts and back, and what a spreadsheet puts on the clipboard. */
import { changed, type Input, valueAt } from '../state/input.ts';
import type { Column } from './columns.ts';

/** As a cell shows it. */
export const cellText = (row: Input, { path, kind }: Column, decimalMark: string): string => {
  const value = valueAt(row, path);
  if (value === undefined) return '';
  if (kind === 'json') return JSON.stringify(value);
  if (kind === 'yes') return value === true ? 'yes' : 'no';
  return typeof value === 'number' ? String(value).replace('.', decimalMark) : String(value);
};

/** The row with one cell changed. A text that is no number stays a text, so that the schema can say what is wrong and nothing is lost. */
export const withCell = (row: Input, column: Column, text: string): Input => changed(row, { [column.path]: cellValue(column, text) });

const cellValue = ({ kind }: Column, text: string): unknown => {
  const trimmed = text.trim();
  if (trimmed === '') return undefined;
  if (kind === 'number') return numberIn(trimmed) ?? trimmed;
  if (kind === 'yes') return YES.has(trimmed.toLowerCase());
  return kind === 'json' ? jsonIn(trimmed) : trimmed;
};

const YES = new Set(['yes', 'y', 'true', '1', 'x']);

/** '1,5' and '1.5'; with both marks the last one is the decimal mark. */
const numberIn = (text: string): number | undefined => {
  const last = Math.max(text.lastIndexOf(','), text.lastIndexOf('.'));
  const plain = last < 0 ? text : `${text.slice(0, last).replace(/[.,\s]/g, '')}.${text.slice(last + 1)}`;
  const value = Number(plain.replace(/\s/g, ''));
  return plain.trim() === '' || !Number.isFinite(value) ? undefined : value;
};

const jsonIn = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
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

/** A grid laid over the rows from a cell on; rows that are not there yet are added, columns that are not there are left out. */
export const withPaste = (
  rows: readonly Input[],
  columns: readonly Column[],
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
      next[row] = withCell(next[row] ?? {}, column, value);
      cells.push({ row, column });
    });
  });
  return { rows: next, cells };
};
