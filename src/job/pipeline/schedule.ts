/** A job's program scheduled of the shop, and what is said of it. */

import { type Rates, ratesOn } from '../../estimate/rates.ts';
import { bestStart, startFindings } from '../../estimate/schedule/best-start.ts';
import { midnightOf, readMoment } from '../../estimate/schedule/moment.ts';
import { laySchedule, type Schedule, type ScheduleQuestion } from '../../estimate/schedule/schedule.ts';
import { findingsOfSchedule } from '../../estimate/schedule/schedule-findings.ts';
import { calendarOf, nextAttended, type Shift } from '../../estimate/schedule/shifts.ts';
import { deviationOf } from '../../quantity/figure.ts';
import type { Finding } from '../../text/finding.ts';
import { DAY, type Moment } from '../../text/moment.ts';
import type { JobRun } from '../job-run.ts';
import { machineOf } from '../shop.ts';
import type { Timed } from './outcomes.ts';

export type Laid =
  | { readonly kind: 'laid'; readonly question: ScheduleQuestion; readonly schedule: Schedule }
  /** No rates hold on the day, so that nobody knows the minutes of a stop, or the shop has no shift to start in. */
  | { readonly kind: 'not laid'; readonly findings: readonly Finding[] };

/** How far ahead of the start a better one is looked for, and how much later it may end: a night gained is not worth a weekend lost. */
const LOOK_AHEAD = DAY;
/** Runs with more events are scheduled, but no other start is tried for them. */
const MOST_EVENTS = 2000;

export const scheduleOf = (run: JobRun, timed: Timed): Laid => {
  const onDay = ratesOn(run.shop.rates, run.day);
  if (onDay.kind !== 'rates') return { kind: 'not laid', findings: [onDay.finding] };
  const question = scheduleQuestion(run, timed, onDay.rates);
  const laid = laySchedule(question);
  return laid.kind === 'schedule' ? { kind: 'laid', question, schedule: laid.schedule } : { kind: 'not laid', findings: [laid.finding] };
};

/** What is said of a run on the schedule, and the start that would put more of it into the night. */
export const scheduleFindings = (run: JobRun, laid: Laid): readonly Finding[] => {
  if (laid.kind === 'not laid') return laid.findings;
  const { schedule, question } = laid;
  const { start, events, pieces } = schedule;
  const told = findingsOfSchedule(schedule);
  // What goes on for weeks has every hour of the day in it: no start changes much, and trying them would take long.
  if (events.length > MOST_EVENTS || pieces.laid < pieces.asked) return told;
  const proposal = bestStart([{ name: run.job.run, question }], { from: start, to: start + LOOK_AHEAD, later: LOOK_AHEAD });
  return [...told, ...startFindings(proposal)];
};

const scheduleQuestion = (run: JobRun, { made, program, estimate }: Timed, { minutes }: Pick<Rates, 'minutes'>): ScheduleQuestion => {
  const { job, shop } = run;
  const { unattended } = estimate;
  return {
    program,
    passes: made.plan.passes,
    machine: machineOf(shop),
    minutes,
    wire: made.plan.wire,
    spoolLeft: job.spoolLeft === undefined ? undefined : { unit: 'kg', amount: job.spoolLeft },
    // A run of the program gives all sheets of a stack.
    quantity: Math.ceil(job.quantity / job.stack),
    shifts: shop.shifts,
    start: startOf(job.startAt, run.day, shop.shifts),
    // Nearly all that runs alone is cutting, so that its range is that of the feeds.
    spread: unattended.value > 0 ? deviationOf(unattended) / unattended.value : 0,
  };
};

/** When somebody is in the shop, minutes since Monday's midnight. */
export const attendedWeek = (shifts: readonly Shift[]): readonly { readonly from: number; readonly to: number }[] =>
  calendarOf(shifts).stretches.map(({ from, to }) => ({ from, to }));

/** As the job says; else when the first shift of the next day with one begins. */
const startOf = (told: string | undefined, day: string, shifts: readonly Shift[]): Moment => {
  const read = told === undefined ? undefined : readMoment(told);
  if (read?.kind === 'moment') return read.at;
  const calendar = calendarOf(shifts);
  const tomorrow = midnightOf(day) + DAY;
  return calendar.perWeek > 0 ? nextAttended(calendar, tomorrow) : tomorrow;
};
