/** Stops at the machine and their ticks. */
import { describe, expect, it } from 'vitest';
import type { LogEntry } from '../../server/message/job-record.ts';
import { contour, mass, mm, quantities } from '../../text/part.ts';
import { print, printPlain } from '../../text/print/print.ts';
import { tellingFor } from '../../text/print/reader.ts';
import { say } from '../../text/say.ts';
import type { ScheduleEventView } from '../work/views.ts';
import { stopsOf } from './stops-of-run.ts';

const event = (what: string, needsPerson: boolean, block?: number, stop?: ScheduleEventView['stop']): ScheduleEventView => ({
  kind: 'stop',
  from: 0,
  to: 5,
  what,
  needsPerson,
  atNight: false,
  timeOfDay: 'Thu 07:00',
  piece: 1,
  ...(block !== undefined && { block }),
  ...(stop !== undefined && { stop }),
});
const schedule = {
  start: 0,
  finish: 10,
  startText: '',
  finishText: '',
  nights: [],
  week: [],
  events: [
    event('pass 1', false),
    event('slug of L3: secure it', true, 41, { purpose: 'secure slug', loop: 'L3' }),
    event('load the block', true),
  ],
};
const tick = (about: string, at: string): LogEntry => ({ at, kind: 'tick', about, text: '' });

describe('stops at the machine', () => {
  it('are the moments that need a person, with their line', () => {
    expect(stopsOf(schedule, [])).toMatchObject([{ what: 'Slug of L3: secure it', line: 42 }, { what: 'Load the block' }]);
  });

  it('are done once they are ticked, and open again once the tick is taken back', () => {
    const [first] = stopsOf(schedule, []);
    const id = first?.id ?? '';
    expect(stopsOf(schedule, [tick(id, '2026-11-26T07:10:00Z')])[0]?.ticked).toBe('2026-11-26T07:10:00Z');
    expect(stopsOf(schedule, [tick(id, '1'), tick(id, '2')])[0]?.ticked).toBeUndefined();
  });

  it('are kept under their purpose and piece, each of its own, so that other words for them lose no tick', () => {
    const [secure, take] = [
      { purpose: 'secure slug', loop: 'L3' },
      { purpose: 'take out slug', loop: 'L3' },
    ] as const;
    const said = (first: string) => ({
      ...schedule,
      events: [event(first, true, 4, secure), event('L3, IS LOOSE', true, 5, take), event(first, true, 9, secure), event('load', true)],
    });
    expect(stopsOf(said('L3, HOLD IT'), []).map((s) => s.id)).toEqual(['secure slug L3', 'take out slug L3', 'secure slug L3 2', 'stop']);
    const log = [tick('secure slug L3 2', '2026-11-26T07:10:00Z')];
    for (const words of ['L3, HOLD IT', 'L3, MIND THE SLUG'])
      expect(stopsOf(said(words), log).map((s) => s.ticked !== undefined)).toEqual([false, false, true, false]);
  });

  it('are done by a tick of 0.3, which was kept under their words, until it is taken back', () => {
    const old = tick('1 L3, SECURE THE SLUG.', '2026-11-26T07:10:00Z');
    const now = { ...schedule, events: schedule.events.map((e) => (e.block === 41 ? { ...e, plain: 'L3, SECURE THE SLUG.' } : e)) };
    expect(stopsOf(now, [old])[0]?.ticked).toBe('2026-11-26T07:10:00Z');
    expect(stopsOf(now, [old, tick('secure slug L3', '2026-11-26T07:12:00Z')])[0]?.ticked).toBeUndefined();
  });

  it('stay done for whoever reads them in other units or with a comma', () => {
    const size = quantities([78, 78, 90], 'x', 'mm');
    const what = say`${{ loop: contour('L1') }}, the part of ${{ mass: mass(2.4) }}, ${{ size }}, hangs on a tab of ${{ tab: mm(5.1) }}`;
    const plain = { ...schedule, events: [event(printPlain(what), true)] };
    const told = (units: Parameters<typeof tellingFor>[0]) => {
      const said = print(what, tellingFor(units));
      return { ...plain, events: plain.events.map((e) => ({ ...e, what: said, plain: e.what })) };
    };
    const inch = told({ lengthUnit: 'inch', finishUnit: 'µin', locale: 'en-US' });
    const log = [tick(stopsOf(inch, [])[0]?.id ?? '', '2026-11-26T07:10:00Z')];
    expect(stopsOf(inch, log)[0]?.what).toBe('L1, the part of 2.4 kg, 3.07 x 3.07 x 3.54 in, hangs on a tab of 0.201 in');
    for (const schedule of [plain, inch, told({ lengthUnit: 'mm', finishUnit: 'µm', locale: 'de-DE' })])
      expect(stopsOf(schedule, log)[0]?.ticked).toBe('2026-11-26T07:10:00Z');
  });
});
