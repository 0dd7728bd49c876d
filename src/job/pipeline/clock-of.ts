/** One more stage of a job: its program laid on the clock of the shop, and the start that would put more of it into the night. */
import { bestStart, startFindings } from '../../estimate/clock/best-start.ts';
import { type Clock, type ClockQuestion, layOnClock } from '../../estimate/clock/clock.ts';
import { clockFindings } from '../../estimate/clock/clock-findings.ts';
import { DAY, type Moment, midnightOf, readMoment } from '../../estimate/clock/moment.ts';
import { calendarOf, nextAttended, type Shift } from '../../estimate/clock/shifts.ts';
import type { Estimate } from '../../estimate/estimate.ts';
import { ratesOn } from '../../estimate/rates.ts';
import type { ReadProgram } from '../../nc/read/program.ts';
import type { Plan } from '../../plan/plan.ts';
import { deviationOf } from '../../quantity/figure.ts';
import type { Finding } from '../../text/finding.ts';
import type { JobRun } from '../job-run.ts';

export interface OnClock {
  readonly clock?: Clock;
  readonly findings: readonly Finding[];
}

/** How far ahead of the start a better one is looked for, and how much later it may end: a night gained is not worth a weekend lost. */
const LOOK_AHEAD = DAY;
/** Runs with more events are laid on the clock, but no other start is tried for them. */
const MOST_EVENTS = 2000;

export const clockOf = (run: JobRun, plan: Plan, program: ReadProgram, estimate: Estimate): OnClock => {
  const question = clockQuestion(run, plan, program, estimate);
  if (question === undefined) return { findings: [] };
  const laid = layOnClock(question);
  if (laid.kind !== 'clock') return { findings: [laid.finding] };
  const { start, events, pieces } = laid.clock;
  const told = clockFindings(laid.clock);
  // What goes on for weeks has every hour of the day in it: no start changes much, and trying them would take long.
  if (events.length > MOST_EVENTS || pieces.laid < pieces.asked) return { clock: laid.clock, findings: told };
  const proposal = bestStart([{ name: run.job.run, question }], { from: start, to: start + LOOK_AHEAD, later: LOOK_AHEAD });
  return { clock: laid.clock, findings: [...told, ...startFindings(proposal)] };
};

/** None where no rates hold on the day: then nobody knows the minutes of a stop either. */
export const clockQuestion = (run: JobRun, plan: Plan, program: ReadProgram, estimate: Estimate): ClockQuestion | undefined => {
  const { job, shop } = run;
  const onDay = ratesOn(shop.rates, run.day);
  const machine = shop.machines[0];
  if (onDay.kind !== 'rates' || machine === undefined) return undefined;
  const { unattended } = estimate;
  return {
    program,
    passes: plan.passes,
    machine,
    minutes: onDay.rates.minutes,
    wire: plan.wire,
    ...(job.spoolLeft === undefined ? {} : { spoolLeft: { unit: 'kg', amount: job.spoolLeft } }),
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
