/** What differs between the files that are there and those that were accepted. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Change {
  readonly file: string;
  readonly kind: 'new' | 'gone' | 'changed';
  /** Lines that came and went; one that only moved is neither. */
  readonly added: readonly string[];
  readonly removed: readonly string[];
}

export type Files = Readonly<Record<string, string>>;

/** The files of a folder by name; none where there is no folder. */
export const filesIn = (folder: string): Files =>
  existsSync(folder) ? Object.fromEntries(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')])) : {};

export const changesOf = (accepted: Files, now: Files): readonly Change[] =>
  [...new Set([...Object.keys(accepted), ...Object.keys(now)])].toSorted().flatMap((file) => changeOf(file, accepted[file], now[file]));

const changeOf = (file: string, before: string | undefined, after: string | undefined): readonly Change[] => {
  if (before === after) return [];
  const [old, fresh] = [linesOf(before), linesOf(after)];
  const kind = before === undefined ? 'new' : after === undefined ? 'gone' : 'changed';
  return [{ file, kind, added: without(fresh, old), removed: without(old, fresh) }];
};

const linesOf = (text = ''): readonly string[] => (text === '' ? [] : text.replace(/\n$/, '').split('\n'));

/** The lines of one text that the other does not have, each as often as it has it more often. */
const without = (lines: readonly string[], others: readonly string[]): readonly string[] => {
  const left = new Map<string, number>();
  for (const line of others) left.set(line, (left.get(line) ?? 0) + 1);
  return lines.filter((line) => {
    const times = left.get(line) ?? 0;
    left.set(line, times - 1);
    return times <= 0;
  });
};

/** Lines shown of each file; the rest is in the diff. */
const SHOWN = 6;
const WIDEST = 160;

/** As one reads it in a terminal. */
export const changeText = ({ file, kind, added, removed }: Change): string => {
  const lines = kind === 'changed' ? [...removed.slice(0, SHOWN).map((l) => `- ${l}`), ...added.slice(0, SHOWN).map((l) => `+ ${l}`)] : [];
  return [`  ${file}: ${kind}, +${added.length} -${removed.length}`, ...lines.map((l) => `      ${l.slice(0, WIDEST)}`)].join('\n');
};
