/** What the owner should hear of a run on the schedule: spools that end at night, long waits, pieces left out. */
import { atField, type Finding } from '../../text/finding.ts';
import { count, duration, moment } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { Schedule, SpoolEnd } from './schedule.ts';

export const findingsOfSchedule = (schedule: Schedule): readonly Finding[] => [
  ...spoolFindings(schedule),
  ...waitFindings(schedule),
  ...shortFindings(schedule),
];

const spoolFindings = ({ spools }: Schedule): readonly Finding[] => {
  const atNight = spools.filter((s) => s.atNight);
  const first = atNight[0];
  if (first === undefined) return [];
  return [
    find('spool-ends-at-night', spoolEnds(first, atNight.length - 1), {
      place: atField('spoolLeft'),
      remedy: say`Fit a full spool at ${{ before: moment(first.before) }}, the last time an operator is at the machine before that.`,
    }),
  ];
};

const spoolEnds = ({ at, changed }: SpoolEnd, more: number): Text => {
  const when = { at: moment(at), changed: moment(changed) };
  return more === 0
    ? say(
        'spool-ends-at-night/once',
      )`The spool runs out ${{ at: when.at }}, outside the shifts; the machine stands until ${{ changed: when.changed }}.`
    : say(
        'spool-ends-at-night/more',
      )`The spool runs out ${{ at: when.at }}, outside the shifts; the machine stands until ${{ changed: when.changed }}. ${{ more: count(more) }} more run out at night after it.`;
};

/** Waits shorter than an hour are not worth a word. */
const LONG_WAIT = 60;

/** What waits for a new spool is told with the spool. */
const waitFindings = ({ events, start, spools }: Schedule): readonly Finding[] => {
  const waits = events.filter(
    (e) =>
      e.kind === 'waiting for a person' &&
      e.to - e.from >= LONG_WAIT &&
      e.from > start &&
      !spools.some((s) => Math.abs(s.changed - e.to) < 1),
  );
  const first = waits[0];
  if (first === undefined) return [];
  const place = first.block === undefined ? undefined : ({ kind: 'line', line: first.block + 1 } as const);
  const remedy = say('stop-at-night.remedy')`Another start, or all roughs first, may bring the stops into the shift.`;
  const all = duration(waits.reduce((sum, w) => sum + w.to - w.from, 0));
  const [from, to] = [moment(first.from), moment(first.to)];
  const text =
    waits.length === 1
      ? say('stop-at-night/once')`The machine waits once for an operator, ${{ all }} in total: first from ${{ from }} to ${{ to }}.`
      : say(
          'stop-at-night/often',
        )`The machine waits ${{ times: count(waits.length) }} times for an operator, ${{ all }} in total: first from ${{ from }} to ${{ to }}.`;
  return [find('stop-at-night', text, { place, remedy })];
};

const shortFindings = ({ pieces }: Schedule): readonly Finding[] =>
  pieces.laid === pieces.asked
    ? []
    : [
        find(
          'schedule-cut-short',
          say`Only ${{ laid: count(pieces.laid) }} of ${{ asked: count(pieces.asked) }} pieces are scheduled: all of them would be too many events.`,
          {
            place: atField('quantity'),
          },
        ),
      ];
