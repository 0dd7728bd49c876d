/** The error budget as text: what each share comes to, the biggest one, and what would lower it. */

import { type Budget, confidenceTold, isOver, type PlanBudgets } from '../../result/shown.ts';
import { bare, beginning, count, fixed, limit, mm, name, type Part, quantity, um, unitName } from '../../text/part.ts';
import { NOTHING, phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, type WrittenTable } from '../paper.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

/** Shares below this (µm) are printed as nothing. */
const LEAST = 0.05;

const MOST_SIZES = 12;

export const budgetLines = ({ profile, sizes }: PlanBudgets, { tableText, wrapped }: Printer = AS_IT_IS): readonly string[] => [
  tableText(budgetTable(profile)),
  wrapped(profile.biggest.sentence, '  '),
  ...sizes.slice(0, MOST_SIZES).map((s) => wrapped(sizeLine(s), '  ')),
  ...(sizes.length > MOST_SIZES ? [wrapped(words.moreSizes(sizes.length - MOST_SIZES), '  ')] : []),
];

export const budgetTable = (budget: Budget): WrittenTable => ({
  kind: 'table',
  columns: [column(words.error, 4), column(words.kind, 1.5), column(unitName('µm'), 1, 'right'), column(words.share, 1, 'right')],
  rows: [
    ...budget.rows
      .filter((r) => r.figure.value >= LEAST)
      .map((r) => [beginning(r.figure.name), words[r.kind], bare(r.figure.value, 'µm', fixed(1)), percent(r.share)]),
    // The last share is the tolerance itself.
    [words.all, NOTHING, { ...expectedError(budget), bare: true } as Part, { ...allowed(budget), bare: true } as Part],
  ],
  note: words.note(budget.confidence, um(budget.systematic.value, fixed(1)), um(budget.random.value, fixed(1))),
});

const allowed = ({ tolerance }: Budget): Part => limit(tolerance * 1000, 'µm', fixed(1));

const sizeLine = (budget: Budget): Text => {
  const { of, biggest } = budget;
  const error = expectedError(budget);
  const what = of.kind === 'size' ? words.size(of.name, of.length) : words.profile;
  return sentences([(isOver(budget) ? words.notSure : words.held)(what, error, allowed(budget)), biggest.sentence]);
};

/** Rounded up, so that no limit is met by rounding. */
const expectedError = ({ total }: Budget): Part => um(Math.ceil(total.value * 10 - 1e-6) / 10, fixed(1));

const percent = (share: number): Part => quantity(Math.round(share * 100), '%', fixed(0));

const words = phrases('budget-table', {
  error: say`Profile error`,
  kind: say`Kind`,
  share: say`Share`,
  systematic: say`systematic`,
  random: say`random`,
  all: say`Total, and the tolerance`,
  note: (k: number, systematic: Part, random: Part) =>
    say`Systematic errors act in one direction and are added (${{ systematic }}); random ones, one standard deviation each, are combined as root sum of squares (${{ random }}) and counted k times: ${{ sure: confidenceTold(k) }}.`,
  moreSizes: (sizes: number) => say`and ${{ sizes: count(sizes) }} more sizes; --json lists them all`,
  size: (size: string, length: number) => say`${{ size: name(size) }}, ${{ length: mm(length) }}`,
  profile: say`Profile`,
  held: (what: Text, error: Part, tolerance: Part) => say`${{ what }}: ${{ error }} expected, ${{ tolerance }} required: held.`,
  notSure: (what: Text, error: Part, tolerance: Part) =>
    say`${{ what }}: ${{ error }} expected, ${{ tolerance }} required: not certain to be held.`,
});
