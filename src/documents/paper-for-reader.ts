/** A paper in the words, units and marks of whoever reads it. What is to be typed into the control has no unit of its own and stays. */
import { print } from '../text/print/print.ts';
import { printTied } from '../text/print/tied.ts';
import type { Reader } from '../text/reader.ts';
import { only } from '../text/say.ts';
import type { Paper, PaperBlock, Said, TableBlock, WrittenBlock, WrittenPaper, WrittenTable } from './paper.ts';

export const printedPaper = ({ title, subtitle, foot, blocks }: WrittenPaper, reader: Reader): Paper => ({
  title: told(title, reader),
  subtitle: told(subtitle, reader),
  foot: told(foot, reader),
  blocks: blocks.map((block) => printedBlock(block, reader)),
});

export const told = (said: Said, reader: Reader): string => print('kind' in said ? only(said) : said, reader);

/** The same for a text that will be broken into lines. */
export const toldTied = (said: Said, reader: Reader, tie: string): string => printTied('kind' in said ? only(said) : said, reader, tie);

/** On paper and page. */
const NO_BREAK = '\u00a0';

const printedBlock = (block: WrittenBlock, reader: Reader): PaperBlock => {
  if (block.kind === 'heading') return { ...block, text: told(block.text, reader) };
  if (block.kind === 'text') return { ...block, text: toldTied(block.text, reader, NO_BREAK) };
  if (block.kind === 'pairs')
    return { ...block, rows: block.rows.map(([label, value]) => [told(label, reader), told(value, reader)] as const) };
  if (block.kind === 'list') return { ...block, items: block.items.map((item) => toldTied(item, reader, NO_BREAK)) };
  if (block.kind === 'table') return printedTable(block, reader);
  const bar = { unit: reader.length, decimal: reader.decimalMark };
  const labels = block.picture.labels.map((label) => ({ ...label, text: told(label.text, reader) }));
  return { ...block, picture: { ...block.picture, labels, bar }, caption: toldTied(block.caption, reader, NO_BREAK) };
};

export const printedTable = ({ columns, rows, note, ...table }: WrittenTable, reader: Reader, tie = NO_BREAK): TableBlock => ({
  ...table,
  columns: columns.map((c) => ({ ...c, title: told(c.title, reader) })),
  rows: rows.map((row) => row.map((cell) => told(cell, reader))),
  note: note === undefined ? undefined : toldTied(note, reader, tie),
});
