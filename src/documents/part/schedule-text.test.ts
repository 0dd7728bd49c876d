/** What papers and terminal say of a run on the schedule. */

import { describe, expect, it } from 'vitest';
import { at, cut, question, stop } from '../../estimate/schedule/schedule.fixture.ts';
import { laySchedule, type Schedule } from '../../estimate/schedule/schedule.ts';
import { printPlain } from '../../text/print/print.ts';
import { HOUSE } from '../../text/reader.ts';
import { only } from '../../text/say.ts';
import { told } from '../paper-for-reader.ts';
import { scheduleText, timeText, visitsOf } from './schedule-text.ts';
import { shiftStrip } from './shift-strip.ts';

const laid = (...asked: Parameters<typeof question>): Schedule => {
  const result = laySchedule(question(...asked));
  if (result.kind !== 'schedule') throw new Error(result.kind);
  return result.schedule;
};

const saidOf = (schedule: Schedule): readonly string[] => scheduleText(schedule).map(printPlain);

describe('a run in words', () => {
  it('tells the end with its range, the visits with their contours, and what waits', () => {
    const schedule = laid(
      [cut(60), stop('L4, THE SLUG HANGS'), cut(2), stop('L4, THE SLUG IS LOOSE'), cut(600), stop('L5, OUT'), cut(30)],
      {
        spread: 0.1,
      },
    );
    expect(saidOf(schedule)).toEqual([
      'Start Thu 26 Nov 07:00, finish Fri 27 Nov 07:35 (likely between 07:32 and 07:38).',
      'Operator needed at Thu 26 Nov 08:00 (L4), Fri 27 Nov 07:00 (L5).',
      'It cuts 11 h 32 min, 2 h 12 min of it outside the shifts. The machine waits 12 h 48 min for an operator.',
    ]);
  });

  it('says so when nobody is needed, and keeps long lists short', () => {
    expect(saidOf(laid([cut(60)]))[1]).toBe('No attendance needed during the run.');
    const many = laid(Array.from({ length: 30 }, () => [cut(40), stop('L2, OUT')]).flat());
    expect(visitsOf(many).length).toBe(30);
    expect(saidOf(many)[1]).toMatch(/ and 22 more times\.$/);
  });

  it('names the days of a run that touches eight of them by their dates, from the first', () => {
    const start = at('2026-11-26T07:00');
    expect(printPlain(only(timeText(start + 100, { start, finish: start + 1440 })))).toBe('Thu 08:40');
    expect(printPlain(only(timeText(start + 8 * 1440, { start, finish: start + 8 * 1440 })))).toBe('Fri 4 Dec 07:00');
    const [monday, next] = [at('2026-11-30T07:00'), at('2026-12-07T06:00')];
    const eight = [monday, next].map((time) => printPlain(only(timeText(time, { start: monday, finish: next }))));
    expect(eight).toEqual(['Mon 30 Nov 07:00', 'Mon 7 Dec 06:00']);
    const seven = { start: monday, finish: at('2026-12-06T23:00') };
    expect(printPlain(only(timeText(monday, seven)))).toBe('Mon 07:00');
  });
});

describe('a shift strip', () => {
  it('shades nights, draws every bar within its frame and a mark for every visit', () => {
    const { picture, caption } = shiftStrip(laid([cut(600), stop(), cut(60)]));
    const fills = picture.strokes.map((s) => s.fill).filter((f) => f !== undefined);
    expect([0.87, 0.4, 0.1].map((grey) => fills.filter((f) => f === grey).length)).toEqual([1, 2, 1]);
    expect(picture.strokes.filter((s) => s.dash !== undefined)).toHaveLength(1);
    for (const { data } of picture.strokes)
      for (const x of data.matchAll(/[MH](-?[\d.]+)/g)) {
        expect(Number(x[1])).toBeGreaterThanOrEqual(picture.low.x);
        expect(Number(x[1])).toBeLessThanOrEqual(picture.high.x);
      }
    expect(picture.labels.map((l) => told(l.text, HOUSE))).toEqual(expect.arrayContaining(['Thu 26 Nov', 'Fri 27 Nov', '00:00']));
    expect(picture.scaled).toBe(false);
    expect(printPlain(caption)).not.toContain('first');
  });

  it('shows the first fortnight of a longer run, and says so', () => {
    const { picture, caption } = shiftStrip(laid(Array.from({ length: 40 }, () => [cut(900), stop()]).flat()));
    expect(printPlain(caption)).toContain('The first 14 days');
    expect(picture.labels.length).toBeLessThan(40);
  });
});
