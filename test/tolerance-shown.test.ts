/** The chapter on the proof says what program and machine may use of the tolerance, as terminal and report do. */
import { describe, expect, it } from 'vitest';
import { printedSheet } from '../src/app/work/sheet-for-reader.ts';
import { sheetOf } from '../src/app/work/sheet-of.ts';
import { jobRun } from '../src/cli/inputs.ts';
import { answerText } from '../src/documents/sheet/answer-text.ts';
import { runUpTo } from '../src/job/pipeline/pipeline.ts';
import { tellingFor } from '../src/text/print/reader.ts';
import { HOUSE, type Reader } from '../src/text/reader.ts';

const answerTo = (path: string) => {
  const run = jobRun(`examples/${path}.job.json`, {}, '2026-11-25');
  const answer = runUpTo(run, 'answer');
  if (answer.kind !== 'answered') throw new Error(`${path} has no answer`);
  const sheet = { ...sheetOf(answer, run), took: { core: 0, view: 0 } };
  return { facts: answer.facts, shownTo: (reader: Reader) => printedSheet(sheet, reader).toleranceUse };
};

describe('the sheet', () => {
  it('says what of the tolerance the program uses and what is left, word for word as the terminal, in the units of its reader', () => {
    const { facts, shownTo } = answerTo('die-plate/die-plate');
    const shown = shownTo(HOUSE) ?? '';
    expect(shown).toMatch(/^Aimed at the drawn contours.* tolerance the program may use \d\S* µm, .* of which ±0\.0\d+ mm is expected\.$/);
    expect(answerText(facts).replace(/\s+/g, ' ')).toContain(shown);
    expect(shownTo(tellingFor({ lengthUnit: 'inch', finishUnit: 'µin', locale: 'en-US' }))).toMatch(/ of which ±0\.\d+ in is expected\.$/);
  });

  it('says nothing of it where there is no program', () => {
    expect(answerTo('form-insert/form-insert').shownTo(HOUSE)).toBeUndefined();
  });
});
