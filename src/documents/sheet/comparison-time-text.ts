/** What-ifs that are about time: the table of starts and orders, with when each is done and whom it needs. */
import { type Moment, printMoment } from '../../estimate/clock/moment.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printMoney } from '../../text/print/money.ts';
import { column } from '../paper.ts';
import { tableText, wrapped } from '../text.ts';

/** Moments on the clock of the shop; all else min, for all pieces together. */
export interface TimeOutcome {
  readonly start: Moment;
  readonly done: Moment;
  /** Somebody is at the machine. */
  readonly attended: number;
  /** The machine stands and waits for somebody. */
  readonly waiting: number;
  /** Cutting while nobody is in the shop. */
  readonly atNight: number;
  /** For which the machine is taken up while somebody is in the shop: hours that another job could have had. */
  readonly inShift: number;
}

export interface TimeRow {
  readonly what: 'run order' | 'night start';
  /** As one would say it to the customer. */
  readonly sentence: string;
  readonly outcome: TimeOutcome;
  /** Minutes by which it is done before the job as asked; less than 0 when later. */
  readonly sooner: number;
  /** Hours of the shift and of people won, at the rates of the shop, minor money units; the price does not know them. */
  readonly worth: number;
}

export interface TimeComparison {
  readonly currency: string;
  readonly now: TimeOutcome;
  /** What is worth most first. */
  readonly rows: readonly TimeRow[];
  /** Which order to run, and why. */
  readonly advice: string;
}

export const timeText = ({ currency, now, rows, advice }: TimeComparison): string => {
  const table = tableText({
    kind: 'table',
    columns: [
      column('When would it be done if', 3),
      column('Start', 2),
      column('Done', 2),
      column('Cuts at night', 1, 'right'),
      column('Somebody there', 1, 'right'),
      column('Of the shift', 1, 'right'),
      column('Worth', 1, 'right'),
    ],
    rows: [
      ['As asked', ...cells(now), ''],
      ...rows.map((r, i) => [`${i + 1}  ${r.what}`, ...cells(r.outcome), worthText(r.worth, currency)]),
    ],
    note: 'Of the shift: how long the machine is taken up while somebody is in the shop. Worth: those hours and those of people, at your rates; it is not in the price.',
  });
  return [table, ...rows.map((r, i) => wrapped(`${r.sentence}.`, `  ${i + 1}  `)), wrapped(advice, '  ')].join('\n');
};

const worthText = (minor: number, currency: string): string =>
  minor < 0 ? `costs ${printMoney(-minor, currency)}` : printMoney(minor, currency);

const cells = (o: TimeOutcome): readonly string[] => [
  printMoment(o.start),
  printMoment(o.done),
  printDuration(Math.round(o.atNight)),
  printDuration(Math.round(o.attended)),
  printDuration(Math.round(o.inShift)),
];
