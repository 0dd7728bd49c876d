/** The tables of the shop: columns from the schema, cells as texts, pasting. */
import { describe, expect, it } from 'vitest';
import { builtInShop } from '../../job/built-in-shop.ts';
import { printPlain } from '../../text/print/print.ts';
import { HOUSE } from '../../text/reader.ts';
import { wordsFor } from '../words/words-for.ts';
import { cellText, gridOf, withCell, withPaste } from './cells.ts';
import { columnsOf, TABLES } from './columns.ts';

const point = '.';

describe('tables of the shop', () => {
  it('have the columns of the file, with the help it gives', () => {
    const wires = columnsOf('wires', 'EUR');
    const diameter = wires.find((c) => c.path === 'diameter');
    expect([diameter?.kind, diameter?.help && printPlain(diameter.help)]).toEqual(['number', 'mm']);
    expect(wires.find((c) => c.path === 'kind')?.choices).toContain('brass');
    expect(columnsOf('rates', 'EUR').map((c) => c.path)).toContain('minutes.load');
    for (const table of TABLES) expect(columnsOf(table, 'EUR').length).toBeGreaterThan(2);
  });

  it('give back every value of a shop that they show', () => {
    for (const table of TABLES)
      for (const row of (builtInShop[table] ?? []) as readonly Record<string, unknown>[]) {
        const again = columnsOf(table, 'EUR').reduce(
          (r, c) => withCell(r, c, cellText(row, c, point)),
          row as Readonly<Record<string, unknown>>,
        );
        expect(again).toEqual(row);
      }
  });
});

describe('cells of the shop', () => {
  const columnAt = (table: (typeof TABLES)[number], path: string, currency = 'EUR') => {
    const column = columnsOf(table, currency).find((c) => c.path === path);
    if (column === undefined) throw new Error(`no column ${path}`);
    return column;
  };

  it('show money in the currency and shares in percent, and keep them as the file has them', () => {
    const price = columnAt('wires', 'price');
    expect([price.unit, cellText({ price: 1150 }, price, ','), cellText({ price: 1095.5 }, price, '.')]).toEqual([
      'EUR/kg',
      '11,50',
      '10.955',
    ]);
    expect(withCell({}, price, '10,955')).toEqual({ price: 1095.5 });
    const yen = columnAt('wires', 'price', 'JPY');
    expect([yen.unit, cellText({ price: 1150 }, yen, '.'), withCell({}, yen, '1150')]).toEqual(['JPY/kg', '1150', { price: 1150 }]);
    const markup = columnAt('rates', 'markup');
    expect([markup.unit, cellText({ markup: 0.18 }, markup, '.'), withCell({}, markup, '7')]).toEqual(['%', '18', { markup: 0.07 }]);
    const machine = columnAt('rates', 'machineHour');
    const typed = (text: string): unknown => withCell({}, machine, text)['machineHour'];
    expect(['45', '45,00 EUR', '45 EUR/h', '45.00eur', '45 USD', '45 %'].map(typed)).toEqual([4500, 4500, 4500, 4500, '45 USD', '45 %']);
    expect(withCell({}, markup, '18 %')).toEqual({ markup: 0.18 });
  });

  it('show lists, prices by key and passes without brackets, and read them again', () => {
    const again = (table: (typeof TABLES)[number], path: string, value: unknown): string => {
      const column = columnAt(table, path);
      const text = cellText({ [path]: value }, column, ',');
      expect(withCell({}, column, text)).toEqual({ [path]: value });
      return text;
    };
    expect(again('machines', 'energySettings', [1, 0.891])).toBe('1; 0,891');
    expect(again('shifts', 'days', ['Mon', 'Tue'])).toBe('Mon; Tue');
    expect(again('shifts', 'breaks', [{ from: '09:00', to: '09:15' }])).toBe('09:00 / 09:15');
    expect(again('rates', 'materialPrices', { d2: 950, 'shop-steel': 900 })).toBe('d2 9,50; shop-steel 9,00');
    const passes = [
      { offset: 0.192, feed: 3.1, ra: 2.5, gap: 0.03 },
      { offset: 0.14, feed: 5, ra: 1.2 },
    ];
    expect(again('passTables', 'passes', passes)).toBe('0,192 / 3,1 / 2,5 / 0,03; 0,14 / 5 / 1,2');
  });

  it('have a head of their own, every one', () => {
    for (const table of TABLES)
      for (const { path, unit } of columnsOf(table, 'EUR')) {
        const head = wordsFor(HOUSE).shop.head(table, path, unit);
        expect([path, /^[A-Z]/.test(head)]).toEqual([path, true]);
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
    const wires = columnsOf('wires', 'EUR');
    const at = wires.findIndex((c) => c.path === 'diameter');
    const { rows, cells } = withPaste(
      [{ id: 'a', diameter: 0.2 }],
      wires,
      withCell,
      { row: 0, column: at },
      '0,25\tbrass\n0,3\tmolybdenum\n',
    );
    expect(rows).toEqual([
      { id: 'a', diameter: 0.25, kind: 'brass' },
      { diameter: 0.3, kind: 'molybdenum' },
    ]);
    expect(cells).toHaveLength(4);
  });

  it('keeps what is no number as it was typed, for the schema to judge', () => {
    const column = columnsOf('wires', 'EUR').find((c) => c.path === 'diameter');
    if (column === undefined) throw new Error('no diameter');
    expect(withCell({}, column, 'thick')).toEqual({ diameter: 'thick' });
    expect(withCell({}, column, '1.234,5')).toEqual({ diameter: 1234.5 });
  });
});
