/** The annex of whys: every figure of the answer sentence, down to what it was made of, numbered so that one can point at it. */

import { hoursOf, type JobFacts } from '../../result/facts.ts';
import type { CutFacts, HoursFacts } from '../../result/outcome-facts.ts';
import { type Basis, deviationOf, type Figure } from '../../result/shown.ts';
import { count, figured, list, money, term } from '../../text/part.ts';
import { identityOf, sourceOf } from '../../text/print/explain.ts';
import { NOTHING, only, phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, footOf, type Said, subtitleOf, type WrittenBlock, type WrittenPaper } from '../paper.ts';
import { costTable } from '../part/job-tables.ts';

export const annex = (facts: JobFacts, cut: CutFacts): WrittenPaper => ({
  title: words.title,
  subtitle: subtitleOf(facts),
  foot: footOf(facts, words.foot),
  blocks: [
    { kind: 'text', text: facts.sentence, large: true },
    { kind: 'text', text: words.about },
    ...adding(hoursOf(facts)?.estimate),
    ...trees(cut, hoursOf(facts)?.estimate),
  ],
});

const trees = (cut: CutFacts, estimate: HoursFacts['estimate'] | undefined): readonly WrittenBlock[] => {
  const told = new Map<unknown, number>();
  return questionsOf(cut, estimate).flatMap(({ title, figure }): readonly WrittenBlock[] => [
    { kind: 'heading', text: title },
    table(rowsOf(figure, 0, told, estimate?.currency)),
  ]);
};

/** The lines of the price as they add up. */
const adding = (estimate: HoursFacts['estimate'] | undefined): readonly WrittenBlock[] =>
  estimate === undefined ? [] : [{ kind: 'heading', text: words.adding }, costTable(estimate)];

const questionsOf = (
  { plan, budgets }: CutFacts,
  estimate: HoursFacts['estimate'] | undefined,
): readonly { readonly title: Text; readonly figure: Figure }[] => [
  ...(budgets === undefined ? [] : [{ title: words.counted, figure: budgets.profile.total }]),
  { title: words.passes, figure: plan.accuracy },
  { title: words.smooth, figure: plan.finish },
  ...(estimate === undefined
    ? []
    : [
        { title: words.long, figure: estimate.total },
        { title: words.alone, figure: estimate.unattended },
        { title: words.much, figure: estimate.each },
      ]),
];

const table = (rows: readonly (readonly Said[])[]): WrittenBlock => ({
  kind: 'table',
  columns: [column(words.number, 0.5, 'right'), column(words.figure, 4), column(words.value, 2, 'right'), column(words.whence, 4)],
  rows,
});

/** What went into a figure stands under it, a dot further in; each figure has its number, by which it is pointed at later. */
const rowsOf = (figure: Figure, depth: number, told: Map<unknown, number>, currency: string | undefined): readonly (readonly Said[])[] => {
  const before = told.get(identityOf(figure));
  const name = symbols`${term('· '.repeat(depth))}${figure.name}`;
  const value = shownOf(figure, currency);
  if (before !== undefined) return [[NOTHING, name, value, words.as(before)]];
  const number = told.size + 1;
  told.set(identityOf(figure), number);
  return [[count(number), name, value, whence(figure)], ...figure.from.flatMap((f) => rowsOf(f, depth + 1, told, currency))];
};

/** '5.6 ± 1.7 mm/min'; '12.40 EUR/h ± 3.10 EUR/h' for money. */
const shownOf = (figure: Figure, currency: string | undefined): Said => {
  const { value, unit } = figure;
  if (currency === undefined || !(unit === 'money' || unit.startsWith('money/'))) return figured(figure);
  const deviation = deviationOf(figure);
  const amount = money(value, currency, unit);
  return deviation > 0 ? symbols`${amount} ± ${money(deviation, currency, unit)}` : amount;
};

const whence = (figure: Figure): Said => only(list([origin(figure), ...figure.warnings.map(words.note)], 'semicolon'));

const origin = (figure: Pick<Figure, 'basis' | 'source' | 'formula'>): Text => {
  const { basis, formula } = figure;
  const by = sourceOf(figure);
  return basis === 'computed' ? symbols`${formula ?? bases.computed} (${by})` : symbols`${bases[basis]}: ${by}`;
};

const bases: Readonly<Record<Basis, Text>> = phrases('basis', {
  drawing: say`drawing`,
  job: say`asked for`,
  counted: say`counted`,
  shop: say`shop`,
  published: say`published`,
  measured: say`measured`,
  'common practice': say`common practice`,
  assumed: say`assumed`,
  computed: say`computed`,
});

const words = phrases('annex', {
  title: say`Calculation sheet`,
  foot: say`calculation sheet`,
  about: say`Each figure of this answer, its formula and inputs, down to drawing, shop, handbook or assumption. Ranges are one standard deviation. A figure used more than once is listed once, then referred to by number.`,
  counted: say`Expected accuracy, all errors included`,
  passes: say`Expected accuracy of the passes`,
  smooth: say`Finish`,
  long: say`Machine time`,
  alone: say`Unattended time`,
  much: say`Price each`,
  adding: say`How the price adds up`,
  number: say`No.`,
  figure: say`Figure`,
  value: say`Value`,
  whence: say`Formula or source`,
  as: (number: number) => say`see number ${{ number: count(number) }}`,
  note: (warning: Text) => say`note: ${{ warning }}`,
});
