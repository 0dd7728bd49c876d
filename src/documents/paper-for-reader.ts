/** A paper in the units and marks of whoever reads it. What is to be typed into the control stays in the unit of the program. */
import { restated, restatedAmount, restatedUnits, type Telling } from '../text/print/restate.ts';
import type { SaidUnit } from '../text/print/said.ts';
import type { Column, Paper, PaperBlock } from './paper.ts';

export const toldPaper = (paper: Paper, telling: Telling): Paper => ({
  ...paper,
  blocks: paper.blocks.map((block) => toldBlock(block, telling)),
});

type Table = Extract<PaperBlock, { kind: 'table' }>;

const toldBlock = (block: PaperBlock, telling: Telling): PaperBlock => {
  const told = (text: string): string => restated(text, telling);
  if (block.kind === 'heading') return { ...block, text: told(block.text) };
  if (block.kind === 'text') return { ...block, text: block.control === true ? marksOnly(block.text, telling) : told(block.text) };
  if (block.kind === 'pairs') return { ...block, rows: block.rows.map(([label, value]) => [told(label), told(value)] as const) };
  if (block.kind === 'list') return { ...block, items: block.items.map(told) };
  if (block.kind === 'table') return toldTable(block, telling);
  const bar = { unit: telling.length, decimal: telling.decimalMark };
  return { ...block, picture: { ...block.picture, bar }, caption: told(restatedUnits(block.caption, telling)) };
};

export const toldTable = (table: Table, telling: Telling): Table => {
  const { columns, rows, note, units } = table;
  const control = columns.some((c) => c.holds === 'control');
  return {
    ...table,
    columns: columns.map((c) => ({ ...c, title: c.holds === 'control' ? c.title : restated(restatedUnits(c.title, telling), telling) })),
    rows: rows.map((row, i) => row.map((cell, j) => toldCell(cell, columns[j], units?.[i], telling))),
    // A note on columns of the control names its unit.
    note: note === undefined ? undefined : restated(control ? note : restatedUnits(note, telling), telling),
  };
};

const toldCell = (cell: string, column: Column | undefined, unit: SaidUnit | undefined, telling: Telling): string => {
  if (column?.holds === 'control') return marksOnly(cell, telling);
  const under = column?.holds === 'amount' ? unit : unitAtEnd(column?.title ?? '');
  return under === undefined || !/\d$/.test(cell) ? restated(cell, telling) : restatedAmount(cell, under, telling);
};

/** The unit that a heading ends in, which its cells then leave out: 'Gap mm', 'Finish asked for, µm'. */
const unitAtEnd = (title: string): SaidUnit | undefined => /(?:^|[ ,])(mm\/min|mm|µm)$/u.exec(title)?.[1] as SaidUnit | undefined;

const marksOnly = (text: string, telling: Telling): string =>
  restated(text, { ...telling, length: 'mm', finish: 'µm', drawn: 1, places: 'mm' });
