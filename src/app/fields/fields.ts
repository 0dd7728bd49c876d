/** The inputs of a job as fields of the sheet: which chapter they stand in, what kind of value they hold. */
import { schemaOf } from '../../job/files/catalogue.ts';
import { described } from '../../text/described.ts';
import type { Text } from '../../text/text.ts';
import type { Words } from '../words/words-for.ts';
import type { Chapter } from '../work/views.ts';

export type FieldKind =
  | 'length'
  | 'lengths'
  | 'finish'
  | 'count'
  | 'counts'
  | 'number'
  | 'money'
  | 'choice'
  | 'text'
  | 'texts'
  | 'day'
  | 'moment'
  | 'material'
  | 'wire'
  | 'size'
  | 'sizes'
  | 'spot';

export interface FieldSpec {
  /** Dotted path into the job file; 'size' stands for width and depth of the stock. */
  readonly path: string;
  readonly kind: FieldKind;
  /** Said behind a bare number: '°C', 'kg'. */
  readonly unit?: string;
  /** Which words stand for a value that is left out and not defaulted: 'as many as needed'. */
  readonly none?: keyof Words['leftOut'] | undefined;
  /** What is usual where nothing is said, as it is printed. */
  readonly usual?: string | undefined;
}

const field = (path: string, kind: FieldKind, more: Pick<FieldSpec, 'unit' | 'none'> = {}): FieldSpec => ({ path, kind, ...more });

export const FIELDS: Readonly<Record<Chapter, readonly FieldSpec[]>> = {
  drawing: [
    field('units', 'choice', { none: 'units' }),
    field('outline', 'choice'),
    field('layers', 'texts', { none: 'layers' }),
    field('without', 'texts', { none: 'without' }),
    field('join', 'length'),
  ],
  asked: [
    field('material', 'material'),
    field('height', 'length'),
    field('finish', 'finish'),
    field('tolerance', 'length'),
    field('sizes', 'sizes', { none: 'sizes' }),
    field('insideCorner', 'length'),
    field('ease', 'length'),
    field('quantity', 'count'),
  ],
  passes: [
    field('wire', 'wire', { none: 'wire' }),
    field('passes', 'count', { none: 'passes' }),
    field('offsets', 'lengths', { none: 'offsets' }),
    field('flush', 'choice'),
    field('temperature.cutting', 'number', { unit: '°C' }),
    field('temperature.measuring', 'number', { unit: '°C' }),
    field('temperature.swing', 'number', { unit: '°C' }),
    field('temperature.scale', 'choice', { none: 'scale' }),
  ],
  way: [
    field('size', 'size', { none: 'size' }),
    field('block.border', 'length'),
    field('stack', 'count'),
    field('stackGap', 'length'),
    field('startHole', 'length'),
    field('outsideCorners', 'choice'),
    field('datum', 'spot', { none: 'datum' }),
  ],
  proof: [],
  hours: [
    field('run', 'choice'),
    field('startAt', 'moment', { none: 'startAt' }),
    field('spoolLeft', 'number', { unit: 'kg', none: 'spoolLeft' }),
  ],
  price: [
    field('quantityBreaks', 'counts', { none: 'quantityBreaks' }),
    field('stock.price', 'money', { none: 'price' }),
    field('stock.suppliedBy', 'choice', { none: 'notSaid' }),
  ],
  papers: [field('name', 'text', { none: 'name' }), field('customer', 'text', { none: 'notSaid' }), field('date', 'day', { none: 'date' })],
  log: [],
};

const ALL = new Map(
  Object.values(FIELDS)
    .flat()
    .map((f) => [f.path, f]),
);

export const fieldOf = (path: string): FieldSpec | undefined => ALL.get(path);

/** The field a finding points at: its own, or the first of its group that is on the sheet. */
export const fieldOfFinding = (path: string): FieldSpec | undefined => {
  const [group = ''] = path.split('.');
  if (group === 'stock' && !ALL.has(path)) return ALL.get('size');
  return ALL.get(path) ?? ALL.get(group) ?? [...ALL.values()].find((f) => f.path.startsWith(`${group}.`));
};

/** What stands in a field that is left out, in words. */
export const noneOf = ({ none, usual }: FieldSpec, words: Words): string | undefined => (none === undefined ? usual : words.leftOut[none]);

interface Schema {
  readonly description?: string;
  readonly default?: unknown;
  readonly enum?: readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
}

const job = schemaOf('job') as Schema;

const schemaAt = (path: string): Schema | undefined =>
  path.split('.').reduce<Schema | undefined>((inner, key) => inner?.properties?.[key], job);

/** What the job file's own schema says of it. */
export const helpOf = (path: string): Text | undefined => {
  const place = path === 'size' ? 'stock' : path;
  const description = schemaAt(place)?.description;
  return description === undefined ? undefined : described(`job.${place}`, description);
};

/** What holds when nobody said anything; none where the planner chooses or nothing is meant. */
export const defaultOf = (path: string): unknown => {
  const value = schemaAt(path)?.default;
  return Array.isArray(value) && value.length === 0 ? undefined : value;
};

export const choicesOf = ({ path }: FieldSpec, words: Words): readonly { readonly value: unknown; readonly text: string }[] => {
  const called = words.choices[path] ?? {};
  if (path === 'temperature.scale') return [true, false].map((v) => ({ value: v, text: called[String(v)] ?? String(v) }));
  return (schemaAt(path)?.enum ?? []).map((v) => ({ value: v, text: called[v] ?? v }));
};
