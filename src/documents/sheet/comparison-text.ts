/** How a comparison is told: the job as asked, its changes ranked by what they save, price over finish. */

import type { ComparedOutcome, Comparison, PricePoint } from '../../result/comparison.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printMoney } from '../../text/print/money.ts';
import { accuracy, finish } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import { column } from '../paper.ts';
import { tableText, wrapped } from '../text.ts';
import { timeText } from './comparison-time-text.ts';

export const comparisonText = (comparison: Comparison, curve: readonly PricePoint[]): string => {
  if (comparison.kind === 'cannot') return wrapped(`Nothing to compare: ${printPlain(comparison.reason)}`, '');
  const { currency, now, rows } = comparison;
  const money = (minor: number): string => printMoney(minor, currency);
  const able = rows.flatMap((r) =>
    r.kind === 'can' ? [[printPlain(r.sentence), ...cells(r.outcome, money), signed(r.saves, money)]] : [],
  );
  const table = tableText({
    kind: 'table',
    columns: [
      column('What would it cost if', 5),
      column('Each', 1, 'right'),
      column('Machine', 1, 'right'),
      column('Passes', 1, 'right'),
      column('Holds mm', 1, 'right'),
      column('Ra µm', 1, 'right'),
      column('Saves', 1, 'right'),
    ],
    rows: [['As asked', ...cells(now, money), ''], ...able],
  });
  const cannot = rows.flatMap((r) =>
    r.kind === 'cannot' ? [wrapped(`${printPlain(r.sentence)}: no. ${printPlain(r.reason)}`, '  - ')] : [],
  );
  const steps = curve.map((p, i) => [
    `Ra ${p.finish}`,
    money(p.each),
    String(p.passes),
    `Ra ${Number(p.reached.toPrecision(2))}`,
    p.lastOfStep === true
      ? `the finest with ${p.passes === 1 ? '1 pass' : `${p.passes} passes`}`
      : p.passes > (curve[i - 1]?.passes ?? p.passes)
        ? `${p.passes} passes from here`
        : '',
  ]);
  const prices = tableText({
    kind: 'table',
    columns: [
      column('Finish asked for, µm', 2),
      column('Each', 1, 'right'),
      column('Passes', 1, 'right'),
      column('Comes out, µm', 1, 'right'),
      column('Step', 2),
    ],
    rows: steps,
  });
  const { time } = comparison;
  return [
    table,
    time === undefined ? '' : timeText(time),
    cannot.length === 0 ? '' : `Not possible\n${cannot.join('\n')}`,
    curve.length === 0 ? '' : `Price against finish\n${prices}`,
  ]
    .filter((p) => p !== '')
    .join('\n\n');
};

const cells = (o: ComparedOutcome, money: (minor: number) => string): readonly string[] => [
  money(o.each),
  printDuration(o.minutes),
  String(o.passes),
  `±${accuracy(o.accuracy.value)}`,
  finish(o.finish),
];

const signed = (minor: number, money: (minor: number) => string): string =>
  Math.abs(minor) < 0.5 ? 'nothing' : minor > 0 ? money(minor) : `costs ${money(-minor)} more`;
