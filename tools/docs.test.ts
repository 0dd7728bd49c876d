/** Files that the documents name are there: a guide to the code that sends its reader to a file of before is worse than none. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Decisions tell what was so on their day, and may name what has gone. */
const DOCUMENTS = [
  'README.md',
  'CONTRIBUTING.md',
  ...readdirSync('docs')
    .filter((f) => f.endsWith('.md'))
    .map((f) => join('docs', f)),
];

const namedIn = (text: string): readonly string[] =>
  [...text.matchAll(/`((?:src|tools|test|docs|sources|examples|dialects)\/[\w./-]*)`/g)].map((m) => m[1] ?? '');

describe('documents of the code', () => {
  it.each(DOCUMENTS)('%s names only files and folders that are there', (document) => {
    expect(namedIn(readFileSync(document, 'utf8')).filter((path) => !existsSync(path))).toEqual([]);
  });

  it('follow a finding and a figure through at least fifteen files', () => {
    expect(new Set(namedIn(readFileSync('docs/a-day-in-the-code.md', 'utf8'))).size).toBeGreaterThan(15);
  });

  it('would not name a file that has gone', () => {
    expect(namedIn('see `src/quantity/said.ts` and `src/job/run.ts`').filter((path) => existsSync(path))).toEqual([]);
  });
});
