/** Keys and words that version 0.3 wrote, read under what they are called now; whoever reads them hears once which ones they were. */
import type { z } from 'zod';
import type { Finding } from '../../text/finding.ts';
import { list, name, type Part } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import { jobSchema } from '../job.ts';
import { shopSchema } from '../shop.ts';
import { nestSchema } from './nest-file.ts';

/** Where a key of 0.3 stood, '*' for every entry, and what it is called now; or, where `was` is given, what that value under it is called now. */
export type Renamed = readonly [path: readonly string[], now: string, was?: string | undefined];

const RENAMED = new Map<z.ZodType, readonly Renamed[]>([
  [
    jobSchema,
    [
      [['byHand'], 'overrides'],
      [['block', 'margin'], 'border'],
      [['core', '*'], 'no-core', 'burn'],
    ],
  ],
  [
    shopSchema,
    [
      [['machines', '*', 'rungs'], 'energySettings'],
      [['machines', '*', 'formFloor'], 'bestFormError'],
      [['machines', '*', 'threadsItself'], 'autoThreading'],
      [['rates', '*', 'margin'], 'markup'],
    ],
  ],
  [nestSchema, [[['margin'], 'border']]],
]);

/** What was renamed in files of a schema; `within` is where such a file stands in another one. */
export const renamedIn = (schema: z.ZodType, within: readonly string[] = []): readonly Renamed[] =>
  (RENAMED.get(schema) ?? []).map(([path, now, was]) => [[...within, ...path], now, was] as const);

export interface Renewed {
  readonly value: unknown;
  /** The keys and values as they stood, each with what it is called now. */
  readonly old: readonly OldKey[];
}

export interface OldKey {
  readonly was: string;
  readonly now: string;
}

/** The value under the keys of today. A key that stands under both names is left, so that the schema refuses the old one. */
export const underNewKeys = (value: unknown, renamed: readonly Renamed[]): Renewed =>
  renamed.reduce<Renewed>(
    (so, [path, now, was]) => {
      const renewed = was === undefined ? renamedAt(so.value, path, now) : changedAt(so.value, path, (v) => (v === was ? now : v));
      return renewed === so.value ? so : { value: renewed, old: [...so.old, { was: was ?? path.at(-1) ?? '', now }] };
    },
    { value, old: [] },
  );

/** The same value where there is nothing of that name. */
const renamedAt = (value: unknown, [key = '', ...rest]: readonly string[], now: string): unknown => {
  if (key === '*') return eachChanged(value, (entry) => renamedAt(entry, rest, now));
  if (typeof value !== 'object' || value === null || Array.isArray(value) || !Object.hasOwn(value, key)) return value;
  if (rest.length === 0 && Object.hasOwn(value, now)) return value;
  const entries = Object.entries(value).map(([k, inner]): readonly [string, unknown] => {
    if (k !== key) return [k, inner];
    return rest.length === 0 ? [now, inner] : [k, renamedAt(inner, rest, now)];
  });
  return entries.every(([k, inner]) => Object.hasOwn(value, k) && inner === value[k as keyof typeof value])
    ? value
    : Object.fromEntries(entries);
};

/** The same value where nothing changes. */
const changedAt = (value: unknown, [key, ...rest]: readonly string[], change: (value: unknown) => unknown): unknown => {
  if (key === undefined) return change(value);
  return eachChanged(value, (entry, at) => (key === '*' || key === at ? changedAt(entry, rest, change) : entry));
};

/** Entries of a list, or of an object by their keys; the same value where no entry changes. */
const eachChanged = (value: unknown, change: (entry: unknown, at: string) => unknown): unknown => {
  if (typeof value !== 'object' || value === null) return value;
  const before = Object.entries(value);
  const after = before.map(([at, entry]): readonly [string, unknown] => [at, change(entry, at)]);
  if (after.every(([, entry], i) => entry === before[i]?.[1])) return value;
  return Array.isArray(value) ? after.map(([, entry]) => entry) : Object.fromEntries(after);
};

/** One note for one file, however many of its keys are old. */
export const oldKeysNote = (file: Part | Text, old: readonly OldKey[]): readonly Finding[] =>
  old.length === 0
    ? []
    : [
        find(
          'old-keys',
          say`${{ file }} has words of version 0.3: ${{
            keys: list(
              old.map(({ was, now }) => pair(was, now)),
              'and',
            ),
          }}. They were read; files written now have the new ones.`,
          { remedy: say`Rename them in the file.` },
        ),
      ];

const pair = (was: string, now: string): Text => say('old-keys.pair')`${{ was: name(was) }} (now ${{ now: name(now) }})`;
