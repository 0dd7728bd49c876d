/** What the pages of the shop say. */
import { count, name as given } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { ready } from './ready.ts';
import { columnHead } from './shop-columns.ts';

const TABLES: Readonly<Record<string, Text>> = phrases('page.shop-table', {
  wires: say`Wires`,
  materials: say`Materials`,
  machines: say`Machines`,
  rates: say`Rates`,
  shifts: say`Shifts`,
  passTables: say`Pass tables`,
});

const ROWS: Readonly<Record<string, Text>> = phrases('page.shop-row', {
  wires: say`wire`,
  materials: say`material`,
  machines: say`machine`,
  rates: say`set of rates`,
  shifts: say`shift`,
  passTables: say`pass table`,
  other: say`row`,
});

export const shopWords = phrases('page.shop', {
  title: say`Shop`,
  back: say`All jobs`,
  intro: say`What the shop has and charges; every job is calculated with it. Cells can be pasted from a spreadsheet: select the first cell and paste.`,
  name: say`Shop name on papers`,
  quotationDays: say`Quotation valid for, days`,
  terms: say`Terms on quotations, as you type them`,
  table: (key: string) => TABLES[key] ?? only(given(key)),
  add: (key: string) => say`Add a ${{ row: ROWS[key] ?? only(given(key)) }}`,
  remove: (name: string) => say`Remove ${{ name: given(name) }}`,
  row: say`Row`,
  cells: (table: string) => say`${{ table: ready(table) }}, cells`,
  save: say`Save the shop`,
  saved: say`Saved.`,
  unsaved: say`Not saved yet.`,
  undo: say`Undo`,
  faults: say`Not saved: these values cannot be used.`,
  gone: say`The server does not answer. Nothing is lost as long as this page stays open; try again.`,
  elsewhere: say`The shop was changed elsewhere in the meantime. Save again to overwrite it with the values of this page, or reload.`,
  loadAnew: say`Reload`,
  basisOf: (cell: string) => say`Basis of ${{ cell: ready(cell) }}`,
  basis: say`Source`,
  on: say`As of`,
  none: say`not specified`,
  typed: say`typed in`,
  pasted: say`pasted`,
  pastedCells: (n: number) => say`${{ n: count(n) }} cells pasted.`,
  dialect: say`Control dialect`,
  dialectHelp: say`Empty means standard words only; everything else becomes a stop with a message.`,
  loadDialect: say`Load a dialect file`,
  yes: say`yes`,
  no: say`no`,
  head: columnHead,
});
