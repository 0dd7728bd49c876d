/** Runs on the schedule against sums done by hand, with days of the calendar that anybody can look up. */

import { describe, expect, it } from 'vitest';
import { remedyTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import { printMoment } from '../../text/print/moment.ts';
import { bestStart, startFindings } from './best-start.ts';
import { isoOf, readMoment } from './moment.ts';
import { at, cut, question, stop, thread } from './schedule.fixture.ts';
import { laySchedule, type Schedule, type ScheduleQuestion } from './schedule.ts';
import { findingsOfSchedule } from './schedule-findings.ts';
import { spoolMetres } from './sequence.ts';
import { attendedBetween, calendarOf, isAttended, nextAttended, nightsBetween } from './shifts.ts';

const laid = (q: ScheduleQuestion): Schedule => {
  const result = laySchedule(q);
  if (result.kind !== 'schedule') throw new Error(result.kind);
  return result.schedule;
};
const told = (schedule: Schedule) => schedule.events.map((e) => `${e.kind} ${printMoment(e.from)}${e.atNight ? ' at night' : ''}`);

describe('a moment', () => {
  it('is read and printed with its day of the week', () => {
    expect(printMoment(at('2026-11-26T07:05'))).toBe('Thu 26 Nov 07:05');
    expect(printMoment(at('2028-02-29T23:59'), 'day')).toBe('Tue 29 Feb');
    expect(isoOf(at('1999-12-31T23:59') + 1)).toBe('2000-01-01T00:00');
  });

  it.each(['2026-02-30T07:00', '2026-11-26', '2026-11-26T24:00', '2026-11-26 07:00', 'tomorrow', '2026-13-01T00:00'])(
    'is not read from %s',
    (text) => {
      expect(readMoment(text).kind).toBe('not a moment');
    },
  );
});

describe('a calendar', () => {
  const usual = calendarOf([
    { days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '07:00', to: '16:00', breaks: [{ from: '09:00', to: '09:30' }] },
  ]);

  it('has breaks, nights and weekends', () => {
    expect(usual.perWeek).toBe(5 * (9 * 60 - 30));
    expect(isAttended(usual, at('2026-11-26T08:59'))).toBe(true);
    expect(isAttended(usual, at('2026-11-26T09:00'))).toBe(false);
    expect(isAttended(usual, at('2026-11-26T09:30'))).toBe(true);
    expect(isoOf(nextAttended(usual, at('2026-11-27T16:00')))).toBe('2026-11-30T07:00');
    expect(attendedBetween(usual, at('2026-11-26T08:00'), at('2026-12-03T08:00'))).toBe(usual.perWeek);
    expect(attendedBetween(usual, at('2026-11-26T15:00'), at('2026-11-27T10:00'))).toBe(60 + 120 + 30);
    expect(nightsBetween(usual, at('2026-11-27T15:00'), at('2026-11-30T08:00'), 9).map((n) => n.to - n.from)).toEqual([(8 + 48 + 7) * 60]);
  });

  it('lets a shift run past midnight and past the end of the week', () => {
    const nights = calendarOf([{ days: ['Sun'], from: '22:00', to: '06:00', breaks: [{ from: '01:00', to: '02:00' }] }]);
    expect(nights.perWeek).toBe(7 * 60);
    expect(isAttended(nights, at('2026-11-30T00:30'))).toBe(true);
    expect(isAttended(nights, at('2026-11-30T01:30'))).toBe(false);
    expect(isAttended(nights, at('2026-11-30T05:59'))).toBe(true);
    expect(isAttended(nights, at('2026-11-30T06:00'))).toBe(false);
  });

  it('counts shifts that overlap once, and knows a shop that never closes', () => {
    const all = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
    const always = calendarOf(['00:00', '07:00', '15:00'].map((from) => ({ days: [...all], from, to: '00:00', breaks: [] })));
    expect(always.perWeek).toBe(7 * 1440);
    expect(nightsBetween(always, 0, 1e6, 9)).toEqual([]);
  });
});

describe('a run on the schedule', () => {
  it('goes on from one thing to the next', () => {
    const schedule = laid(question([thread, cut(60), stop(), cut(30), cut(30, 2)]));
    expect(told(schedule)).toEqual([
      'threading Thu 26 Nov 07:00',
      'cutting Thu 26 Nov 07:02',
      'stop Thu 26 Nov 08:02',
      'cutting Thu 26 Nov 08:07',
      'cutting Thu 26 Nov 08:37',
    ]);
    expect(schedule.totals).toEqual({
      total: 127,
      busy: 127,
      waiting: 0,
      attended: 5,
      unattended: 122,
      cutting: 120,
      threadings: 1,
      cuttingAtNight: 0,
    });
  });

  it('waits with a stop at night for the morning, and over the weekend for Monday', () => {
    const schedule = laid(question([cut(600), stop(), cut(60)], { start: at('2026-11-27T07:00') }));
    expect(told(schedule)).toEqual([
      'cutting Fri 27 Nov 07:00',
      'waiting for a person Fri 27 Nov 17:00 at night',
      'stop Mon 30 Nov 07:00',
      'cutting Mon 30 Nov 07:05',
    ]);
    expect(schedule.totals).toMatchObject({ waiting: 62 * 60, cuttingAtNight: 60, attended: 5 });
    expect(findingsOfSchedule(schedule).map((f) => f.code)).toEqual(['stop-at-night']);
    expect(sentenceOf(findingsOfSchedule(schedule)[0])).toContain('waits once');
  });

  it('waits before it begins when nobody is there to start it', () => {
    const schedule = laid(question([cut(60)], { start: at('2026-11-26T05:00') }));
    expect(told(schedule)).toEqual(['waiting for a person Thu 26 Nov 05:00 at night', 'cutting Thu 26 Nov 07:00']);
    expect(findingsOfSchedule(schedule)).toEqual([]);
  });

  it('threads by hand only where the machine cannot', () => {
    const byHand = question([thread, cut(60)]);
    const schedule = laid({ ...byHand, machine: { ...byHand.machine, autoThreading: false } });
    expect(schedule.totals.attended).toBe(2);
    expect(laid(question([stop('THREAD THE WIRE'), cut(60)])).totals).toMatchObject({ attended: 3, threadings: 1 });
    expect(laid(question([stop('CONDITION 2'), cut(60)])).totals).toMatchObject({ attended: 1, threadings: 0 });
  });

  it('loads one piece after the other, by hand', () => {
    const schedule = laid(question([cut(100), stop()], { quantity: 3 }));
    expect(schedule.totals).toMatchObject({ total: 3 * 105 + 2 * 10, attended: 3 * 5 + 2 * 10 });
    expect(schedule.events.filter((e) => e.kind === 'loading').map((e) => e.piece)).toEqual([2, 3]);
  });

  it('is earlier and later where the cutting is faster and slower', () => {
    const schedule = laid(question([cut(100), stop(), cut(100)], { spread: 0.25 }));
    expect([schedule.finish - schedule.early, schedule.late - schedule.finish]).toEqual([50, 50]);
  });

  it('lays whole pieces only, and says how many', () => {
    const many = Array.from({ length: 60 }, () => [cut(1), stop()]).flat();
    const schedule = laid(question(many, { quantity: 500 }));
    expect(schedule.pieces.laid).toBeLessThan(500);
    expect(schedule.events.length + schedule.left).toBeGreaterThanOrEqual(schedule.pieces.laid * 121 - 1);
    expect(findingsOfSchedule(schedule).map((f) => f.code)).toContain('schedule-cut-short');
  });

  it('needs a shift and passes that somebody planned', () => {
    expect(laySchedule(question([cut(1)], { shifts: [] }))).toMatchObject({ kind: 'nobody comes', finding: { code: 'nobody-comes' } });
    expect(laySchedule(question([cut(1, 7)]))).toMatchObject({ kind: 'refused', finding: { code: 'pass-unknown' } });
  });
});

describe('a spool', () => {
  it('holds as many metres as its mass makes', () => {
    // 8 kg of 0.25 mm wire at 8.5 g/cm³: 8 / (π 0.125² 8.5 / 1000) m.
    expect(spoolMetres(question([]).wire)).toBeCloseTo(19_173, 0);
  });

  it('that runs out is changed by somebody, within a shift or after a wait', () => {
    const schedule = laid(question([cut(300), stop(), cut(400)], { spoolLeft: { unit: 'm', amount: 6000 } }));
    expect(told(schedule)).toEqual([
      'cutting Thu 26 Nov 07:00',
      'stop Thu 26 Nov 12:00',
      'cutting Thu 26 Nov 12:05',
      'waiting for a person Thu 26 Nov 17:05 at night',
      'spool change Fri 27 Nov 07:00',
      'cutting Fri 27 Nov 07:10',
    ]);
    expect(schedule.spools.map((s) => [printMoment(s.at), s.atNight, printMoment(s.before)])).toEqual([
      ['Thu 26 Nov 17:05', true, 'Thu 26 Nov 12:00'],
    ]);
    const [ends] = findingsOfSchedule(schedule);
    expect(ends?.code).toBe('spool-ends-at-night');
    expect(remedyTextOf(ends)).toContain('Thu 26 Nov 12:00');
    expect(schedule.totals.cutting).toBe(700);
  });

  it('told in kilograms lasts as long as the same in metres', () => {
    const metres = spoolMetres(question([]).wire) / 2;
    const [kilograms, same] = [{ unit: 'kg', amount: 4 } as const, { unit: 'm', amount: metres } as const].map(
      (spoolLeft) => laid(question([cut(3000)], { spoolLeft })).spools[0]?.at,
    );
    expect(kilograms).toBeCloseTo(same as number, 6);
    expect(kilograms).toBeCloseTo(at('2026-11-26T07:00') + metres / 10, 6);
  });
});

describe('the best start', () => {
  const two = question([cut(180), stop(), cut(600)]);
  const window = { from: two.start, to: two.start + 1440 };

  it('brings the long cut behind the stop into the night', () => {
    const found = bestStart([{ name: 'attended', question: two }], window);
    if (found.kind !== 'another') throw new Error(found.kind);
    // The stop comes at 15:45 at the latest on a quarter: three hours before that the run begins; all of the ten hours but ten minutes are night.
    expect(printMoment(found.best.at)).toBe('Thu 26 Nov 12:45');
    expect(found.best.cuttingAtNight).toBe(590);
    expect(found.atOnce.cuttingAtNight).toBe(245);
    const [told, ...more] = startFindings(found);
    expect(more).toEqual([]);
    expect(told?.code).toBe('better-start');
    expect(sentenceOf(told)).toContain('9 h 50 min of the cutting runs outside the shifts, instead of 4 h 5 min');
  });

  it('ends soonest when it begins at once', () => {
    const found = bestStart([{ name: 'attended', question: two }], window, 'ends soonest');
    expect(found).toMatchObject({ kind: 'at once', best: { at: window.from } });
    if (found.kind === 'at once') expect(startFindings(found)).toEqual([]);
  });

  it('chooses among programs', () => {
    const late = question([cut(600), stop(), cut(180)]);
    const found = bestStart(
      [
        { name: 'attended', question: late },
        { name: 'unattended first', question: two },
      ],
      { from: window.from, to: window.from },
    );
    expect(found).toMatchObject({ kind: 'another', best: { name: 'unattended first', at: window.from } });
  });
});
