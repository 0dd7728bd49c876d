/** The annex of whys: every figure of the answer sentence, down to what it was made of, numbered so that one can point at it. */

import type { Figure } from '../../quantity/figure.ts';
import { hoursOf, type JobFacts } from '../../result/facts.ts';
import type { CutFacts, HoursFacts } from '../../result/outcome-facts.ts';
import { identityOf, printSource } from '../../text/print/explain.ts';
import { printFigure } from '../../text/print/figure.ts';
import { printPlain } from '../../text/print/print.ts';
import { column, type Paper, type PaperBlock, subtitleOf } from '../paper.ts';

export const annex = (facts: JobFacts, cut: CutFacts): Paper => ({
  title: 'Annex: why these figures',
  subtitle: subtitleOf(facts),
  foot: `${facts.head.name} · annex · Kerfwright`,
  blocks: [
    { kind: 'text', text: printPlain(facts.sentence), large: true },
    {
      kind: 'text',
      text: 'Each figure of this answer, by which formula it was worked out, and what went into it, down to drawing, shop, handbook or assumption. Ranges are one standard deviation. A figure that goes in at several places is told once and pointed at after that.',
    },
    ...trees(cut, hoursOf(facts)?.estimate),
  ],
});

const trees = (cut: CutFacts, estimate: HoursFacts['estimate'] | undefined): readonly PaperBlock[] => {
  const told = new Map<unknown, number>();
  return questionsOf(cut, estimate).flatMap(({ title, figure }): readonly PaperBlock[] => [
    { kind: 'heading', text: title },
    table(rowsOf(figure, 0, told, estimate?.currency)),
  ]);
};

const questionsOf = (
  { plan, budgets }: CutFacts,
  estimate: HoursFacts['estimate'] | undefined,
): readonly { readonly title: string; readonly figure: Figure }[] => [
  ...(budgets === undefined ? [] : [{ title: 'How near to the drawing, with everything counted', figure: budgets.profile.total }]),
  { title: 'How near the passes come', figure: plan.accuracy },
  { title: 'How smooth', figure: plan.finish },
  ...(estimate === undefined
    ? []
    : [
        { title: 'How long', figure: estimate.total },
        { title: 'Of which alone', figure: estimate.unattended },
        { title: 'How much for each piece', figure: estimate.each },
      ]),
];

const table = (rows: readonly (readonly string[])[]): PaperBlock => ({
  kind: 'table',
  columns: [
    column('No.', 0.5, 'right'),
    column('Figure', 4),
    column('Value', 2, 'right'),
    { ...column('By, or whence', 4), holds: 'control' },
  ],
  rows,
});

/** What went into a figure stands under it, a dot further in; each figure has its number, by which it is pointed at later. */
const rowsOf = (
  figure: Figure,
  depth: number,
  told: Map<unknown, number>,
  currency: string | undefined,
): readonly (readonly string[])[] => {
  const before = told.get(identityOf(figure));
  const name = `${'· '.repeat(depth)}${printPlain(figure.name)}`;
  const value = printFigure(figure, currency === undefined ? {} : { currency });
  if (before !== undefined) return [['', name, value, `as number ${before}`]];
  const number = told.size + 1;
  told.set(identityOf(figure), number);
  return [[String(number), name, value, whence(figure)], ...figure.from.flatMap((f) => rowsOf(f, depth + 1, told, currency))];
};

const whence = ({ basis, source, formula, warnings }: Figure): string =>
  [
    basis === 'computed'
      ? `${formula === undefined ? 'computed' : printPlain(formula)} (${printSource(source)})`
      : `${basis}: ${printSource(source)}`,
    ...warnings.map((w) => `note: ${printPlain(w)}`),
  ].join('; ');
