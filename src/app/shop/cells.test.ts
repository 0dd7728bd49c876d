/** The tables of the shop: columns from the schema, cells as texts, pasting. */
import { describe, expect, it } from 'vitest';
import { houseShop } from '../../job/house-shop.ts';
import { cellText, gridOf, withCell, withPaste } from './cells.ts';
import { columnsOf, TABLES } from './columns.ts';

const point = '.';

describe('tables of the shop', () => {
  it('have the columns of the file, with the help it gives', () => {
    const wires = columnsOf('wires');
    expect(wires.find((c) => c.path === 'diameter')).toMatchObject({ kind: 'number', help: 'mm' });
    expect(wires.find((c) => c.path === 'kind')?.choices).toContain('brass');
    expect(columnsOf('rates').map((c) => c.path)).toContain('minutes.load');
    for (const table of TABLES) expect(columnsOf(table).length).toBeGreaterThan(2);
  });

  it('give back every value of a shop that they show', () => {
    for (const table of TABLES)
      for (const row of (houseShop[table] ?? []) as readonly Record<string, unknown>[]) {
        const again = columnsOf(table).reduce((r, c) => withCell(r, c, cellText(row, c, point)), row as Readonly<Record<string, unknown>>);
        expect(again).toEqual(row);
      }
  });
});

describe('pasting from a spreadsheet', () => {
  it('reads tabs, lines and quotation marks', () => {
    expect(gridOf('a\tb\r\n"c ""1"""\t"two\nlines"\r\n')).toEqual([
      ['a', 'b'],
      ['c "1"', 'two\nlines'],
    ]);
  });

  it('fills cells from where one stands and adds rows, with decimal commas', () => {
    const wires = columnsOf('wires');
    const at = wires.findIndex((c) => c.path === 'diameter');
    const { rows, cells } = withPaste([{ id: 'a', diameter: 0.2 }], wires, { row: 0, column: at }, '0,25\tbrass\n0,3\tmolybdenum\n');
    expect(rows).toEqual([
      { id: 'a', diameter: 0.25, kind: 'brass' },
      { diameter: 0.3, kind: 'molybdenum' },
    ]);
    expect(cells).toHaveLength(4);
  });

  it('keeps what is no number as it was typed, for the schema to judge', () => {
    const column = columnsOf('wires').find((c) => c.path === 'diameter');
    if (column === undefined) throw new Error('no diameter');
    expect(withCell({}, column, 'thick')).toEqual({ diameter: 'thick' });
    expect(withCell({}, column, '1.234,5')).toEqual({ diameter: 1234.5 });
  });
});
