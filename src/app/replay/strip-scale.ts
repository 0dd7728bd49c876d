/** What the shift strip draws where: its span of time, ticks at full hours, nights of the week, and bars that run together when they are fine. */
import { localDay } from '../../text/print/local.ts';
import type { StopPurpose } from '../../text/stop-purpose.ts';
import type { ScheduleView } from '../work/views.ts';

export const DAY = 1440;
const WEEK = 7 * DAY;

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Full hours around a run, or the first days of one that goes on for longer. */
export const stripSpan = ({ start, finish }: Pick<ScheduleView, 'start' | 'finish'>, mostDays = 14): Span => {
  const from = Math.floor(start / 60) * 60;
  const to = Math.max(Math.ceil(finish / 60) * 60, from + 60);
  return { from, to: Math.min(to, from + mostDays * DAY) };
};

const HOURS = [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48, 96] as const;

/** Moments with a label, at most `most` of them, even steps from midnight on. */
export const ticksOf = ({ from, to }: Span, most: number): readonly number[] => {
  const step = 60 * (HOURS.find((hours) => (to - from) / (60 * hours) <= most) ?? 168);
  const ticks: number[] = [];
  for (let at = Math.ceil(from / step) * step; at <= to; at += step) ticks.push(at);
  return ticks;
};

/** Moments count from a Thursday; the week begins on Monday. */
const minuteOfWeek = (at: number): number => (((at + 3 * DAY) % WEEK) + WEEK) % WEEK;

export const isNight = (week: ScheduleView['week'], at: number): boolean => {
  const minute = minuteOfWeek(at);
  return !week.some((s) => minute >= s.from && minute < s.to);
};

/** Stretches of a span in which nobody is in the shop. */
export const nightsWithin = (week: ScheduleView['week'], { from, to }: Span): readonly Span[] => {
  const nights: Span[] = [];
  let at = from;
  const monday = from - minuteOfWeek(from);
  for (let start = monday; start < to; start += WEEK)
    for (const stretch of week) {
      const [begins, ends] = [start + stretch.from, start + stretch.to];
      if (ends <= at) continue;
      if (begins > at && at < to) nights.push({ from: at, to: Math.min(begins, to) });
      at = Math.max(at, ends);
    }
  if (at < to) nights.push({ from: at, to });
  return nights;
};

/** Stretches of one kind, those joined that are nearer to each other than `least` minutes: a strip has room for few. */
export const joined = (events: ScheduleView['events'], kinds: readonly string[], least: number): readonly Span[] => {
  const bars: { from: number; to: number }[] = [];
  for (const { kind, from, to } of events) {
    if (!kinds.includes(kind)) continue;
    const last = bars.at(-1);
    if (last !== undefined && from - last.to < least) last.to = to;
    else bars.push({ from, to });
  }
  return bars;
};

export type MarkKind = 'thread' | 'slug' | 'tab' | 'spool' | 'load' | 'stop';

/** A moment that needs a person. */
export interface StripMark {
  readonly kind: MarkKind;
  readonly from: number;
  readonly to: number;
  readonly what: string;
  readonly atNight: boolean;
  readonly block?: number | undefined;
}

/** The marks of a run that would begin `shift` minutes later and go on without waiting anew: a preview, until it is asked. */
export const marksOf = ({ events, week }: ScheduleView, shift = 0): readonly StripMark[] =>
  events
    .filter((e) => e.needsPerson)
    .map(({ kind, from, to, what, atNight, block, stop }) => ({
      kind: markKind(kind, stop?.purpose),
      from: from + shift,
      to: to + shift,
      what,
      atNight: shift === 0 ? atNight : isNight(week, from + shift),
      block,
    }));

const markKind = (kind: string, purpose: StopPurpose | undefined): MarkKind => {
  if (kind === 'threading') return 'thread';
  if (kind === 'spool change') return 'spool';
  if (kind === 'loading') return 'load';
  return purpose === undefined ? 'stop' : MARKS[purpose];
};

/** A piece is secured before its tab is cut. */
const MARKS: Readonly<Record<StopPurpose, MarkKind>> = {
  thread: 'thread',
  'cut the wire': 'stop',
  'set condition': 'stop',
  'secure slug': 'tab',
  'secure part': 'tab',
  'take out slug': 'slug',
  'take out part': 'slug',
  check: 'stop',
  other: 'stop',
};

/** Marks that stand nearer than `least` minutes become one with a count, so that each can be told apart. */
export const clustered = (marks: readonly StripMark[], least: number): readonly (readonly StripMark[])[] => {
  const clusters: StripMark[][] = [];
  for (const mark of marks) {
    const last = clusters.at(-1);
    if (last?.[0] !== undefined && mark.from - last[0].from < least) last.push(mark);
    else clusters.push([mark]);
  }
  return clusters;
};

/** '2026-11-26T07:00' of minutes since 1970 by the wall clock of the shop, and back; undefined for what is no moment. */
export const isoOf = (at: number): string => new Date(Math.round(at) * 60_000).toISOString().slice(0, 16);
export const momentOfIso = (text: string): number | undefined => {
  const at = Date.parse(`${text}:00Z`) / 60_000;
  return Number.isFinite(at) && isoOf(at) === text ? at : undefined;
};

/** '07:00' and 'Thu 26 Nov'. */
export const timeOfDayOf = (at: number): string => isoOf(at).slice(11);
/** With its day where the run goes on over midnight. */
export const whenOf = (at: number, { start, finish }: Pick<ScheduleView, 'start' | 'finish'>, locale?: string): string =>
  dayOf(start) === dayOf(finish) ? timeOfDayOf(at) : `${dayOf(at, locale)} ${timeOfDayOf(at)}`;
export const dayOf = (at: number, locale?: string): string => localDay(at, locale);
