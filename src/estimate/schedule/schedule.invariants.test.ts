/** What holds for any program, any shifts and any start: nothing happens twice at once, and the sums come out. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Action } from '../../nc/read/program.ts';
import { printMoment } from '../../text/print/moment.ts';
import { bestStart } from './best-start.ts';
import { WEEKDAYS } from './moment.ts';
import { at, cut, question, stop, thread } from './schedule.fixture.ts';
import { laySchedule, type Schedule, type ScheduleQuestion } from './schedule.ts';
import { attendedBetween, calendarOf, isAttended, type Shift } from './shifts.ts';

const fixed = { seed: 20261125, numRuns: 80 };
const monday = at('2026-11-23T00:00');

const action: fc.Arbitrary<Action> = fc.oneof(
  fc.double({ min: 0.1, max: 900, noNaN: true }).map((minutes) => cut(minutes)),
  fc.integer({ min: 1, max: 300 }).map((minutes) => cut(minutes, 2)),
  fc.constant(stop()),
  fc.constant(stop('THREAD THE WIRE')),
  fc.constant(thread),
);
const timeOfDay = fc.integer({ min: 0, max: 95 }).map((quarter) => printMoment(quarter * 15, 'time'));
const shift: fc.Arbitrary<Shift> = fc.record({
  days: fc.uniqueArray(fc.constantFrom(...WEEKDAYS), { minLength: 1, maxLength: 7 }),
  from: timeOfDay,
  to: timeOfDay,
  breaks: fc.constantFrom([], [{ from: '12:00', to: '12:30' }]),
});
const someQuestion: fc.Arbitrary<ScheduleQuestion> = fc
  .record({
    actions: fc.array(action, { maxLength: 25 }),
    shifts: fc.array(shift, { minLength: 1, maxLength: 3 }),
    start: fc.integer({ min: 0, max: 7 * 1440 }),
    quantity: fc.integer({ min: 1, max: 4 }),
    metres: fc.double({ min: 0, max: 20_000, noNaN: true }),
  })
  .filter(({ shifts }) => calendarOf(shifts).perWeek > 0)
  .map(({ actions, shifts, start, quantity, metres }) =>
    question(actions, { shifts, start: monday + start, quantity, spoolLeft: { unit: 'm', amount: metres } }),
  );

const laid = (q: ScheduleQuestion): Schedule => {
  const result = laySchedule(q);
  if (result.kind !== 'schedule') throw new Error(result.kind);
  return result.schedule;
};

describe('any run on the schedule', () => {
  it('is one thing after the other, from the start to the finish, with people only when somebody is there', () => {
    fc.assert(
      fc.property(someQuestion, (q) => {
        const schedule = laid(q);
        const calendar = calendarOf(q.shifts);
        let now = schedule.start;
        for (const event of schedule.events) {
          expect(event.from).toBeCloseTo(now, 6);
          expect(event.to).toBeGreaterThanOrEqual(event.from);
          if (event.needsPerson) expect(isAttended(calendar, event.from)).toBe(true);
          now = event.to;
        }
        expect(schedule.finish).toBeCloseTo(now, 6);
      }),
      fixed,
    );
  });

  it('sums up: attended and unattended, busy and waiting', () => {
    fc.assert(
      fc.property(someQuestion, (q) => {
        const { totals, start, finish, events } = laid(q);
        expect(totals.total).toBeCloseTo(finish - start, 6);
        expect(totals.attended + totals.unattended).toBeCloseTo(totals.total, 4);
        expect(totals.busy + totals.waiting).toBeCloseTo(totals.total, 6);
        const waits = events.filter((e) => e.kind === 'waiting for a person');
        expect(waits.reduce((sum, e) => sum + e.to - e.from, 0)).toBeCloseTo(totals.waiting, 4);
        expect(totals.cuttingAtNight).toBeLessThanOrEqual(totals.cutting + 1e-6);
      }),
      fixed,
    );
  });

  it('is never finished later with one more shift, nor sooner when begun later, and lies within its range', () => {
    fc.assert(
      fc.property(someQuestion, shift, fc.integer({ min: 1, max: 3000 }), (q, more, later) => {
        const { finish } = laid(q);
        expect(laid({ ...q, shifts: [...q.shifts, more] }).finish).toBeLessThanOrEqual(finish + 1e-6);
        expect(laid({ ...q, start: q.start + later }).finish).toBeGreaterThanOrEqual(finish - 1e-6);
        const schedule = laid({ ...q, spread: 0.3 });
        expect(schedule.early).toBeLessThanOrEqual(schedule.finish + 1e-6);
        expect(schedule.late).toBeGreaterThanOrEqual(schedule.finish - 1e-6);
      }),
      fixed,
    );
  });

  it('has a proposed start that is never worse than at once, by what it aims at', () => {
    fc.assert(
      fc.property(someQuestion, fc.integer({ min: 0, max: 4000 }), (q, width) => {
        const candidates = [{ name: 'this', question: q }] as const;
        const window = { from: q.start, to: q.start + width };
        const night = bestStart(candidates, window);
        const soon = bestStart(candidates, window, 'ends soonest');
        if (!('best' in night && 'best' in soon)) throw new Error('no proposal');
        expect(night.best.cuttingAtNight).toBeGreaterThanOrEqual(night.atOnce.cuttingAtNight - 0.5);
        expect(soon.best.finish).toBeLessThanOrEqual(soon.atOnce.finish + 0.5);
        expect(night.best.at).toBeGreaterThanOrEqual(window.from);
        expect(night.best.at).toBeLessThanOrEqual(window.to);
        expect(laid({ ...q, start: night.best.at }).totals.cuttingAtNight).toBeCloseTo(night.best.cuttingAtNight, 4);
      }),
      fixed,
    );
  });
});

describe('any calendar', () => {
  it('counts the same minutes as walking through them', () => {
    fc.assert(
      fc.property(
        fc.array(shift, { maxLength: 3 }),
        fc.integer({ min: 0, max: 20_000 }),
        fc.integer({ min: 0, max: 15_000 }),
        (shifts, from, length) => {
          const calendar = calendarOf(shifts);
          let walked = 0;
          // Shifts begin and end on the quarter, so that the middle of a quarter speaks for all of it.
          for (let q = Math.floor(from / 15); q < Math.floor((from + length) / 15); q += 1)
            if (isAttended(calendar, monday + q * 15 + 7)) walked += 15;
          const [a, b] = [Math.floor(from / 15) * 15, Math.floor((from + length) / 15) * 15];
          expect(attendedBetween(calendar, monday + a, monday + b)).toBeCloseTo(walked, 6);
        },
      ),
      { ...fixed, numRuns: 40 },
    );
  });
});
