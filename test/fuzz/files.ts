/** Damaged job, shop, dialect and set-up files: good ones with a value changed, a key dropped, or the text cut and scrambled. */

import { builtInShop } from '../../src/job/built-in-shop.ts';
import { setupSchema } from '../../src/job/files/setup-file.ts';
import { jobSchema } from '../../src/job/job.ts';
import { shopSchema } from '../../src/job/shop.ts';
import { dialectSchema, standardDialect } from '../../src/nc/dialect/dialect.ts';
import { type Dice, diceOf } from './dice.ts';

export interface FileCase {
  readonly name: string;
  readonly schema: 'job' | 'shop' | 'dialect' | 'setup';
  readonly text: string;
}

const setup = {
  wireDiameter: 0.25,
  registers: { 1: 0.2, 2: 0.15 },
  gaps: { 1: 0.037, 2: 0.01 },
  block: { low: { x: 0, y: 0 }, high: { x: 50, y: 40 } },
  holes: [{ at: { x: 10, y: 10 }, diameter: 2 }],
  kept: { L1: 'die' },
  height: 20,
  density: 7.7,
  tolerance: 0.01,
  insideCorner: 0.2,
  dialect: standardDialect,
};
const job = {
  name: 'a plate',
  drawing: 'a.dxf',
  material: 'd2',
  height: 20,
  finish: 0.8,
  tolerance: 0.01,
  quantity: 3,
  holes: [{ at: { x: 1, y: 2 }, diameter: 2 }],
  kept: { L1: 'punch' },
  layers: ['0'],
};

const GOOD = { job, shop: builtInShop, dialect: standardDialect, setup } as const;
export const SCHEMAS = { job: jobSchema, shop: shopSchema, dialect: dialectSchema, setup: setupSchema } as const;

/** Repeatable: the same count and seed give the same cases. */
export function* fileCases(count: number, seed: number): Iterable<FileCase> {
  const dice = diceOf(seed);
  const kinds = Object.keys(GOOD) as (keyof typeof GOOD)[];
  for (let i = 0; i < count; i++) {
    const schema = dice.pick(kinds);
    const value = structuredClone(GOOD[schema]) as unknown;
    const wounds = 1 + dice.below(3);
    for (let k = 0; k < wounds; k++) wound(value, dice);
    const text = JSON.stringify(value);
    yield { name: `${schema} ${i}`, schema, text: dice.below(4) === 0 ? scrambled(text, dice) : text };
  }
}

const ODD: readonly unknown[] = [
  null,
  '',
  'x'.repeat(300),
  -1,
  0,
  1e308,
  1e-320,
  0.1,
  true,
  [],
  {},
  [[[]]],
  '0.25',
  'NaN',
  -0,
  2 ** 53,
  '__proto__',
  { constructor: 1 },
];

const wound = (value: unknown, dice: Dice): void => {
  if (typeof value !== 'object' || value === null) return;
  const record = value as Record<string, unknown>;
  const keys = Object.keys(record);
  const key = keys.length === 0 || dice.below(8) === 0 ? dice.pick(['extra', '__proto__', 'toString', '0']) : dice.pick(keys);
  const inner = Object.hasOwn(record, key) ? record[key] : undefined;
  if (typeof inner === 'object' && inner !== null && dice.below(3) > 0) wound(inner, dice);
  else if (dice.below(4) === 0) Reflect.deleteProperty(record, key);
  else Object.defineProperty(record, key, { value: structuredClone(dice.pick(ODD)), enumerable: true, configurable: true, writable: true });
};

const scrambled = (text: string, dice: Dice): string => {
  const at = dice.below(text.length);
  if (dice.below(2) === 0) return text.slice(0, at);
  return text.slice(0, at) + String.fromCharCode(dice.below(256)) + text.slice(at + dice.below(3));
};
