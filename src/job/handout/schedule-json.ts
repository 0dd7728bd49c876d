/** A run on the schedule as plain data: moments as ISO 8601 by the shop's wall clock, durations in min. */

import { isoOf } from '../../estimate/schedule/moment.ts';
import type { ScheduleEvent } from '../../estimate/schedule/schedule.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import { printPlain } from '../../text/print/print.ts';
import type { Json } from './json-parts.ts';

/** Events listed; how many more there are is told. */
const MOST_EVENTS = 1000;

export const scheduleJson = ({ schedule }: Pick<HoursFacts, 'schedule'>): Json => {
  if (schedule === undefined) return {};
  const shown = schedule.events.slice(0, MOST_EVENTS);
  return {
    schedule: {
      start: isoOf(schedule.start),
      finish: isoOf(schedule.finish),
      early: isoOf(schedule.early),
      late: isoOf(schedule.late),
      totals: schedule.totals,
      pieces: schedule.pieces,
      spools: schedule.spools.map((s) => ({ at: isoOf(s.at), atNight: s.atNight, changed: isoOf(s.changed), before: isoOf(s.before) })),
      events: shown.map(eventJson),
      moreEvents: schedule.events.length - shown.length + schedule.left,
    },
  };
};

const eventJson = ({ from, to, stop: _, pass: __, ...event }: ScheduleEvent): Json => ({
  from: isoOf(from),
  to: isoOf(to),
  ...event,
  what: printPlain(event.what),
});
