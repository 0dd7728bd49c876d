/** In which currency a row of the shop keeps its money, and what happens to its numbers where that is changed: what the owner sees stays as he typed it. */
import type { ShopRecord } from '../../server/message/answers.ts';
import type { Input } from '../state/input.ts';
import { cellText, withCell } from './cells.ts';
import { type Column, columnsOf, type TableKey } from './columns.ts';
import { rowsOf } from './shop-state.ts';

const USUAL = 'EUR';

const named = (row: Input | undefined): string | undefined => {
  const said = row?.['currency'];
  return typeof said === 'string' && /^[A-Za-z]{3}$/.test(said) ? said.toUpperCase() : undefined;
};

/** Of the rates in force on a day; of the last ones where none are, EUR where they name none. */
const currencyOn = (rates: readonly Input[], day: string): string => {
  const inForce = rates
    .filter((r) => String(r['from'] ?? '') <= day)
    .toSorted((a, b) => String(b['from'] ?? '').localeCompare(String(a['from'] ?? '')))[0];
  return named(inForce ?? rates.at(-1)) ?? USUAL;
};

/** A block of rates has its own currency. A wire that names none is priced in that of the rates in force on the day. */
export const currencyOfRow = (record: ShopRecord, table: TableKey, row: Input, day: string): string =>
  named(row) ?? (table === 'rates' ? USUAL : currencyOn(rowsOf(record, 'rates'), day));

/** Every currency that the rows of a table are kept in, in order of the rows. */
export const currenciesOf = (record: ShopRecord, table: TableKey, day: string): readonly string[] => [
  ...new Set(rowsOf(record, table).map((row) => currencyOfRow(record, table, row, day))),
];

/** The row with one cell changed. Where that is its currency, 45.00 stays 45: it is kept in the minor unit of the other one. */
export const withTyped = (table: TableKey, row: Input, column: Column, text: string, currency: string): Input => {
  if (column.path !== 'currency') return withCell(row, column, text);
  const next = withCell(row, column, text.toUpperCase());
  return recounted(table, next, currency, named(next) ?? currency);
};

const recounted = (table: TableKey, row: Input, from: string, to: string): Input => {
  if (from === to) return row;
  const after = columnsOf(table, to);
  return columnsOf(table, from).reduce((r, column, i) => {
    const own = after[i];
    return own === undefined || !column.isMoney ? r : withCell(r, own, cellText(row, column, '.'));
  }, row);
};

/**
 * Wires that name no currency, after the rates were changed: one other currency for all rates is theirs too; as soon as there are several,
 * each wire names the one that it was shown in.
 */
export const withWiresFollowing = (before: ShopRecord, after: ShopRecord, day: string): ShopRecord => {
  const from = currencyOn(rowsOf(before, 'rates'), day);
  const [were, now] = [currenciesOf(before, 'rates', day), currenciesOf(after, 'rates', day)];
  const [only] = now;
  if (only === undefined || were.join() === now.join()) return after;
  const wires = rowsOf(after, 'wires').map((wire) => {
    if (named(wire) !== undefined) return wire;
    return now.length > 1 ? { ...wire, currency: from } : recounted('wires', wire, from, only);
  });
  return { ...after, shop: { ...after.shop, wires } };
};
