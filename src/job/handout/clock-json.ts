/** A run on the clock as plain data: moments as ISO 8601 by the shop's wall clock, durations in min. */

import type { ClockEvent } from '../../estimate/clock/clock.ts';
import { isoOf } from '../../estimate/clock/moment.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import { printPlain } from '../../text/print/print.ts';
import type { Json } from './json-parts.ts';

/** Events listed; how many more there are is told. */
const MOST_EVENTS = 1000;

export const clockJson = ({ clock }: Pick<HoursFacts, 'clock'>): Json => {
  if (clock === undefined) return {};
  const shown = clock.events.slice(0, MOST_EVENTS);
  return {
    clock: {
      start: isoOf(clock.start),
      finish: isoOf(clock.finish),
      early: isoOf(clock.early),
      late: isoOf(clock.late),
      totals: clock.totals,
      pieces: clock.pieces,
      spools: clock.spools.map((s) => ({ at: isoOf(s.at), atNight: s.atNight, changed: isoOf(s.changed), before: isoOf(s.before) })),
      events: shown.map(eventJson),
      moreEvents: clock.events.length - shown.length + clock.left,
    },
  };
};

const eventJson = ({ from, to, stop: _, pass: __, ...event }: ClockEvent): Json => ({
  from: isoOf(from),
  to: isoOf(to),
  ...event,
  what: printPlain(event.what),
});
