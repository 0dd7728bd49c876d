/** What files may hold and which keys they may use: schemas, materials, wires. */
import { z } from 'zod';
import { dialectSchema } from '../../nc/dialect/dialect.ts';
import { materials } from '../../physics/material/materials.ts';
import { wires } from '../../physics/wire/wires.ts';
import { jobSchema } from '../job.ts';
import { shopSchema } from '../shop.ts';
import { nestSchema } from './nest-file.ts';
import { setupSchema } from './setup-file.ts';

const SCHEMAS = { job: jobSchema, shop: shopSchema, dialect: dialectSchema, setup: setupSchema, nest: nestSchema } as const;

/** Each kind of file with its one line of description. */
export const schemas: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(SCHEMAS).map(([name, s]) => [name, s.description ?? '']),
);

/** JSON Schema of one kind of file as one writes it (defaults left out), or none of that name. */
export const schemaOf = (name: string): object | undefined =>
  Object.hasOwn(SCHEMAS, name) ? z.toJSONSchema(SCHEMAS[name as keyof typeof SCHEMAS], { io: 'input' }) : undefined;

export interface Row {
  readonly id: string;
  readonly name: string;
  readonly about: string;
}

export const materialRows = (): readonly Row[] =>
  materials.map((m) => ({ id: m.id, name: m.name, about: `${m.density.value} g/cm³, cuts at ${m.index.value} of tool steel` }));

/** The wires that are known when the shop file names none. */
export const wireRows = (): readonly Row[] =>
  wires.map((w) => ({
    id: w.id,
    name: w.name,
    about: `${w.tension} N, ${w.speed} m/min, ${w.spool} kg a spool${w.inStock ? '' : ', to be ordered'}`,
  }));
