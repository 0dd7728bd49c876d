/** The annex of whys: every figure of the answer sentence, down to what it was made of, numbered so that one can point at it. */
import type { Figure } from '../quantity/figure.ts';
import { printFigure } from '../quantity/print.ts';
import type { JobFacts } from './facts.ts';
import { column, type Paper, type PaperBlock } from './paper.ts';

export const annex = (facts: JobFacts): Paper => ({
  title: 'Annex: why these figures',
  subtitle: `${facts.name} · ${facts.shop} · ${facts.day}`,
  foot: `${facts.name} · annex · Kerfwright`,
  blocks: [
    { kind: 'text', text: facts.sentence, large: true },
    {
      kind: 'text',
      text: 'Each figure of this answer, by which formula it was worked out, and what went into it, down to drawing, shop, handbook or assumption. Ranges are one standard deviation. A figure that goes in at several places is told once and pointed at after that.',
    },
    ...trees(facts),
  ],
});

const trees = (facts: JobFacts): readonly PaperBlock[] => {
  const told = new Map<Figure, string>();
  return questionsOf(facts).flatMap(({ title, figure }, i): readonly PaperBlock[] => [
    { kind: 'heading', text: `${i + 1}. ${title}` },
    table(rowsOf(figure, String(i + 1), told, facts.estimate?.currency)),
  ]);
};

const questionsOf = ({ plan, estimate, budgets }: JobFacts): readonly { readonly title: string; readonly figure: Figure }[] => [
  ...(budgets === undefined ? [] : [{ title: 'How near to the drawing, with everything counted', figure: budgets.profile.total }]),
  ...(plan === undefined
    ? []
    : [
        { title: 'How near the passes come', figure: plan.accuracy },
        { title: 'How smooth', figure: plan.finish },
      ]),
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
  columns: [column('No.', 1.1), column('Figure', 3), column('Value', 2.1, 'right'), column('By, or whence', 4.2)],
  rows,
});

/** Deeper figures stand under the one they went into, with its number and one more digit. */
const rowsOf = (
  figure: Figure,
  number: string,
  told: Map<Figure, string>,
  currency: string | undefined,
): readonly (readonly string[])[] => {
  const before = told.get(figure);
  const value = printFigure(figure, currency === undefined ? {} : { currency });
  if (before !== undefined) return [[number, figure.name, value, `told as ${before}`]];
  told.set(figure, number);
  return [[number, figure.name, value, whence(figure)], ...figure.from.flatMap((f, i) => rowsOf(f, `${number}.${i + 1}`, told, currency))];
};

const whence = ({ basis, source, formula, warnings }: Figure): string =>
  [basis === 'computed' ? `${formula ?? 'computed'} (${source})` : `${basis}: ${source}`, ...warnings.map((w) => `note: ${w}`)].join('; ');
