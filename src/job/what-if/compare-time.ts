/** What a job would be if it were started at another hour or run in another order: told by time of days and by whom it needs, not only by price. */

import { type Rates, ratesOn } from '../../estimate/rates.ts';
import { bestStart } from '../../estimate/schedule/best-start.ts';
import { laySchedule, type Schedule, type ScheduleQuestion } from '../../estimate/schedule/schedule.ts';
import type { TimeComparison, TimeOutcome, TimeRow } from '../../result/comparison-time.ts';
import { DAY } from '../../text/moment.ts';
import { duration, inside, list, moment } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { JobRun } from '../job-run.ts';
import { adviseRun } from './both-orders.ts';
import type { RunKind } from './recommend-order.ts';

/** Another start or order is worth a row where it moves this many minutes. */
const WORTH = 15;

/** None where the shop has no shift, or the job cannot be laid on its clock. Prices of both orders come from the comparison's own rows. */
export const timeComparison = (run: JobRun): TimeComparison | undefined => {
  const advised = adviseRun(run);
  const onDay = ratesOn(run.shop.rates, run.day);
  if (advised.kind !== 'advised' || onDay.kind !== 'rates') return undefined;
  const asked = run.job.run;
  const other: RunKind = asked === 'attended' ? 'unattended first' : 'attended';
  const { options } = advised;
  const now = outcomeOf(options[asked].schedule);
  const against: Against = { now, rates: onDay.rates };
  const rows: readonly TimeRow[] = [
    ...rowOf('run order', against, options[other].schedule, (o) => words.order(orders[other], told(now, o))),
    ...nightStart(asked, options[asked].question, against),
    ...nightStart(other, options[other].question, against),
  ];
  const { currency } = onDay.rates;
  return { currency, now, rows: rows.toSorted((a, b) => b.worth - a.worth), advice: advised.advice.sentence };
};

/** What a row is held against, and what an hour is worth. */
interface Against {
  readonly now: TimeOutcome;
  readonly rates: Pick<Rates, 'machineHour' | 'labourHour'>;
}

const orders: Readonly<Record<RunKind, Text>> = phrases('run-order', {
  attended: say`Each opening finished in turn`,
  'unattended first': say`All roughs first, then all skims`,
});

/** The start within a day that puts most of the cutting into hours in which nobody is there; none where that wins nothing of the shift. */
const nightStart = (name: RunKind, question: ScheduleQuestion, against: Against): readonly TimeRow[] => {
  const found = bestStart([{ name, question }], { from: question.start, to: question.start + DAY });
  if (found.kind !== 'another') return [];
  const laid = laySchedule({ ...question, start: found.best.at });
  if (laid.kind !== 'schedule') return [];
  const sentence = (o: TimeOutcome): Text => words.started(o, orders[name], told(against.now, o));
  return rowOf('night start', against, laid.schedule, sentence).filter((r) => r.worth > 0);
};

const rowOf = (
  what: TimeRow['what'],
  { now, rates }: Against,
  schedule: Schedule,
  sentence: (outcome: TimeOutcome) => Text,
): readonly TimeRow[] => {
  const outcome = outcomeOf(schedule);
  const changes = [outcome.done - now.done, outcome.inShift - now.inShift, outcome.attended - now.attended];
  if (changes.every((c) => Math.abs(c) < WORTH)) return [];
  const worth = ((now.inShift - outcome.inShift) * rates.machineHour + (now.attended - outcome.attended) * rates.labourHour) / 60;
  return [{ what, sentence: sentence(outcome), outcome, sooner: now.done - outcome.done, worth }];
};

const outcomeOf = ({ start, finish, totals, nights }: Schedule): TimeOutcome => ({
  start,
  done: finish,
  attended: totals.attended,
  waiting: totals.waiting,
  atNight: totals.cuttingAtNight,
  inShift: finish - start - nights.reduce((sum, n) => sum + n.to - n.from, 0),
});

/** What one would say: when it is done, and what else gets better or worse. */
const told = (now: TimeOutcome, then: TimeOutcome): Text => {
  const done = Math.abs(then.done - now.done) < 1 ? words.doneAlike(then) : words.done(then, now);
  const night = change(now.atNight, then.atNight, words.atNight);
  const shift = change(then.inShift, now.inShift, words.leftOfShift);
  const people = change(now.attended, then.attended, words.attended);
  return words.told([done, ...night, ...shift, ...people]);
};

const change = (now: number, then: number, what: Text): readonly Text[] =>
  Math.abs(then - now) < WORTH ? [] : [(then > now ? words.more : words.less)(Math.round(Math.abs(then - now)), what)];

const words = phrases('compare-time', {
  order: (order: Text, so: Text) => say`${{ order }}: ${{ so }}`,
  started: ({ start }: TimeOutcome, order: Text, so: Text) =>
    say`Start ${{ start: moment(start) }}, ${{ order: inside(order) }}: ${{ so }}`,
  told: (changes: readonly Text[]) => say`${{ changes: list(changes) }}`,
  doneAlike: ({ done }: TimeOutcome) => say`finish ${{ done: moment(done) }}, unchanged`,
  done: (then: TimeOutcome, now: TimeOutcome) => say`finish ${{ done: moment(then.done) }} instead of ${{ now: moment(now.done) }}`,
  atNight: say`cut outside the shifts`,
  leftOfShift: say`of machine time free in the shift for other work`,
  attended: say`of attendance`,
  more: (minutes: number, what: Text) => say`${{ time: duration(minutes) }} more ${{ what }}`,
  less: (minutes: number, what: Text) => say`${{ time: duration(minutes) }} less ${{ what }}`,
});
