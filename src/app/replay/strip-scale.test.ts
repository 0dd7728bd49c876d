/** What the shift strip draws where, and which moments need a person. */
/** The scale of the strip: moments and places on it, there and back. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { StopPurpose } from '../../text/stop-purpose.ts';
import {
  clustered,
  DAY,
  isNight,
  isoOf,
  joined,
  marksOf,
  momentOfIso,
  nightsWithin,
  type StripMark,
  stripSpan,
  ticksOf,
} from './strip-scale.ts';

/** Monday to Friday, 07:00 to 16:00. */
const week = [0, 1, 2, 3, 4].map((d) => ({ from: d * DAY + 420, to: d * DAY + 960 }));
const friday = there(momentOfIso('2026-11-27T00:00'));

describe('the scale of the shift strip', () => {
  it('reaches from full hour to full hour', () => {
    expect(stripSpan({ start: 100, finish: 400 })).toEqual({ from: 60, to: 420 });
    expect(stripSpan({ start: 0, finish: 100 * DAY })).toEqual({ from: 0, to: 14 * DAY });
  });
  it('has at most so many ticks, at even steps', () => {
    expect(ticksOf({ from: 60, to: 420 }, 8)).toEqual([60, 120, 180, 240, 300, 360, 420]);
    expect(ticksOf({ from: 0, to: 14 * DAY }, 10).length).toBeLessThanOrEqual(10);
  });
  it('shades the nights of a weekend as one', () => {
    expect(nightsWithin(week, { from: friday + 600, to: friday + 4 * DAY })).toEqual([
      { from: friday + 960, to: friday + 3 * DAY + 420 },
      { from: friday + 3 * DAY + 960, to: friday + 4 * DAY },
    ]);
    expect(nightsWithin([], { from: 5, to: 9 })).toEqual([{ from: 5, to: 9 }]);
    expect(nightsWithin([{ from: 0, to: 7 * DAY }], { from: 5, to: 9 })).toEqual([]);
  });
  it('knows whether somebody is there', () => {
    expect(isNight(week, friday + 419)).toBe(true);
    expect(isNight(week, friday + 420)).toBe(false);
    expect(isNight(week, friday + DAY + 600)).toBe(true);
  });
  it('writes and reads moments of the calendar, and no others', () => {
    expect(isoOf(there(momentOfIso('2026-11-26T07:00')))).toBe('2026-11-26T07:00');
    expect(momentOfIso('2026-02-30T07:00')).toBeUndefined();
    expect(momentOfIso('soon')).toBeUndefined();
  });
});

describe('marks on the shift strip', () => {
  const event = (kind: string, what: string, from: number, purpose?: StopPurpose) => ({
    kind,
    what,
    ...(purpose !== undefined && { stop: { purpose } }),
    from,
    to: from + 4,
    needsPerson: true,
    atNight: false,
    timeOfDay: '',
    piece: 1,
  });
  const schedule = {
    start: friday + 480,
    finish: friday + 900,
    startText: '',
    finishText: '',
    nights: [],
    week,
    events: [
      event(
        'stop',
        'L4, THE SLUG OF 84 G HANGS ON A TAB OF 1.6 MM. FIX IT, THEN RUN ON, THE TAB IS CUT NEXT.',
        friday + 500,
        'secure slug',
      ),
      event('stop', 'L4, THE SLUG OF 84 G IS LOOSE. TAKE IT OUT.', friday + 510, 'take out slug'),
      event('spool change', 'put on a full spool and thread again', friday + 800),
    ],
  };
  it('tell tab, slug and spool apart', () => {
    expect(marksOf(schedule).map((m) => m.kind)).toEqual(['tab', 'slug', 'spool']);
  });
  it('shift with the start, and fall into the night by it', () => {
    const shifted = marksOf(schedule, 200);
    expect(shifted.map((m) => m.from - friday)).toEqual([700, 710, 1000]);
    expect(shifted.map((m) => m.atNight)).toEqual([false, false, true]);
  });
  it('stand together where they are near to each other', () => {
    const marks = [0, 3, 4, 20].map((from): StripMark => ({ kind: 'stop', from, to: from, what: '', atNight: false }));
    expect(clustered(marks, 10).map((c) => c.length)).toEqual([3, 1]);
  });
  it('join bars that nearly touch', () => {
    const bars = [{ ...event('cutting', '', 0) }, { ...event('cutting', '', 5) }, { ...event('cutting', '', 30) }];
    expect(joined(bars, ['cutting'], 2)).toEqual([
      { from: 0, to: 9 },
      { from: 30, to: 34 },
    ]);
  });
});
