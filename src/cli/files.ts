/** Files in and out. A file that cannot be read is bad input with a sentence, never a stack trace. */

import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Finding } from '../text/finding.ts';
import { legacy } from '../text/legacy.ts';
import { printPlain } from '../text/print/print.ts';

/** Thrown by whatever finds that the user's input is bad; main turns it into exit code 2. */
export class BadInput extends Error {
  readonly findings: readonly Finding[];
  constructor(findings: readonly Finding[]) {
    super(findings.map((f) => printPlain(f.text)).join('\n'));
    this.findings = findings;
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'it may not be read',
  EISDIR: 'it is a folder',
  ENOTDIR: 'what should be a folder there is a file',
  EEXIST: 'a file of that name stands in the way',
  EPERM: 'it is not allowed',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk is read-only',
};

export const reasonOf = (error: unknown): string => {
  const code = (error as { code?: string }).code ?? '';
  return REASONS[code] ?? (error instanceof Error ? error.message : String(error));
};

export const badInput = (sentence: string, path = ''): BadInput =>
  new BadInput([
    { code: 'file-not-valid', severity: 'refusal', text: legacy(sentence), ...(path === '' ? {} : { place: { kind: 'field', path } }) },
  ]);

export const readBytes = (path: string): Uint8Array => {
  try {
    return readFileSync(path);
  } catch (error) {
    throw badInput(`${path} cannot be read: ${reasonOf(error)}.`);
  }
};

export const readText = (path: string): string => new TextDecoder().decode(readBytes(path));

/** Writes files into a folder that is made when it is not there; gives their paths. */
export const writeFiles = (folder: string, files: Readonly<Record<string, string | Uint8Array>>): readonly string[] => {
  try {
    makeFolder(folder);
    return Object.entries(files).map(([name, content]) => {
      const path = join(folder, name);
      writeFileSync(path, content);
      return path;
    });
  } catch (error) {
    throw badInput(`Nothing can be written to ${folder}: ${reasonOf(error)}.`, '--out');
  }
};

/** Step by step: asked to make all parents at once, Node goes round for ever where the system takes no folders at all. */
const makeFolder = (folder: string): void => {
  if (existsSync(folder) && statSync(folder).isDirectory()) return;
  const parent = dirname(folder);
  if (parent !== folder) makeFolder(parent);
  mkdirSync(folder);
};
