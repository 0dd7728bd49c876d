/** The columns of a table of the shop, taken from the schema of the shop file, so that page and file cannot drift apart. */
import { schemaOf } from '../../job/files/catalogue.ts';

export interface Column {
  /** 'diameter', 'minutes.load': within a row. */
  readonly path: string;
  readonly kind: 'number' | 'text' | 'choice' | 'yes' | 'json';
  readonly choices: readonly string[];
  readonly help: string;
  readonly required: boolean;
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

export const columnsOf = (table: TableKey): readonly Column[] => {
  const shop = schemaOf('shop') as Schema;
  const item = shop.properties?.[table]?.items;
  return item === undefined ? [] : columnsIn(item, '', true);
};

const columnsIn = ({ properties = {}, required = [] }: Schema, before: string, needed: boolean): readonly Column[] =>
  Object.entries(properties).flatMap(([key, schema]) => {
    const path = `${before}${key}`;
    const must = needed && required.includes(key);
    if (schema.type === 'object' && schema.properties !== undefined) return columnsIn(schema, `${path}.`, must);
    return [{ path, kind: kindOf(schema), choices: schema.enum ?? [], help: schema.description ?? '', required: must }];
  });

const kindOf = (schema: Schema): Column['kind'] => {
  if (schema.enum !== undefined) return 'choice';
  if (schema.type === 'number' || schema.type === 'integer') return 'number';
  if (schema.type === 'boolean') return 'yes';
  return schema.type === 'string' ? 'text' : 'json';
};
