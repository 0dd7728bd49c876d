/** One table of the shop. A cell is typed over or pasted into; below it stands since when its value holds and where it comes from. */

import { type ClipboardEvent, type ReactNode, useId, useState } from 'react';
import type { ShopRecord } from '../../server/message/answers.ts';
import { decimalMark } from '../../text/print/local.ts';
import type { Input } from '../state/input.ts';
import { today } from '../state/open-sheet.ts';
import { useSaid, useWords } from '../words/use-words.ts';
import { cellText, withPaste } from './cells.ts';
import { type Column, columnsOf, inCurrency, type TableKey } from './columns.ts';
import { currenciesOf, currencyOfRow, withTyped, withWiresFollowing } from './currency.ts';
import { basisKey, faultAt, rowsOf, type ShopFault, withRows } from './shop-state.ts';

export interface ShopTableProps {
  readonly table: TableKey;
  readonly record: ShopRecord;
  readonly faults: readonly ShopFault[];
  readonly onEdit: (record: ShopRecord) => void;
}

interface CellAt {
  readonly row: number;
  readonly column: number;
}

const MARK = decimalMark();

/** What is typed into a cell of money counts in the currency of its own row. */
const typedInCurrency =
  (table: ShopTableProps['table'], currencyIn: (row: Input) => string) =>
  (row: Input, column: Column, text: string): Input =>
    withTyped(table, row, inCurrency(table, column, currencyIn(row)), text, currencyIn(row));

export const ShopTable = ({ table, record, faults, onEdit }: ShopTableProps): ReactNode => {
  const words = useWords().shop;
  const title = useId();
  const rows = rowsOf(record, table);
  const currencies = currenciesOf(record, table, today());
  const columns = columnsOf(table, currencies.join(' | '));
  const currencyIn = (row: Input): string => currencyOfRow(record, table, row, today());
  const typed = typedInCurrency(table, currencyIn);
  const [at, setAt] = useState<CellAt>();
  const [told, setTold] = useState('');
  const put = (next: readonly Input[], cells: readonly { readonly row: number; readonly column: string }[], basis: string): void => {
    const edited = withRows(record, table, { rows: next, cells, basis: { on: today(), basis } });
    onEdit(table === 'rates' ? withWiresFollowing(record, edited, today()) : edited);
  };
  const paste = (event: ClipboardEvent, spot: CellAt): void => {
    const text = event.clipboardData.getData('text/plain');
    if (!/[\t\n]/.test(text.trimEnd())) return;
    event.preventDefault();
    const pasted = withPaste(rows, columns, typed, spot, text);
    const cells = pasted.cells.map((c) => ({ row: c.row, column: c.column.path }));
    put(pasted.rows, cells, words.pasted);
    setTold(words.pastedCells(pasted.cells.length));
  };
  const keep = (row: number, column: Column, text: string): void =>
    put(rows.with(row, typed(rows[row] ?? {}, column, text)), [{ row, column: column.path }], words.typed);
  return (
    <section aria-labelledby={title}>
      <h2 id={title}>{words.table(table)}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      {/* biome-ignore lint/a11y/useSemanticElements: a field set would promise fields of one kind */}
      <div className="scrolls" tabIndex={0} role="group" aria-label={words.cells(words.table(table))}>
        <table>
          <Head table={table} columns={columns} />
          <tbody>
            {keyed(rows).map(({ key, item: row }) => (
              <Row
                key={key}
                {...{ table, columns, row, faults }}
                index={key}
                currency={currencyIn(row)}
                isMixed={currencies.length > 1}
                onFocus={(column) => setAt({ row: key, column })}
                onPaste={(event, column) => paste(event, { row: key, column })}
                onKeep={(column, text) => keep(key, column, text)}
                onRemove={() => put(rows.toSpliced(key, 1), [], '')}
              />
            ))}
          </tbody>
        </table>
      </div>
      <button type="button" onClick={() => put([...rows, rows.at(-1) === undefined ? {} : copyOf(rows.at(-1) as Input)], [], '')}>
        {words.add(table)}
      </button>
      <span role="status">{told}</span>
      {at === undefined || rows[at.row] === undefined ? null : (
        <BasisLine {...{ table, record, at, onEdit }} row={rows[at.row] as Input} column={columns[at.column] as Column} />
      )}
    </section>
  );
};

const Head = ({ table, columns }: Pick<RowProps, 'table' | 'columns'>): ReactNode => {
  const words = useWords().shop;
  const printed = useSaid();
  return (
    <thead>
      <tr>
        {columns.map((c) => (
          <th key={c.path} scope="col" title={c.help && printed(c.help)}>
            {words.head(table, c.path, c.unit)}
          </th>
        ))}
        <td />
      </tr>
    </thead>
  );
};

