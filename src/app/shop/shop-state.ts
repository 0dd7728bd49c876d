/** The shop while it is being edited: rows changed, where each value comes from, and steps to go back by. */
import type { ShopRecord } from '../../server/message/answers.ts';
import type { Input } from '../state/input.ts';
import type { TableKey } from './columns.ts';

export interface ShopFault {
  readonly path: string;
  readonly sentence: string;
}

export type Basis = NonNullable<ShopRecord['sources']>[string];

/** Where values come from is kept by the key of their row, not its place: rows come and go. */
export const basisKey = (table: TableKey, row: Input, index: number, column: string): string =>
  `${table}/${String(row['id'] ?? row['from'] ?? index + 1)}/${column}`;

export const rowsOf = ({ shop }: ShopRecord, table: TableKey): readonly Input[] => {
  const rows = shop[table];
  return Array.isArray(rows) ? (rows as readonly Input[]) : [];
};

export interface CellsChanged {
  readonly rows: readonly Input[];
  /** The cells that were typed or pasted, of which it is noted since when and from where. */
  readonly cells: readonly { readonly row: number; readonly column: string }[];
  readonly basis: Basis;
}

export const withRows = (record: ShopRecord, table: TableKey, { rows, cells, basis }: CellsChanged): ShopRecord => ({
  ...record,
  shop: { ...record.shop, [table]: rows },
  sources: {
    ...record.sources,
    ...Object.fromEntries(cells.map((c) => [basisKey(table, rows[c.row] ?? {}, c.row, c.column), basis])),
  },
});

/** Findings by the cell they speak of: 'wires.2.diameter' of the shop file. */
export const faultAt = (
  faults: readonly { readonly path: string; readonly sentence: string }[],
  table: string,
  row: number,
  column: string,
): string | undefined =>
  faults.find((f) => f.path === `${table}.${row}.${column}` || f.path.startsWith(`${table}.${row}.${column}.`))?.sentence;
