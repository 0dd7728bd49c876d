/** Files in and out. A file that cannot be read is bad input with a sentence, never a stack trace. */

import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Finding } from '../text/finding.ts';
import { name } from '../text/part.ts';
import { printPlain } from '../text/print/print.ts';
import { only, phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';

/** Thrown by whatever finds that the user's input is bad; main turns it into exit code 2. */
export class BadInput extends Error {
  readonly findings: readonly Finding[];
  constructor(findings: readonly Finding[]) {
    super(findings.map((f) => printPlain(f.text)).join('\n'));
    this.findings = findings;
  }
}

const reasons: Readonly<Record<string, Text>> = phrases('file-trouble', {
  ENOENT: say`there is no such file`,
  EACCES: say`it may not be read`,
  EISDIR: say`it is a folder`,
  ENOTDIR: say`what should be a folder there is a file`,
  EEXIST: say`a file of that name stands in the way`,
  EPERM: say`it is not allowed`,
  ENOSPC: say`the disk is full`,
  EROFS: say`the disk is read-only`,
});

/** What the system says stands as it says it where it says something unknown. */
export const reasonOf = (error: unknown): Text => {
  const code = (error as { code?: string }).code ?? '';
  return reasons[code] ?? only(name(error instanceof Error ? error.message : String(error)));
};

/** What is wrong with the input; `path` is the option or field at fault. */
export const badInput = (text: Text, path = ''): BadInput =>
  new BadInput([{ code: 'file-not-valid', severity: 'refusal', text, place: path === '' ? undefined : { kind: 'field', path } }]);

const words = phrases('command-file', {
  unreadable: (path: string, reason: Text) => say`${{ path: name(path) }} cannot be read: ${{ reason }}.`,
  unwritable: (folder: string, reason: Text) => say`Nothing can be written to ${{ folder: name(folder) }}: ${{ reason }}.`,
});

export const readBytes = (path: string): Uint8Array => {
  try {
    return readFileSync(path);
  } catch (error) {
    throw badInput(words.unreadable(path, reasonOf(error)));
  }
};

export const readText = (path: string): string => new TextDecoder().decode(readBytes(path));

/** Writes files into a folder that is made when it is not there; gives their paths. */
export const writeFiles = (folder: string, files: Readonly<Record<string, string | Uint8Array>>): readonly string[] => {
  try {
    makeFolder(folder);
    return Object.entries(files).map(([file, content]) => {
      const path = join(folder, file);
      writeFileSync(path, content);
      return path;
    });
  } catch (error) {
    throw badInput(words.unwritable(folder, reasonOf(error)), '--out');
  }
};

/** Step by step: asked to make all parents at once, Node goes round for ever where the system takes no folders at all. */
const makeFolder = (folder: string): void => {
  if (existsSync(folder) && statSync(folder).isDirectory()) return;
  const parent = dirname(folder);
  if (parent !== folder) makeFolder(parent);
  mkdirSync(folder);
};
