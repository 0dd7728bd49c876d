/** What files may hold and which keys they may use: schemas, materials, wires. */
import { z } from 'zod';
import { dialectSchema } from '../../nc/dialect/dialect.ts';
import { materials } from '../../physics/material/materials.ts';
import { wires } from '../../physics/wire/wires.ts';
import { described } from '../../text/described.ts';
import { asGiven, quantity } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { jobSchema } from '../job.ts';
import { shopSchema } from '../shop.ts';
import { nestSchema } from './nest-file.ts';
import { setupSchema } from './setup-file.ts';

/** Every digit that the table has. */
const given = { as: 'given' } as const;

const SCHEMAS = { job: jobSchema, shop: shopSchema, dialect: dialectSchema, setup: setupSchema, nest: nestSchema } as const;

/** Each kind of file with its one line of description. */
export const schemas: Readonly<Record<string, Text>> = Object.fromEntries(
  Object.entries(SCHEMAS).map(([name, s]) => [name, described(name, s.description ?? '')]),
);

/** JSON Schema of one kind of file as one writes it (defaults left out), or none of that name. */
export const schemaOf = (name: string): object | undefined =>
  Object.hasOwn(SCHEMAS, name) ? z.toJSONSchema(SCHEMAS[name as keyof typeof SCHEMAS], { io: 'input' }) : undefined;

export interface Row<Said = Text> {
  readonly id: string;
  readonly name: string;
  readonly about: Said;
}

export const materialRows = (): readonly Row[] =>
  materials.map((m) => ({ id: m.id, name: m.name, about: words.material(m.density.value, m.index.value) }));

/** The wires that are known when the shop file names none. */
export const wireRows = (): readonly Row[] =>
  wires.map((w) => ({
    id: w.id,
    name: w.name,
    about: (w.inStock ? words.wire : words.wireToOrder)(w.tension, w.speed, w.spool),
  }));

const words = phrases('catalogue', {
  material: (density: number, index: number) =>
    say`${{ density: quantity(density, 'g/cm³', given) }}, cuts at ${{ index: asGiven(index) }} of tool steel`,
  wire: (tension: number, speed: number, spool: number) =>
    say`${{ tension: quantity(tension, 'N', given) }}, ${{ speed: quantity(speed, 'm/min', given) }}, ${{ spool: quantity(spool, 'kg', given) }} a spool`,
  wireToOrder: (tension: number, speed: number, spool: number) =>
    say`${{ tension: quantity(tension, 'N', given) }}, ${{ speed: quantity(speed, 'm/min', given) }}, ${{ spool: quantity(spool, 'kg', given) }} a spool, to be ordered`,
});
