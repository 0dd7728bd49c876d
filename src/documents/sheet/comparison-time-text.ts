/** What-ifs that are about time: the table of starts and orders, with when each is done and whom it needs. */
import { printMoment } from '../../estimate/clock/moment.ts';
import type { TimeComparison, TimeOutcome } from '../../result/comparison-time.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printMoney } from '../../text/print/money.ts';
import { printPlain } from '../../text/print/print.ts';
import { column } from '../paper.ts';
import { tableText, wrapped } from '../text.ts';

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
  return [table, ...rows.map((r, i) => wrapped(`${printPlain(r.sentence)}.`, `  ${i + 1}  `)), wrapped(printPlain(advice), '  ')].join(
    '\n',
  );
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
