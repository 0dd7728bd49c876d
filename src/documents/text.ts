/** Plain text in columns and paragraphs. */
import { AS_WRITTEN, restated, type Telling } from '../text/print/restate.ts';
import type { PaperBlock } from './paper.ts';
import { toldTable } from './paper-for-reader.ts';

const WIDTH = 100;
const MOST_ROWS = 40;

/** Paragraphs and tables as somebody reads numbers. */
export interface Printer {
  readonly wrapped: typeof wrapped;
  readonly tableText: typeof tableText;
}

export const printerIn = (telling: Telling): Printer => ({
  wrapped: (text, lead) => wrapped(restated(text, telling), lead),
  tableText: (table) => tableText(toldTable(table, telling)),
});

export const AS_IT_IS: Printer = printerIn(AS_WRITTEN);

/** Breaks a text into lines, the first led by `lead`, the others by as many blanks. */
export const wrapped = (text: string, lead: string): string => {
  const lines: string[] = [];
  let current = lead;
  for (const word of text.split(' ')) {
    if (current.length + word.length + 1 > WIDTH && current.trim() !== '') {
      lines.push(current.trimEnd());
      current = ' '.repeat(lead.length);
    }
    current += `${word} `;
  }
  return [...lines, current.trimEnd()].join('\n');
};

/** A table in columns just wide enough. */
export const tableText = (table: Extract<PaperBlock, { kind: 'table' }>): string => {
  const titles = table.columns.map((c) => c.title);
  const rows = table.rows.slice(0, MOST_ROWS);
  const all = titles.some((t) => t !== '') ? [titles, ...rows] : rows;
  const widths = titles.map((_, i) => Math.max(...all.map((r) => (r[i] ?? '').length)));
  const lines = all.map((row) =>
    `  ${row.map((cell, i) => (table.columns[i]?.align === 'right' ? cell.padStart(widths[i] as number) : cell.padEnd(widths[i] as number))).join('  ')}`.trimEnd(),
  );
  const cut = table.rows.length - rows.length;
  return [...lines, ...(cut > 0 ? [`  and ${cut} more`] : []), ...(table.note === undefined ? [] : [wrapped(table.note, '  ')])].join('\n');
};
