/** Plain text in columns and paragraphs. */
import { count } from '../text/part.ts';
import { HOUSE, type Reader } from '../text/reader.ts';
import { phrases, say } from '../text/say.ts';
import type { Said, TableBlock, WrittenTable } from './paper.ts';
import { printedTable, told, toldTied } from './paper-for-reader.ts';

const WIDTH = 100;
const MOST_ROWS = 40;
/** Stands for a blank that no line is broken at until lines are broken; no text has this character. */
const TIE = '\ufdd0';

/** Paragraphs and tables as somebody reads numbers. */
export interface Printer {
  readonly said: (said: Said) => string;
  readonly wrapped: (said: Said, lead: string) => string;
  readonly tableText: (table: WrittenTable) => string;
}

export const printerIn = (reader: Reader): Printer => ({
  said: (said) => told(said, reader),
  wrapped: (said, lead) => brokenInto(toldTied(said, reader, TIE), lead),
  tableText: (table) => inColumns(printedTable(table, reader, TIE), reader),
});

/** Breaks a text into lines, the first led by `lead`, the others by as many blanks. */
export const brokenInto = (text: string, lead: string): string => {
  const lines: string[] = [];
  let current = lead;
  for (const word of text.split(' ')) {
    if (current.length + word.length + 1 > WIDTH && current.trim() !== '') {
      lines.push(current.trimEnd());
      current = ' '.repeat(lead.length);
    }
    current += `${word} `;
  }
  return [...lines, current.trimEnd()].join('\n').replaceAll(TIE, ' ');
};

/** A table in columns just wide enough. */
export const inColumns = (table: TableBlock, reader: Reader = HOUSE): string => {
  const titles = table.columns.map((c) => c.title);
  const rows = table.rows.slice(0, MOST_ROWS);
  const all = titles.some((t) => t !== '') ? [titles, ...rows] : rows;
  const widths = titles.map((_, i) => Math.max(...all.map((r) => (r[i] ?? '').length)));
  const lines = all.map((row) =>
    `  ${row.map((cell, i) => (table.columns[i]?.align === 'right' ? cell.padStart(widths[i] as number) : cell.padEnd(widths[i] as number))).join('  ')}`.trimEnd(),
  );
  const cut = table.rows.length - rows.length;
  return [
    ...lines,
    ...(cut > 0 ? [`  ${told(words.more(cut), reader)}`] : []),
    ...(table.note === undefined ? [] : [brokenInto(table.note, '  ')]),
  ].join('\n');
};

const words = phrases('table', { more: (rows: number) => say`and ${{ rows: count(rows) }} more` });

export const AS_IT_IS: Printer = printerIn(HOUSE);
export const { tableText, wrapped } = AS_IT_IS;
