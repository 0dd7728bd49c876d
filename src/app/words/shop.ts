/** What the pages of the shop say. */
import { count, name as given } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { ready } from './ready.ts';

const TABLES: Readonly<Record<string, Text>> = phrases('page.shop-table', {
  wires: say`Wires`,
  materials: say`Materials`,
  machines: say`Machines`,
  rates: say`Rates`,
  shifts: say`Shifts`,
  passTables: say`Passes as we run them`,
});

const ROWS: Readonly<Record<string, Text>> = phrases('page.shop-row', {
  wires: say`wire`,
  materials: say`material`,
  machines: say`machine`,
  rates: say`block of rates`,
  shifts: say`shift`,
  passTables: say`table of passes`,
  other: say`row`,
});

export const shopWords = phrases('page.shop', {
  title: say`The shop`,
  back: say`All jobs`,
  intro: say`What the shop has and charges. Every job is worked out with it. Cells can be pasted from a spreadsheet: stand in the first cell and paste.`,
  name: say`Name of the shop on its papers`,
  quotationDays: say`A quotation stays valid, days`,
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
  elsewhere: say`The shop was changed elsewhere in the meantime. Save again to put this page’s values over it, or load it anew.`,
  loadAnew: say`Load it anew`,
  basisOf: (cell: string) => say`Basis of ${{ cell: ready(cell) }}`,
  basis: say`Where it comes from`,
  on: say`As of`,
  none: say`not said`,
  typed: say`typed in`,
  pasted: say`pasted`,
  pastedCells: (n: number) => say`${{ n: count(n) }} cells pasted.`,
  dialect: say`Words of the control`,
  dialectHelp: say`A dialect file as JSON. Empty: only the words that no control disputes; for all others the program stops and says what to do.`,
  loadDialect: say`Take a dialect file`,
  yes: say`yes`,
  no: say`no`,
  json: say`as JSON`,
});
