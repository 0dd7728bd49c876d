/** The papers of a job before they are set: the same for the printer and the screen. */
import { annex } from '../documents/annex.ts';
import type { JobFacts } from '../documents/facts.ts';
import { holeSheet } from '../documents/hole-sheet.ts';
import { inspectionSheet } from '../documents/inspection-sheet.ts';
import type { Paper } from '../documents/paper.ts';
import { quotation } from '../documents/quotation.ts';
import { setupSheet } from '../documents/setup-sheet.ts';
import { toldPaper } from '../documents/told-paper.ts';
import type { Telling } from '../quantity/restate.ts';
import { cheaperWays } from './cheaper.ts';
import type { JobRun } from './run.ts';
import { namesOf, tellingOf } from './telling.ts';

/** Every paper there is, in the order in which they are handed out. */
export const PAPERS = ['set-up-sheet', 'hole-table', 'inspection-sheet', 'quotation', 'annex'] as const;
export type PaperName = (typeof PAPERS)[number];

/** As job and shop want numbers told, or as `telling` says. Places on papers count as the program does. Without a program there is nothing to set up. */
export const papersOf = (facts: JobFacts, run: JobRun, telling = tellingOf(run)): readonly (readonly [name: PaperName, paper: Paper])[] => {
  const places = { drawn: facts.drawing.units.millimetres, places: run.dialect.units };
  const all: Telling = { ...telling, ...(isUsual(telling) ? {} : places), names: namesOf(run) };
  return writtenPapers(facts, run).map(([name, paper]) => [name, toldPaper(paper, all)] as const);
};

const isUsual = ({ length, finish, decimalMark }: Telling): boolean => length === 'mm' && finish === 'µm' && decimalMark === '.';

const writtenPapers = (facts: JobFacts, run: JobRun): readonly (readonly [name: PaperName, paper: Paper])[] => {
  const cheaper = facts.answer === 'yes' ? cheaperWays(run, facts.plan?.contours.length ?? 0) : [];
  const offer = { until: dayAfter(run.day, run.shop.quotationDays), cheaper };
  const quote = ['quotation', quotation(facts, offer)] as const;
  if (facts.program === undefined) return [quote];
  const { inspection } = facts;
  return [
    ['set-up-sheet', setupSheet(facts)],
    ['hole-table', holeSheet(facts)],
    ...(inspection === undefined ? [] : [['inspection-sheet', inspectionSheet(facts, inspection)] as const]),
    quote,
    ['annex', annex(facts)],
  ];
};

const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
