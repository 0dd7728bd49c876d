/** How a comparison is told: the job as asked, its changes ranked by what they save, price over finish. */

import type { Compared, ComparedOutcome, Comparison, PricePoint } from '../../result/comparison.ts';
import { bare, count, duration, money, type Part, promised, significant, unitName } from '../../text/part.ts';
import { NOTHING, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, type Said, type WrittenTable } from '../paper.ts';
import { AS_IT_IS, type Printer } from '../text.ts';
import { timeText } from './comparison-time-text.ts';

export const comparisonText = (comparison: Comparison, curve: readonly PricePoint[], printer: Printer = AS_IT_IS): string => {
  const { said, tableText, wrapped } = printer;
  if (comparison.kind === 'cannot') return wrapped(words.cannotCompare(comparison.reason), '');
  const { currency, rows, time } = comparison;
  const cannot = rows.flatMap((r) => (r.kind === 'cannot' ? [wrapped(words.cannot(r.sentence, r.reason), '  - ')] : []));
  return [
    tableText(changesTable(comparison)),
    time === undefined ? '' : timeText(time, printer),
    cannot.length === 0 ? '' : [said(words.notPossible), ...cannot].join('\n'),
    curve.length === 0 ? '' : [said(words.priceAgainstFinish), tableText(priceTable(curve, currency))].join('\n'),
  ]
    .filter((p) => p !== '')
    .join('\n\n');
};

const changesTable = ({ currency, now, rows }: Extract<Comparison, { kind: 'compared' }>): WrittenTable => ({
  kind: 'table',
  columns: [
    column(words.change, 5),
    column(words.each, 1, 'right'),
    column(words.machine, 1, 'right'),
    column(words.passes, 1, 'right'),
    column(words.holds, 1, 'right'),
    column(words.ra, 1, 'right'),
    column(words.saves, 1, 'right'),
  ],
  rows: [[words.asAsked, ...cells(now, currency), NOTHING], ...rows.flatMap((r) => ableRow(r, currency))],
});

const ableRow = (row: Compared, currency: string): readonly (readonly Said[])[] =>
  row.kind === 'can' ? [[row.sentence, ...cells(row.outcome, currency), saved(row.saves, currency)]] : [];

const cells = ({ each, minutes, passes, accuracy, finish }: ComparedOutcome, currency: string): readonly Said[] => [
  money(each, currency),
  duration(minutes),
  count(passes),
  { ...promised(accuracy.value), bare: true } as Part,
  bare(finish.value, 'µm', significant(2)),
];

const saved = (minor: number, currency: string): Said => {
  if (Math.abs(minor) < 0.5) return words.nothing;
  return minor > 0 ? money(minor, currency) : words.costsMore(money(-minor, currency));
};

const priceTable = (curve: readonly PricePoint[], currency: string): WrittenTable => ({
  kind: 'table',
  columns: [
    column(words.asked, 2),
    column(words.each, 1, 'right'),
    column(words.passes, 1, 'right'),
    column(words.reached, 1, 'right'),
    column(words.step, 2),
  ],
  rows: curve.map((p, i) => [
    words.finish(bare(p.finish, 'µm', { as: 'given' })),
    money(p.each, currency),
    count(p.passes),
    words.finish(bare(p.reached, 'µm', significant(2))),
    stepOf(p, curve[i - 1]),
  ]),
});

const stepOf = ({ passes, lastOfStep }: PricePoint, before: PricePoint | undefined): Text => {
  if (lastOfStep === true) return words.finest(passes);
  return before !== undefined && passes > before.passes ? words.fromHere(passes) : NOTHING;
};

const words = phrases('comparison', {
  cannotCompare: (reason: Text) => say`Nothing to compare: ${{ reason }}`,
  change: say`What it would cost if`,
  each: say`Each`,
  machine: say`Machine`,
  passes: say`Passes`,
  holds: say`Expected ${{ unit: unitName('mm') }}`,
  ra: say`Ra ${{ unit: unitName('µm') }}`,
  saves: say`Saves`,
  asAsked: say`As specified`,
  nothing: say`nothing`,
  costsMore: (price: Part) => say`costs ${{ price }} more`,
  cannot: (change: Text, reason: Text) => say`${{ change }}: not possible. ${{ reason }}`,
  notPossible: say`Not possible`,
  priceAgainstFinish: say`Price against finish`,
  asked: say`Required finish, ${{ unit: unitName('µm') }}`,
  reached: say`Expected, ${{ unit: unitName('µm') }}`,
  step: say`Step`,
  finish: (finish: Part) => say`Ra ${{ finish }}`,
  finest: (passes: number) => say`the finest with ${{ passes: count(passes, 'pass') }}`,
  fromHere: (passes: number) => say`${{ passes: count(passes, 'pass') }} from here`,
});
