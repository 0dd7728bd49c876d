/** The papers of a job before they are set: the same for the printer and the screen. */
import { annex } from '../documents/annex.ts';
import type { JobFacts } from '../documents/facts.ts';
import { holeSheet } from '../documents/hole-sheet.ts';
import { inspectionSheet } from '../documents/inspection-sheet.ts';
import type { Paper } from '../documents/paper.ts';
import { PAPERS, type PaperName } from '../documents/paper-names.ts';
import { type Offer, quotation } from '../documents/quotation.ts';
import { setupSheet } from '../documents/setup-sheet.ts';
import { cheaperWays } from './cheaper.ts';
import type { JobRun } from './run.ts';

/** One paper; nothing where there is none: without a program there is nothing to set up. */
export const paperOf = (name: PaperName, facts: JobFacts, run: JobRun): Paper | undefined => {
  if (name === 'quotation') return quotation(facts, offerOf(facts, run));
  if (facts.program === undefined) return undefined;
  switch (name) {
    case 'set-up-sheet':
      return setupSheet(facts);
    case 'hole-table':
      return holeSheet(facts);
    case 'inspection-sheet':
      return facts.inspection && inspectionSheet(facts, facts.inspection);
    case 'annex':
      return annex(facts);
  }
};

/** Every paper that there is of this job. */
export const papersOf = (facts: JobFacts, run: JobRun): readonly (readonly [name: PaperName, paper: Paper])[] =>
  PAPERS.flatMap((name) => {
    const paper = paperOf(name, facts, run);
    return paper === undefined ? [] : [[name, paper] as const];
  });

/** What would be cheaper is found by running the job again in other ways. */
const offerOf = (facts: JobFacts, run: JobRun): Offer => ({
  until: dayAfter(run.day, run.shop.quotationDays),
  cheaper: facts.answer === 'yes' ? cheaperWays(run, facts.plan?.contours.length ?? 0) : [],
});

const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
