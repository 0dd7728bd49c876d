/** Damaged drawings, programs and files: 20,000 cases on every run; `npm run fuzz` goes on longer. */
import { describe, expect, it } from 'vitest';
import { drawingFaults, fileFaults, programFaults } from './fuzz/try.ts';

const SEED = 20261125;

describe('damaged input', () => {
  it('never breaks the reading of drawings', () => {
    expect(drawingFaults(8000, SEED)).toEqual([]);
  });

  it('never breaks the reading of programs', () => {
    expect(programFaults(6000, SEED)).toEqual([]);
  });

  it('never breaks the reading of job, shop, dialect and set-up files', () => {
    expect(fileFaults(6000, SEED)).toEqual([]);
  });
});
