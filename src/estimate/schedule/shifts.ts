/** When people are in the shop: the shifts as its file tells them, and the weekly calendar they come to. */

import { z } from 'zod';
import { certain, firstFrom, firstItem } from '../../sequence/sequence.ts';
import { DAY, type Moment, minuteOfWeek, WEEK } from '../../text/moment.ts';
import { WEEKDAYS } from './moment.ts';

const timeOfDay = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time of day is written like 07:00');

export const shiftSchema = z.strictObject({
  days: z.array(z.enum(WEEKDAYS)).min(1).max(7).describe('Days of the week on which it begins'),
  from: timeOfDay.describe('Begins, 24-hour clock'),
  to: timeOfDay.describe('Ends; at or before the beginning means on the next day'),
  breaks: z
    .array(z.strictObject({ from: timeOfDay, to: timeOfDay }))
    .max(12)
    .default([])
    .describe('Nobody is at the machine'),
});

export type Shift = z.infer<typeof shiftSchema>;

/** What is taken where the shop says nothing. */
export const usualShifts: readonly Shift[] = [{ days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '07:00', to: '16:00', breaks: [] }];

/** Stretches of the week in which somebody is there, minutes since Monday's midnight, in order and apart from each other. */
export interface Calendar {
  readonly stretches: readonly AttendedStretch[];
  /** Minutes of one week. */
  readonly perWeek: number;
}

interface AttendedStretch {
  readonly from: number;
  readonly to: number;
  /** Attended minutes of the week before it. */
  readonly before: number;
}

/** Shifts that overlap count once; a break counts only where no other shift covers it. */
export const calendarOf = (shifts: readonly Shift[]): Calendar => {
  const pieces = shifts.flatMap(piecesOf).flatMap(withinWeek);
  const joined: { from: number; to: number; before: number }[] = [];
  for (const [from, to] of pieces.toSorted((a, b) => a[0] - b[0])) {
    const last = joined.at(-1);
    if (last !== undefined && from <= last.to) last.to = Math.max(last.to, to);
    else joined.push({ from, to, before: 0 });
  }
  let perWeek = 0;
  for (const stretch of joined) {
    stretch.before = perWeek;
    perWeek += stretch.to - stretch.from;
  }
  return { stretches: joined, perWeek };
};

export const isAttended = (calendar: Calendar, at: Moment): boolean => {
  const minute = minuteOfWeek(at);
  const stretch = stretchAt(calendar, minute);
  return stretch !== undefined && minute < stretch.to;
};

/** The first moment from `at` on at which somebody is there; the calendar must have one. */
export const nextAttended = (calendar: Calendar, at: Moment): Moment => {
  if (isAttended(calendar, at)) return at;
  const minute = minuteOfWeek(at);
  const next = calendar.stretches.find((s) => s.from > minute) ?? { from: firstItem(calendar.stretches).from + WEEK };
  return at + next.from - minute;
};

/** Minutes between two moments in which somebody is there. */
export const attendedBetween = (calendar: Calendar, from: Moment, to: Moment): number => {
  const weeks = Math.round((to - minuteOfWeek(to) - (from - minuteOfWeek(from))) / WEEK);
  return weeks * calendar.perWeek + attendedInWeek(calendar, minuteOfWeek(to)) - attendedInWeek(calendar, minuteOfWeek(from));
};

/** Stretches between two moments in which nobody is there, in order; no more than `most`. */
export const nightsBetween = (
  calendar: Calendar,
  from: Moment,
  to: Moment,
  most: number,
): readonly { readonly from: Moment; readonly to: Moment }[] => {
  if (calendar.perWeek === 0) return [{ from, to }];
  const nights: { from: Moment; to: Moment }[] = [];
  for (let at = from; at < to && nights.length < most; ) {
    if (isAttended(calendar, at)) {
      const minute = minuteOfWeek(at);
      at += certain(stretchAt(calendar, minute), 'an attended minute lies in a shift').to - minute;
      // A shift round the clock has no night, however often the week begins anew.
      if (calendar.perWeek === WEEK) return nights;
    } else {
      const morning = nextAttended(calendar, at);
      nights.push({ from: at, to: Math.min(morning, to) });
      at = morning;
    }
  }
  return nights;
};

const attendedInWeek = (calendar: Calendar, minute: number): number => {
  const stretch = stretchAt(calendar, minute);
  return stretch === undefined ? 0 : stretch.before + Math.min(minute, stretch.to) - stretch.from;
};

/** The last stretch that begins at a minute of the week or before. */
const stretchAt = ({ stretches }: Calendar, minute: number): AttendedStretch | undefined =>
  stretches[firstFrom(stretches, ({ from }) => from > minute) - 1];

type Span = readonly [from: number, to: number];

/** A shift without its breaks, on each of its days. */
const piecesOf = (shift: Shift): readonly Span[] => {
  const from = minutesOf(shift.from);
  const to = later(from, minutesOf(shift.to));
  const breaks = shift.breaks
    .map((b): Span => {
      // A break after midnight belongs to the shift that began the day before.
      const begin = minutesOf(b.from) >= from ? minutesOf(b.from) : minutesOf(b.from) + DAY;
      return [begin, later(begin, minutesOf(b.to) + (begin >= DAY ? DAY : 0))];
    })
    .toSorted((a, b) => a[0] - b[0]);
  const pieces: Span[] = [];
  let at = from;
  for (const [begin, end] of breaks) {
    if (Math.min(begin, to) > at) pieces.push([at, Math.min(begin, to)]);
    at = Math.max(at, end);
  }
  if (to > at) pieces.push([at, to]);
  return shift.days.flatMap((day) => pieces.map(([a, b]): Span => [a + WEEKDAYS.indexOf(day) * DAY, b + WEEKDAYS.indexOf(day) * DAY]));
};

/** What runs past Sunday's midnight belongs to the week's beginning. */
const withinWeek = ([from, to]: Span): readonly Span[] => {
  if (from >= WEEK) return [[from - WEEK, to - WEEK]];
  return to <= WEEK
    ? [[from, to]]
    : [
        [from, WEEK],
        [0, to - WEEK],
      ];
};

const later = (from: number, to: number): number => (to > from ? to : to + DAY);

const minutesOf = (text: string): number => Number(text.slice(0, 2)) * 60 + Number(text.slice(3));
