/** What-ifs that are about time: the table of starts and orders, with when each is done and whom it needs. */
import type { TimeComparison, TimeOutcome } from '../../result/comparison-time.ts';
import { count, duration, moment, money, type Part } from '../../text/part.ts';
import { NOTHING, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, type Said, type WrittenTable } from '../paper.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

export const timeText = (comparison: TimeComparison, { tableText, wrapped }: Printer = AS_IT_IS): string =>
  [
    tableText(timeTable(comparison)),
    ...comparison.rows.map((r, i) => wrapped(words.sentence(r.sentence), `  ${i + 1}  `)),
    wrapped(comparison.advice, '  '),
  ].join('\n');

const timeTable = ({ currency, now, rows }: TimeComparison): WrittenTable => ({
  kind: 'table',
  columns: [
    column(words.change, 3),
    column(words.start, 2),
    column(words.done, 2),
    column(words.atNight, 1, 'right'),
    column(words.attended, 1, 'right'),
    column(words.inShift, 1, 'right'),
    column(words.worth, 1, 'right'),
  ],
  rows: [
    [words.asAsked, ...cells(now), NOTHING],
    ...rows.map((r, i) => [words.row(i + 1, words[r.what]), ...cells(r.outcome), worthOf(r.worth, currency)]),
  ],
  note: words.note,
});

const worthOf = (minor: number, currency: string): Said => (minor < 0 ? words.costs(money(-minor, currency)) : money(minor, currency));

const cells = (o: TimeOutcome): readonly Said[] => [
  moment(o.start),
  moment(o.done),
  duration(Math.round(o.atNight)),
  duration(Math.round(o.attended)),
  duration(Math.round(o.inShift)),
];

const words = phrases('time-comparison', {
  change: say`When it would finish if`,
  start: say`Start`,
  done: say`Finish`,
  atNight: say`Cutting outside shifts`,
  attended: say`Attended`,
  inShift: say`Machine time in shifts`,
  worth: say`Worth`,
  asAsked: say`As specified`,
  row: (number: number, what: Text) => say`${{ number: count(number) }}  ${{ what }}`,
  'run order': say`run order`,
  'night start': say`night start`,
  costs: (price: Part) => say`costs ${{ price }}`,
  sentence: (sentence: Text) => say`${{ sentence }}.`,
  note: say`Machine time in shifts: how long the job occupies the machine while it is attended. Worth: that time and the attendance, at your rates; not included in the price.`,
});
