/** Money of the shop page: each row in the currency of its own block, and what was typed stays what is seen. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { ShopRecord } from '../../server/message/answers.ts';
import type { Input } from '../state/input.ts';
import { cellText } from './cells.ts';
import { type Column, columnsOf, inCurrency, type TableKey } from './columns.ts';
import { currenciesOf, currencyOfRow, withTyped, withWiresFollowing } from './currency.ts';

const DAY = '2026-12-01';
const euro = { from: '2026-01-01', currency: 'EUR', machineHour: 4500, power: 6, materialPrices: { d2: 950 } };
const yen = { from: '2027-01-01', currency: 'JPY', machineHour: 7000, power: 6 };
const wire = { id: 'brass-0.25', price: 1150 };
const shopOf = (rates: readonly Input[], wires: readonly Input[] = [wire]): ShopRecord => ({
  revision: 1,
  shop: { rates, wires },
  dialect: '',
});

const columnAt = (table: TableKey, path: string): Column => there(columnsOf(table, 'EUR').find((c) => c.path === path));
const typed = (table: TableKey, row: Input, path: string, text: string, currency: string): Input =>
  withTyped(table, row, inCurrency(table, columnAt(table, path), currency), text, currency);
const shown = (table: TableKey, row: Input, path: string, currency: string): string =>
  cellText(row, inCurrency(table, columnAt(table, path), currency), '.');

describe('a shop with rates in two currencies', () => {
  const both = shopOf([euro, yen]);

  it('shows and keeps each block in its own, whichever stands last', () => {
    for (const record of [both, shopOf([yen, euro])]) {
      expect(currencyOfRow(record, 'rates', euro, DAY)).toBe('EUR');
      expect(currencyOfRow(record, 'rates', yen, DAY)).toBe('JPY');
    }
    expect([shown('rates', euro, 'machineHour', 'EUR'), shown('rates', yen, 'machineHour', 'JPY')]).toEqual(['45.00', '7000']);
    expect(typed('rates', euro, 'machineHour', '46', 'EUR')['machineHour']).toBe(4600);
    expect(typed('rates', yen, 'machineHour', '45', 'JPY')['machineHour']).toBe(45);
    expect(typed('rates', yen, 'machineHour', '45 EUR', 'JPY')['machineHour']).toBe('45 EUR');
    expect(currenciesOf(both, 'rates', DAY)).toEqual(['EUR', 'JPY']);
  });

  it('prices a wire that names no currency in that of the rates in force, and another in its own', () => {
    expect(currencyOfRow(both, 'wires', wire, DAY)).toBe('EUR');
    expect(currencyOfRow(both, 'wires', wire, '2027-03-01')).toBe('JPY');
    expect(currencyOfRow(both, 'wires', { ...wire, currency: 'usd' }, DAY)).toBe('USD');
  });
});

describe('a currency that is typed over', () => {
  it('leaves the numbers as they are seen', () => {
    const after = typed('rates', euro, 'currency', 'jpy', 'EUR');
    expect(after).toEqual({ ...euro, currency: 'JPY', machineHour: 45, materialPrices: { d2: 9.5 } });
    expect(shown('rates', after, 'machineHour', 'JPY')).toBe('45');
    expect(typed('rates', after, 'currency', 'EUR', 'JPY')).toEqual(euro);
    expect(typed('rates', euro, 'currency', 'JP', 'EUR')).toEqual({ ...euro, currency: 'JP' });
  });

  it('is that of the wires too where all rates have it, and else each wire names the one it was shown in', () => {
    const own = { id: 'own', currency: 'USD', price: 900 };
    const wiresAfter = (after: readonly Input[]) =>
      withWiresFollowing(shopOf([euro], [wire, own]), shopOf(after, [wire, own]), DAY).shop['wires'];
    expect(wiresAfter([yen])).toEqual([{ ...wire, price: 11.5 }, own]);
    expect(wiresAfter([euro, yen])).toEqual([{ ...wire, currency: 'EUR' }, own]);
    expect(wiresAfter([{ ...euro, machineHour: 1 }])).toEqual([wire, own]);
  });
});
