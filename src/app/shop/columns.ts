/** The columns of a table of the shop, taken from the schema of the shop file, so that page and file cannot drift apart; and in which unit a cell shows its value. */
import { schemaOf } from '../../job/files/catalogue.ts';
import { described } from '../../text/described.ts';
import { currencyDecimals } from '../../text/print/money.ts';
import type { Text } from '../../text/text.ts';

export interface Column {
  /** 'diameter', 'minutes.load': within a row. */
  readonly path: string;
  /** 'numbers' and 'words' are lists; 'rows' a list of values side by side; 'prices' one price by key. */
  readonly kind: 'number' | 'text' | 'choice' | 'yes' | 'numbers' | 'words' | 'rows' | 'prices';
  readonly choices: readonly string[];
  /** What it means; none where the file does not say. */
  readonly help: Text | undefined;
  readonly required: boolean;
  /** As it stands in the head; '' without one. */
  readonly unit: string;
  /** What the file holds for 1 in the cell: 100 where a price is kept in cents, 0.01 where a share is shown in percent. */
  readonly scale: number;
  /** Decimals that are written in any case, as of money. */
  readonly decimals: number;
  /** Kept in the minor unit of a currency. */
  readonly isMoney: boolean;
  /** Keys of one entry of 'rows', in order; numbers are typed as such. */
  readonly parts: readonly { readonly key: string; readonly isNumber: boolean }[];
}

/** What is used of JSON Schema here. */
interface Schema {
  readonly type?: string;
  readonly enum?: readonly string[];
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
}

export const TABLES = ['wires', 'materials', 'machines', 'rates', 'shifts', 'passTables'] as const;
export type TableKey = (typeof TABLES)[number];

/** `currency` is that of the row, an ISO 4217 code. */
export const columnsOf = (table: TableKey, currency: string): readonly Column[] => {
  const shop = schemaOf('shop') as Schema;
  const item = shop.properties?.[table]?.items;
  return item === undefined
    ? []
    : columnsIn(item, '', true, `shop.${table}`).map((column) => ({ ...column, ...shownAs(table, column.path, currency) }));
};

type Plain = Omit<Column, keyof Shown>;

const columnsIn = ({ properties = {}, required = [] }: Schema, before: string, needed: boolean, of: string): readonly Plain[] =>
  Object.entries(properties).flatMap(([key, schema]) => {
    const path = `${before}${key}`;
    const must = needed && required.includes(key);
    if (schema.type === 'object' && schema.properties !== undefined) return columnsIn(schema, `${path}.`, must, of);
    const parts = Object.entries(schema.items?.properties ?? {}).map(([part, { type }]) => ({ key: part, isNumber: type === 'number' }));
    const help = schema.description === undefined ? undefined : described(`${of}.${path}`, schema.description);
    return [{ path, kind: kindOf(schema), choices: schema.enum ?? [], help, required: must, parts }];
  });

const kindOf = ({ enum: choices, type, items }: Schema): Column['kind'] => {
  if (choices !== undefined) return 'choice';
  if (type === 'number' || type === 'integer') return 'number';
  if (type === 'boolean') return 'yes';
  if (type === 'object') return 'prices';
  if (type !== 'array') return 'text';
  if (items?.type === 'number') return 'numbers';
  return items?.properties === undefined ? 'words' : 'rows';
};

/** The column as a row shows it whose money is in this currency. */
export const inCurrency = (table: TableKey, column: Column, currency: string): Column => ({
  ...column,
  ...shownAs(table, column.path, currency),
});

type Shown = Pick<Column, 'unit' | 'scale' | 'decimals' | 'isMoney'>;

const shownAs = (table: TableKey, path: string, currency: string): Shown => {
  const unit = UNITS[`${table}.${path}`] ?? '';
  if (unit === '%') return { unit, scale: 0.01, decimals: 0, isMoney: false };
  if (!unit.startsWith(MONEY)) return { unit, scale: 1, decimals: 0, isMoney: false };
  const decimals = currencyDecimals(currency);
  return { unit: `${currency}${unit.slice(MONEY.length)}`, scale: 10 ** decimals, decimals, isMoney: true };
};

const MONEY = 'money';

const UNITS: Readonly<Record<string, string>> = {
  'wires.diameter': 'mm',
  'wires.density': 'g/cm³',
  'wires.tension': 'N',
  'wires.speed': 'm/min',
  'wires.price': 'money/kg',
  'wires.spool': 'kg',
  'materials.density': 'g/cm³',
  'materials.expansion': '10⁻⁶/K',
  'materials.solidus': '°C',
  'materials.conductivity': 'W/mK',
  'materials.heat': 'J/kgK',
  'materials.fusion': 'kJ/kg',
  'materials.resistivity': 'µΩm',
  'machines.travel.x': 'mm',
  'machines.travel.y': 'mm',
  'machines.height': 'mm',
  'machines.wire.low': 'mm',
  'machines.wire.high': 'mm',
  'machines.bestFormError': 'µm',
  'machines.positioning': 'µm',
  'machines.servoLimit': 'mm/min',
  'machines.travelFeed': 'mm/min',
  'machines.threadMinutes': 'min',
  'rates.machineHour': 'money/h',
  'rates.labourHour': 'money/h',
  'rates.drillingHour': 'money/h',
  'rates.drillingFeed': 'mm/min',
  'rates.drillingFeeds': 'mm/min',
  'rates.drillingHole': 'min',
  'rates.filtersHour': 'money/h',
  'rates.resinHour': 'money/h',
  'rates.power': 'kW',
  'rates.powerPrice': 'money/kWh',
  'rates.materialPrices': 'money/kg',
  'rates.markup': '%',
  'rates.minutes.setUp': 'min',
  'rates.minutes.programming': 'min',
  'rates.minutes.programmingContour': 'min',
  'rates.minutes.load': 'min',
  'rates.minutes.inspection': 'min',
  'rates.minutes.stop': 'min',
  'rates.minutes.handThread': 'min',
  'rates.minutes.spool': 'min',
  'rates.minutes.condition': 'min',
  'rates.spread': '%',
  'passTables.height.low': 'mm',
  'passTables.height.high': 'mm',
  'passTables.spread': '%',
};
