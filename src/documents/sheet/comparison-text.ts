/** What a comparison found, and how it is told: the job as asked, its changes ranked by what they save, price over finish. */

import type { Figure } from '../../quantity/figure.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printMoney } from '../../text/print/money.ts';
import { accuracy, finish } from '../../text/print/phrases.ts';
import { column } from '../paper.ts';
import { tableText, wrapped } from '../text.ts';
import { type TimeComparison, timeText } from './comparison-time-text.ts';

export interface Outcome {
  /** Minor money units for one piece. */
  readonly each: number;
  readonly minutes: number;
  readonly unattended: number;
  readonly wire: string;
  readonly passes: number;
  readonly accuracy: Figure;
  readonly finish: Figure;
}

/** Values of the job file that make the job so; left out where no value of it says so. */
export type JobChange = Readonly<Record<string, unknown>>;

export type Compared =
  | {
      readonly kind: 'can';
      readonly what: string;
      readonly sentence: string;
      readonly outcome: Outcome;
      readonly saves: number;
      readonly change?: JobChange;
    }
  | { readonly kind: 'cannot'; readonly what: string; readonly sentence: string; readonly reason: string };

export type Comparison =
  | {
      readonly kind: 'compared';
      readonly currency: string;
      readonly now: Outcome;
      readonly rows: readonly Compared[];
      /** Other starts and orders; none where the job cannot be laid on the clock. */
      readonly time?: TimeComparison;
    }
  | { readonly kind: 'cannot'; readonly reason: string };

/** One point of price against finish: Ra asked for and reached, µm, and the price of one piece. */
export interface PricePoint {
  readonly finish: number;
  readonly each: number;
  readonly passes: number;
  readonly reached: number;
  /** Found by narrowing down: the finest finish that this number of passes still gives, to a hundredth of it. */
  readonly lastOfStep?: true;
}

export const comparisonText = (comparison: Comparison, curve: readonly PricePoint[]): string => {
  if (comparison.kind === 'cannot') return wrapped(`Nothing to compare: ${comparison.reason}`, '');
  const { currency, now, rows } = comparison;
  const money = (minor: number): string => printMoney(minor, currency);
  const able = rows.flatMap((r) => (r.kind === 'can' ? [[r.sentence, ...cells(r.outcome, money), signed(r.saves, money)]] : []));
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
  const cannot = rows.flatMap((r) => (r.kind === 'cannot' ? [wrapped(`${r.sentence}: no. ${r.reason}`, '  - ')] : []));
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
    `Price against finish\n${prices}`,
  ]
    .filter((p) => p !== '')
    .join('\n\n');
};

const cells = (o: Outcome, money: (minor: number) => string): readonly string[] => [
  money(o.each),
  printDuration(o.minutes),
  String(o.passes),
  `±${accuracy(o.accuracy.value)}`,
  finish(o.finish),
];

const signed = (minor: number, money: (minor: number) => string): string =>
  Math.abs(minor) < 0.5 ? 'nothing' : minor > 0 ? money(minor) : `costs ${money(-minor)} more`;
