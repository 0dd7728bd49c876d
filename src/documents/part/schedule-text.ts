/** A run on the schedule in a few sentences: when it is done, when somebody must be there, when the machine waits. */

import type { Schedule, ScheduleEvent } from '../../result/shown.ts';
import { DAY, type Moment } from '../../text/moment.ts';
import { contour, count, duration, list, moment, type Part } from '../../text/part.ts';
import { NOTHING, only, phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { same } from '../../text/within.ts';

/** Visits to the machine that are told one by one. */
const MOST_VISITS = 8;
/** Whoever is needed again so soon stays at the machine, minutes. */
const STAYS = 15;

export const scheduleText = (schedule: Schedule): readonly Text[] => [
  doneSentence(schedule),
  visitsSentence(schedule),
  aloneSentence(schedule),
];

const doneSentence = ({ start, finish, early, late, pieces }: Schedule): Text => {
  const [began, done] = [moment(start), moment(finish)];
  const sameDay = [early, late].every((at) => dayOf(at) === dayOf(finish));
  const [first, last] = [early, late].map((at) => moment(at, sameDay ? 'time' : 'day and time'));
  const likely = late - early < 2 || first === undefined || last === undefined ? NOTHING : words.likely(first, last);
  return pieces.laid === 1 ? words.done(began, done, likely) : words.allDone(began, pieces.laid, done, likely);
};

const visitsSentence = (schedule: Schedule): Text => {
  const visits = visitsOf(schedule);
  if (visits.length === 0) return words.nobody;
  let day = -1;
  const told = visits.slice(0, MOST_VISITS).map(({ from, to, names }) => {
    const when = moment(from, dayOf(from) === day ? 'time' : 'day and time');
    day = dayOf(from);
    return to - from > STAYS
      ? words.visitUntil(when, moment(to, dayOf(to) === day ? 'time' : 'day and time'), namesText(names))
      : words.visit(when, namesText(names));
  });
  const more = visits.length - told.length;
  if (more <= 0) return words.visits(list(told));
  return (schedule.left > 0 ? words.visitsOrMore : words.visitsMore)(list(told), more);
};

const dayOf = (at: Moment): number => Math.floor(at / DAY);

const namesText = (names: readonly Text[]): Part | Text =>
  names.length <= 3 ? list(names) : words.andMore(list(names.slice(0, 2)), names.length - 2);

const aloneSentence = ({ totals }: Schedule): Text =>
  sentences([
    totals.cuttingAtNight < 1 ? words.byDay(totals.cutting) : words.atNight(totals.cutting, totals.cuttingAtNight),
    totals.waiting < 1 ? words.noWait : words.waits(totals.waiting),
  ]);

export interface Visit {
  readonly from: Moment;
  readonly to: Moment;
  /** What it is about, each once: contours, threading, loading, the spool. */
  readonly names: readonly Text[];
}

/** Times at which somebody is at the machine; what follows within a quarter of an hour is one visit. */
export const visitsOf = ({ events }: Schedule): readonly Visit[] => {
  const visits: { from: Moment; to: Moment; names: Text[] }[] = [];
  for (const event of events) {
    if (!event.needsPerson) continue;
    const last = visits.at(-1);
    const name = nameOf(event);
    if (last === undefined || event.from - last.to > STAYS) visits.push({ from: event.from, to: event.to, names: [name] });
    else {
      last.to = event.to;
      if (!last.names.some((known) => same(known, name))) last.names.push(name);
    }
  }
  return visits;
};

/** A stop at a contour is named by it, everything else by its kind: a line that is cut open is a stop like others. */
const nameOf = ({ kind, piece, stop }: ScheduleEvent): Text => {
  if (kind === 'loading') return words.load(piece);
  if (kind === 'spool change') return words.spool;
  if (kind === 'threading') return words.thread;
  return stop?.loop?.startsWith('L') === true ? only(contour(stop.loop)) : words.stop;
};

/** 'Thu 08:40', and with the date throughout a run that touches more than seven days, of which two bear one name. */
export const timeText = (at: Moment, { start, finish }: Pick<Schedule, 'start' | 'finish'>): Part =>
  moment(at, dayOf(finish) - dayOf(start) < 7 ? 'weekday and time' : 'day and time');

const words = phrases('on-the-clock', {
  done: (start: Part, done: Part, likely: Text) => say`Start ${{ start }}, finish ${{ done }}${{ likely }}.`,
  allDone: (start: Part, pieces: number, done: Part, likely: Text) =>
    say`Start ${{ start }}, finish ${{ done }} for ${{ pieces: count(pieces) }} pieces${{ likely }}.`,
  likely: (early: Part, late: Part) => say` (likely between ${{ early }} and ${{ late }})`,
  nobody: say`No attendance needed during the run.`,
  visit: (at: Part, what: Part | Text) => say`${{ at }} (${{ what }})`,
  visitUntil: (at: Part, until: Part, what: Part | Text) => say`${{ at }} to ${{ until }} (${{ what }})`,
  visits: (visits: Part) => say`Operator needed at ${{ visits }}.`,
  visitsMore: (visits: Part, more: number) => say`Operator needed at ${{ visits }} and ${{ more: count(more) }} more times.`,
  visitsOrMore: (visits: Part, more: number) => say`Operator needed at ${{ visits }} and ${{ more: count(more) }} or more further times.`,
  andMore: (names: Part, more: number) => say`${{ names }} and ${{ more: count(more) }} more`,
  byDay: (cutting: number) => say`It cuts ${{ cutting: duration(cutting) }}, all of it during shifts.`,
  atNight: (cutting: number, night: number) =>
    say`It cuts ${{ cutting: duration(cutting) }}, ${{ night: duration(night) }} of it outside the shifts.`,
  noWait: say`No waiting for an operator.`,
  waits: (minutes: number) => say`The machine waits ${{ waits: duration(minutes) }} for an operator.`,
  load: (piece: number) => say`load piece ${{ piece: count(piece) }}`,
  spool: say`new spool`,
  thread: say`thread the wire`,
  stop: say`stop`,
});
