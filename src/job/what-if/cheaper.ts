/** What would make the job cheaper, for the quotation: of all what-ifs those the customer can agree to, the greatest saving first. */
import type { Cheaper } from '../../result/offer.ts';
import type { JobRun } from '../job-run.ts';
import { compareJob } from './compare.ts';

/** Savings below this share of the price are not worth a sentence. */
const WORTH_SAYING = 0.02;
const MOST = 5;
/** How it is cut, with which wire and stacked or not, is the shop's; the customer's part is what is required, how many, and the holes. */
const CUSTOMERS = new Set(['finish', 'tolerance', 'inside corners', 'quantity', 'holes']);

/** With more contours than this each what-if takes seconds: only `compare`, which is asked for, runs them all. */
const MOST_CONTOURS = 300;

export const cheaperWays = (run: JobRun, contours: number): readonly Cheaper[] => {
  const comparison = compareJob(run, contours > MOST_CONTOURS ? 'the likeliest' : 'all');
  if (comparison.kind !== 'compared') return [];
  const { now, rows, currency } = comparison;
  return rows
    .flatMap((r) => (r.kind === 'can' && CUSTOMERS.has(r.what) && r.saves >= WORTH_SAYING * now.each ? [r] : []))
    .filter((r, i, all) => all.findIndex((other) => other.what === r.what) === i)
    .slice(0, MOST)
    .map((r) => ({ sentence: r.sentence, saves: r.saves, currency }));
};
