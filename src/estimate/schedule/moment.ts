/** Moments as job and shop file have them: ISO 8601, and the days of the week. */

import type { Moment } from '../../text/moment.ts';

export type ReadMoment = { readonly kind: 'moment'; readonly at: Moment } | { readonly kind: 'not a moment'; readonly text: string };

/** Reads '2026-11-26T07:00' (ISO 8601, local). A day that the calendar does not have is no moment. */
export const readMoment = (text: string): ReadMoment => {
  const found = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})$/.exec(text);
  if (found === null) return { kind: 'not a moment', text };
  const [year, month, day, hour, minute] = found.slice(1).map(Number) as [number, number, number, number, number];
  const at = Date.UTC(year, month - 1, day, hour, minute) / 60_000;
  // 30 February comes back as 2 March: whatever does not come back as it went in was no day.
  return isoOf(at) === text ? { kind: 'moment', at } : { kind: 'not a moment', text };
};

/** Midnight at the beginning of a day, ISO 8601; the day must be one. */
export const midnightOf = (day: string): Moment => {
  const read = readMoment(`${day}T00:00`);
  if (read.kind !== 'moment') throw new Error(`${day} is no day`);
  return read.at;
};

/** '2026-11-26T07:00', to the nearest minute. */
export const isoOf = (at: Moment): string => new Date(Math.round(at) * 60_000).toISOString().slice(0, 16);

/** Monday first, as ISO 8601 has the week. */
export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
