/** Tables and label-value pairs on a page. */
import type { Column, PaperBlock } from '../paper.ts';
import { heightOf, INK, need, newPage, PAGE, type PdfPen, PENCIL, put, roomLeft, rule, WIDTH, type Written, write } from './pen.ts';

const SIZE = 8.2;
const GAP = 10;
const PAD = 1.7;

type TextStyle = Pick<Written, 'size' | 'face' | 'colour'>;
const HEAD: TextStyle = { size: SIZE - 0.7, face: 'bold', colour: PENCIL };
const ROW: TextStyle = { size: SIZE, face: 'plain', colour: INK };

interface Cell {
  readonly x: number;
  readonly width: number;
  readonly align: Column['align'];
}

const cellsOf = (columns: readonly Column[]): readonly Cell[] => {
  const sum = columns.reduce((s, c) => s + c.width, 0);
  const room = WIDTH - GAP * (columns.length - 1);
  let x: number = PAGE.margin;
  return columns.map((c) => {
    const cell = { x, width: (c.width / sum) * room, align: c.align };
    x += cell.width + GAP;
    return cell;
  });
};

/** A table; its head is repeated on every page it runs onto, and no row is split. */
export const drawTable = (pen: PdfPen, table: Extract<PaperBlock, { kind: 'table' }>): void => {
  const cells = cellsOf(table.columns);
  const titles = table.columns.map((c) => c.title);
  const head = (): void => {
    drawRow(pen, cells, titles, HEAD);
    rule(pen, pen.y - 1);
    pen.y += 1;
  };
  need(pen, rowHeight(pen, cells, titles, HEAD) + 4 * (SIZE + 2 * PAD));
  head();
  for (const row of table.rows) {
    if (rowHeight(pen, cells, row, ROW) > roomLeft(pen)) {
      newPage(pen);
      head();
    }
    drawRow(pen, cells, row, ROW);
  }
  rule(pen, pen.y);
  pen.y += 3;
  if (table.note !== undefined) write(pen, table.note, { size: 7.4, colour: PENCIL });
  pen.y += 6;
};

const rowHeight = (pen: PdfPen, cells: readonly Cell[], row: readonly string[], style: TextStyle): number =>
  Math.max(...cells.map((c, i) => heightOf(pen, row[i] ?? '', { ...style, width: c.width }))) + 2 * PAD;

const drawRow = (pen: PdfPen, cells: readonly Cell[], row: readonly string[], style: TextStyle): void => {
  const height = rowHeight(pen, cells, row, style);
  cells.forEach((c, i) => {
    put(pen, row[i] ?? '', pen.y + PAD, { ...style, x: c.x, width: c.width, align: c.align });
  });
  pen.y += height;
};

/** Labels with their values, in two columns of pairs. */
export const drawPairs = (pen: PdfPen, rows: readonly (readonly [string, string])[]): void => {
  const half = Math.ceil(rows.length / 2);
  const columnWidth = (WIDTH - 14) / 2;
  const label = columnWidth * 0.36;
  for (let i = 0; i < half; i++) {
    const pair = [rows[i], rows[i + half]].filter((r) => r !== undefined);
    const height =
      Math.max(
        ...pair.flatMap(([l, v]) => [
          heightOf(pen, l, { size: SIZE, width: label }),
          heightOf(pen, v, { size: SIZE, width: columnWidth - label }),
        ]),
      ) + 3;
    need(pen, height);
    pair.forEach(([l, v], k) => {
      const x = PAGE.margin + k * (columnWidth + 14);
      put(pen, l, pen.y, { size: SIZE, colour: PENCIL, x, width: label - 4 });
      put(pen, v, pen.y, { size: SIZE, x: x + label, width: columnWidth - label });
    });
    pen.y += height;
  }
  pen.y += 6;
};
