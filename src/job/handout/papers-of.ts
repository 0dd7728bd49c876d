/** The papers of a job before they are set: the same for the printer and the screen. */

import type { Paper, WrittenPaper } from '../../documents/paper.ts';
import { printedPaper } from '../../documents/paper-for-reader.ts';
import { annex } from '../../documents/sheet/calculation-sheet.ts';
import { holeSheet } from '../../documents/sheet/hole-sheet.ts';
import { inspectionSheet } from '../../documents/sheet/inspection-sheet.ts';
import { quotation } from '../../documents/sheet/quotation.ts';
import { setupSheet } from '../../documents/sheet/setup-sheet.ts';
import { cutOf, type JobFacts, programOf } from '../../result/facts.ts';
import type { Offer } from '../../result/offer.ts';
import { PAPERS, type PaperName } from '../../result/paper-names.ts';
import type { Reader } from '../../text/reader.ts';
import type { JobRun } from '../job-run.ts';
import { readerOfPapers } from '../reader-of-papers.ts';
import { cheaperWays } from '../what-if/cheaper.ts';

/** One paper, told as job and shop want numbers told, or as `reader` reads them; nothing where there is none. Places on papers count as the program does. */
export const paperOf = (name: PaperName, facts: JobFacts, run: JobRun, reader = readerOfPapers(run)): Paper | undefined => {
  const written = writtenPaper(name, facts, run);
  const places = { drawn: facts.drawing.units.millimetres, places: run.dialect.units };
  return written && printedPaper(written, isUsual(reader) ? reader : { ...reader, ...places });
};

/** Every paper that there is of this job. */
export const papersOf = (facts: JobFacts, run: JobRun): readonly (readonly [name: PaperName, paper: Paper])[] =>
  PAPERS.flatMap((name) => {
    const paper = paperOf(name, facts, run);
    return paper === undefined ? [] : [[name, paper] as const];
  });

const isUsual = ({ length, finish, decimalMark }: Reader): boolean => length === 'mm' && finish === 'µm' && decimalMark === '.';

/** Without a program there is nothing to set up. */
const writtenPaper = (name: PaperName, facts: JobFacts, run: JobRun): WrittenPaper | undefined => {
  // A mistake of our own planner is no reply to a customer.
  if (name === 'quotation')
    return facts.findings.some((f) => f.code === 'plan-not-proven') ? undefined : quotation(facts, offerOf(facts, run));
  const [cut, program] = [cutOf(facts), programOf(facts)];
  if (cut === undefined || program === undefined) return undefined;
  const made = { cut, program };
  switch (name) {
    case 'set-up-sheet':
      return setupSheet(facts, made);
    case 'hole-table':
      return holeSheet(facts, cut);
    case 'inspection-sheet':
      return inspectionSheet(facts, made);
    case 'annex':
      return annex(facts, cut);
  }
};

/** What would be cheaper is found by running the job again in other ways. */
const offerOf = (facts: JobFacts, run: JobRun): Offer => ({
  until: dayAfter(run.day, run.shop.quotationDays),
  terms: run.shop.terms,
  cheaper: facts.outcome.answer === 'yes' ? cheaperWays(run, facts.outcome.cut.contours.length) : [],
});

const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
