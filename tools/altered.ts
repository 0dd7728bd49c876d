/** Alters the constants of physics and price one by one, by a third up and down, and sees which check rows fall. */
import { register } from 'node:module';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { CheckRow } from '../src/quantity/check.ts';
import { judgeRow } from './checks.ts';
import type { Constant } from './constants.ts';
import { importsOf, resolved, type SourceFile } from './source-files.ts';

/** Text that takes the place of another in one file. */
export interface Alteration {
  readonly file: string;
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

export interface Fallen {
  readonly constant: Constant;
  /** Times its value. */
  readonly factor: number;
  readonly rows: readonly CheckRow[];
}

const FACTORS = [2 / 3, 4 / 3] as const;

/** Where the constant stands; throws when it does not stand there any more. */
export const alterationOf = ({ file, after, value }: Constant, text: string, factor: number): Alteration => {
  const anchor = text.indexOf(after);
  const found = anchor < 0 ? undefined : numberAt(text, value, anchor + after.length);
  if (found === undefined) throw new Error(`${value} does not stand after ${after} in ${file}`);
  return { file, from: found, to: found + value.length, text: String(Number(value) * factor) };
};

const numberAt = (text: string, value: string, from: number): number | undefined => {
  const found = new RegExp(`(?<![\\w.])${value.replace('.', '\\.')}(?![\\w.])`).exec(text.slice(from));
  return found === null ? undefined : from + found.index;
};

/** Modules that import this file, over any number of others. */
export const restingOn = (file: string, files: readonly SourceFile[]): ReadonlySet<string> => {
  const users = new Map<string, string[]>();
  for (const f of files)
    for (const name of importsOf(f)) {
      const target = resolved(f.path, name);
      users.set(target, [...(users.get(target) ?? []), f.path]);
    }
  const found = new Set<string>();
  const waiting = [file];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (found.has(path)) continue;
    found.add(path);
    waiting.push(...(users.get(path) ?? []));
  }
  return found;
};

let registered = false;

/** What a module exports when another is altered. */
export const importAltered = async <M>(path: string, alteration: Alteration): Promise<M> => {
  if (!registered) register('../test/altered.mjs', import.meta.url);
  registered = true;
  return (await import(`${pathToFileURL(resolve(path)).href}?altered=${encodeURIComponent(JSON.stringify(alteration))}`)) as M;
};

/** Each constant twice, with the rows that do not hold any more. */
export const fallenRows = async (constants: readonly Constant[], files: readonly SourceFile[]): Promise<readonly Fallen[]> => {
  const fallen: Fallen[] = [];
  for (const constant of constants) {
    const text = files.find((f) => f.path === constant.file)?.text ?? '';
    const checks = [...restingOn(constant.file, files)].filter((path) => path.endsWith('.checks.ts')).sort();
    for (const factor of FACTORS) {
      const alteration = alterationOf(constant, text, factor);
      const modules = await Promise.all(checks.map((path) => importAltered<{ readonly checks: readonly CheckRow[] }>(path, alteration)));
      const rows = modules.flatMap((m) => m.checks).filter((row) => !judgeRow(row).holds);
      fallen.push({ constant, factor, rows });
    }
  }
  return fallen;
};

/** Held from outside: whichever way it is altered two rows fall, one of them a value that somebody printed. */
export const isPinned = (constant: Constant, fallen: readonly Fallen[]): boolean =>
  fallen
    .filter((f) => f.constant === constant)
    .every(({ rows }) => rows.length >= 2 && rows.some((row) => row.how === 'printed and seen' || row.how === 'secondary page'));
