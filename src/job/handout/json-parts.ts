/** Error budget and other processes of an answer as plain data: µm for shares of error, min for times. */

import type { Budget } from '../../accuracy/budget.ts';
import { deviationOf, type Figure } from '../../quantity/figure.ts';
import type { CutFacts } from '../../result/outcome-facts.ts';
import type { Finding } from '../../text/finding.ts';
import { printPlain } from '../../text/print/print.ts';
import { type Stated, stated } from '../../text/print/stated.ts';

export type Json = Readonly<Record<string, unknown>>;

/** Findings as words. */
export const statedFindings = (findings: readonly Finding[]): readonly Stated[] => findings.map((f) => stated(f));

export const figure = (f: Figure): Json => ({ key: f.key, value: f.value, deviation: deviationOf(f), unit: f.unit });

export const budgetJson = ({ budgets }: Pick<CutFacts, 'budgets'>): Json =>
  budgets === undefined ? {} : { errorBudget: oneBudget(budgets.profile), sizes: budgets.sizes.map(oneBudget) };

const oneBudget = (budget: Budget): Json => ({
  of: budget.of,
  tolerance: budget.tolerance,
  rows: budget.rows.map((r) => ({
    name: printPlain(r.figure.name),
    kind: r.kind,
    error: figure(r.figure),
    share: r.share,
    remedy: printPlain(r.remedy),
  })),
  systematic: figure(budget.systematic),
  random: figure(budget.random),
  total: figure(budget.total),
  biggest: printPlain(budget.biggest.sentence),
});

export const otherWaysJson = ({ otherWays }: Pick<CutFacts, 'otherWays'>): Json =>
  otherWays === undefined
    ? {}
    : {
        otherProcesses: {
          kind: otherWays.kind,
          verdict: printPlain(otherWays.verdict),
          ways: otherWays.ways.map(({ process, kind, sentence, edge }) => ({
            process,
            kind,
            sentence: printPlain(sentence),
            perpendicularity: edge && figure(edge.perpendicularity),
            slope: edge && figure(edge.slope),
            roughness: edge && figure(edge.roughness),
            ra: edge?.ra,
            minutes: edge && figure(edge.minutes),
          })),
        },
      };
