/** What the pages of the shop say. */
const TABLES: Readonly<Record<string, readonly [title: string, one: string]>> = {
  wires: ['Wires', 'wire'],
  materials: ['Materials', 'material'],
  machines: ['Machines', 'machine'],
  rates: ['Rates', 'block of rates'],
  shifts: ['Shifts', 'shift'],
  passTables: ['Passes as we run them', 'table of passes'],
};

export const shopWords = {
  title: 'The shop',
  back: 'All jobs',
  intro:
    'What the shop has and charges. Every job is worked out with it. Cells can be pasted from a spreadsheet: stand in the first cell and paste.',
  name: 'Name of the shop on its papers',
  quotationDays: 'A quotation stays valid, days',
  table: (key: string): string => TABLES[key]?.[0] ?? key,
  add: (key: string): string => `Add a ${TABLES[key]?.[1] ?? 'row'}`,
  remove: (name: string): string => `Remove ${name}`,
  row: 'Row',
  save: 'Save the shop',
  saved: 'Saved.',
  unsaved: 'Not saved yet.',
  undo: 'Undo',
  faults: 'Not saved: these values cannot be used.',
  gone: 'The server does not answer. Nothing is lost as long as this page stays open; try again.',
  elsewhere: 'The shop was changed elsewhere in the meantime. Save again to put this page’s values over it, or load it anew.',
  loadAnew: 'Load it anew',
  basisOf: (cell: string): string => `Basis of ${cell}`,
  basis: 'Where it comes from',
  on: 'As of',
  none: 'not said',
  typed: 'typed in',
  pasted: 'pasted',
  pastedCells: (n: number): string => `${n} cells pasted.`,
  dialect: 'Words of the control',
  dialectHelp:
    'A dialect file as JSON. Empty: only the words that no control disputes; for all others the program stops and says what to do.',
  loadDialect: 'Take a dialect file',
  yes: 'yes',
  no: 'no',
  json: 'as JSON',
} as const;