interface RowProps {
  readonly table: TableKey;
  readonly columns: readonly Column[];
  readonly row: Input;
  readonly index: number;
  readonly faults: readonly ShopFault[];
  readonly currency: string;
  /** Other rows are in another currency, so that its cells say in which they are. */
  readonly isMixed: boolean;
  readonly onFocus: (column: number) => void;
  readonly onPaste: (event: ClipboardEvent, column: number) => void;
  readonly onKeep: (column: Column, text: string) => void;
  readonly onRemove: () => void;
}

const Row = ({ table, columns, row, index, faults, currency, isMixed, onFocus, onPaste, onKeep, onRemove }: RowProps): ReactNode => {
  const words = useWords().shop;
  return (
    <tr>
      {columns.map((column, j) => (
        <td key={column.path}>
          <Cell
            column={column}
            label={`${words.table(table)}, ${words.row} ${index + 1}, ${words.head(table, column.path, column.unit)}`}
            text={shownIn(row, inCurrency(table, column, currency), isMixed)}
            fault={faultAt(faults, table, index, column.path)}
            onFocus={() => onFocus(j)}
            onPaste={(event) => onPaste(event, j)}
            onKeep={(text) => onKeep(column, text)}
          />
        </td>
      ))}
      <td>
        <button type="button" onClick={onRemove} aria-label={words.remove(nameOf(row, index))}>
          ×
        </button>
      </td>
    </tr>
  );
};

/** '45.00 EUR' where the rows of a table are not all in one currency. */
const shownIn = (row: Input, column: Column, isMixed: boolean): string => {
  const text = cellText(row, column, MARK);
  return isMixed && column.kind === 'number' && column.isMoney && text !== '' ? `${text} ${column.unit.slice(0, 3)}` : text;
};

const keyed = <T,>(items: readonly T[]) => items.map((item, key) => ({ key, item }));

const nameOf = (row: Input, index: number): string => String(row['name'] ?? row['id'] ?? row['from'] ?? index + 1);

/** A new row begins as the last one, under another key. */
const copyOf = (row: Input): Input => {
  if (!('id' in row)) return row;
  const copy = { ...row, id: `${String(row['id'])}-2` };
  return 'name' in row ? { ...copy, name: `${String(row['name'])} 2` } : copy;
};

interface CellProps {
  readonly column: Column;
  readonly label: string;
  readonly text: string;
  readonly fault: string | undefined;
  readonly onFocus: () => void;
  readonly onPaste: (event: ClipboardEvent) => void;
  readonly onKeep: (text: string) => void;
}

const Cell = ({ column, label, text, fault, onFocus, onPaste, onKeep }: CellProps): ReactNode => {
  const words = useWords().shop;
  const common = { 'aria-label': label, 'aria-invalid': fault !== undefined, title: fault, onFocus };
  if (column.kind === 'choice' || column.kind === 'yes')
    return (
      <select {...common} value={text} onChange={(e) => onKeep(e.target.value)}>
        {column.kind === 'yes' ? null : <option value="" />}
        {(column.kind === 'yes' ? [words.yes, words.no] : column.choices).map((c) => (
          <option key={c}>{c}</option>
        ))}
      </select>
    );
  return (
    <input
      {...common}
      key={text}
      defaultValue={text}
      size={Math.min(28, Math.max(column.kind === 'number' ? 6 : 10, text.length + 1))}
      data-kind={column.kind}
      onPaste={onPaste}
      onBlur={(e) => e.target.value !== text && onKeep(e.target.value)}
      onKeyDown={(e) => e.key === 'Enter' && e.currentTarget.blur()}
      autoComplete="off"
      spellCheck={false}
    />
  );
};

interface BasisProps {
  readonly table: TableKey;
  readonly record: ShopRecord;
  readonly row: Input;
  readonly at: CellAt;
  readonly column: Column;
  readonly onEdit: (record: ShopRecord) => void;
}

/** Of the cell that was last stood in: since when its value holds and where it comes from. */
const BasisLine = ({ table, record, row, at, column, onEdit }: BasisProps): ReactNode => {
  const words = useWords().shop;
  const key = basisKey(table, row, at.row, column.path);
  const said = record.sources?.[key];
  const put = (change: Partial<{ on: string; basis: string }>): void =>
    onEdit({ ...record, sources: { ...record.sources, [key]: { on: said?.on ?? today(), basis: said?.basis ?? '', ...change } } });
  return (
    <fieldset className="basis">
      <legend>{words.basisOf(`${nameOf(row, at.row)}, ${words.head(table, column.path, column.unit)}`)}</legend>
      <label>
        {words.on}
        <input type="date" value={said?.on ?? ''} onChange={(e) => e.target.value !== '' && put({ on: e.target.value })} />
      </label>
      <label>
        {words.basis}
        <input value={said?.basis ?? ''} placeholder={words.none} maxLength={200} onChange={(e) => put({ basis: e.target.value })} />
      </label>
    </fieldset>
  );
};
