/** Papers say what the person who holds them needs, in the unit of the control that it is typed into. */

import { describe, expect, it } from 'vitest';
import { readText } from '../../cli/files.ts';
import { jobRun } from '../../cli/inputs.ts';
import { printedPaper } from '../../documents/paper-for-reader.ts';
import { paperText } from '../../documents/paper-text.fixture.ts';
import { setupSheet } from '../../documents/sheet/setup-sheet.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { HOUSE } from '../../text/reader.ts';
import { cut, factsOf, program } from '../answered.fixture.ts';
import { readDialectFile } from '../files/dialects.ts';
import type { JobRun } from '../job-run.ts';

const insert: JobRun = jobRun('examples/form-insert/form-insert-eased.job.json', {}, '2026-11-25');

const sheetOf = (run: JobRun): string => {
  const facts = factsOf(run);
  return paperText(printedPaper(setupSheet(facts, { cut: cut(facts), program: program(facts) }), HOUSE));
};

describe('papers', () => {
  it('give the registers, holes and stops of an inch program in inches', () => {
    const inch = readDialectFile(readText('dialects/inch.json'));
    if (inch.kind === 'bad') throw new Error(sentenceOf(inch.findings[0]));
    const sheet = sheetOf({ ...insert, dialect: inch.dialect });
    const millimetres = sheetOf(insert);
    const registers = (text: string): readonly number[] => [...text.matchAll(/D\d = ([\d.]+)/g)].map((m) => Number(m[1]));
    expect(sheet).toMatch(/Set the offset registers: D1 = 0\.0\d{4}.* inch\./);
    expect(millimetres).toMatch(/Set the offset registers: D1 = 0\.\d{4}.* mm\./);
    for (const [i, mm] of registers(millimetres).entries()) expect((registers(sheet)[i] as number) * 25.4).toBeCloseTo(mm, 3);
    expect(sheet).toContain('X, Y and Ø in inch');
  });
});
