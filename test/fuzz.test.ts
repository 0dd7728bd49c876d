/** Damaged drawings, programs and files: 20,000 cases on every run; `npm run fuzz` goes on longer. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { drawingFaults, fileFaults, programFaults } from './fuzz/try.ts';

const SEED = 20261125;

/** Drawings made by others, where they lie beside the project; small ones, so that many cases fit. */
const CORPUS = '../shared/drawings';
const corpus = existsSync(CORPUS)
  ? (readdirSync(CORPUS, { recursive: true, encoding: 'utf8' }) as string[])
      .filter((name) => /\.(dxf|svg)$/i.test(name))
      .map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(CORPUS, name))) }))
      .filter(({ bytes }) => bytes.length < 40_000)
  : [];

describe('damaged input', () => {
  it('never breaks the reading of drawings', () => {
    expect(drawingFaults(4000, SEED)).toEqual([]);
  });

  it('never breaks the reading of programs', () => {
    expect(programFaults(8000, SEED)).toEqual([]);
  });

  it('never breaks the reading of job, shop, dialect and set-up files', () => {
    expect(fileFaults(8000, SEED)).toEqual([]);
  });

  it.runIf(corpus.length > 0)('never breaks the reading of drawings made by others', () => {
    expect(drawingFaults(600, SEED + 1, corpus)).toEqual([]);
  });
});
