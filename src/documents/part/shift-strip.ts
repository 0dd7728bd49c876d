/** A run as a strip along the time: nights shaded, cutting as bars, a mark for everybody who must come. */

import { circleData, pathNumber, type Stroke } from '../../picture/strokes.ts';
import type { Schedule } from '../../result/shown.ts';
import { DAY, type Moment, minuteOfWeek } from '../../text/moment.ts';
import { count, moment } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { WrittenLabel, WrittenPicture } from '../paper.ts';
import { visitsOf } from './schedule-text.ts';

/** mm on the strip. */
const WIDTH = 180;
const HEIGHT = 10;
const MOST_DAYS = 14;
const HOURS = [1, 2, 3, 4, 6, 12, 24] as const;
const MOST_TICKS = 12;
/** Bars nearer than this run together, mm. */
const FINE = 0.15;

interface Strip {
  readonly from: Moment;
  readonly to: Moment;
  readonly x: (at: Moment) => number;
}

/** The first fortnight where the run is longer; `caption` says so. */
export const shiftStrip = (schedule: Schedule): { readonly picture: WrittenPicture; readonly caption: Text } => {
  const strip = stripOf(schedule);
  const ticks = ticksOf(strip);
  const strokes: Stroke[] = [
    ...schedule.nights.flatMap((n) => box(strip, n, { low: 0, high: HEIGHT, grey: 0.87 })),
    ...barsOf(schedule, strip, 'cutting').flatMap(([from, to]) => box(strip, { from, to }, { low: 2, high: 7, grey: 0.4 })),
    ...barsOf(schedule, strip, 'waiting for a person').map(([from, to]) => waitStroke(strip, from, to)),
    ...ticks.map((at) => line(`M${pathNumber(strip.x(at))} 0V-1`, 0.2)),
    line(`M0 0H${WIDTH}`, 0.35),
    ...visitsOf(schedule)
      .filter((v) => v.from <= strip.to)
      .flatMap((v) => markStrokes(strip.x(v.from))),
  ];
  return {
    picture: {
      low: { x: -6, y: -8 },
      high: { x: WIDTH + 6, y: HEIGHT + 4 },
      strokes,
      labels: ticks.flatMap((at, i) => labelsOf(strip, at, i === 0)),
      scaled: false,
    },
    caption: captionFor(schedule, strip),
  };
};

const stripOf = ({ start, finish }: Schedule): Strip => {
  const from = Math.floor(start / 60) * 60;
  const to = Math.min(from + MOST_DAYS * DAY, Math.max(Math.ceil(finish / 60) * 60, from + 60));
  return { from, to, x: (at) => ((Math.min(Math.max(at, from), to) - from) / (to - from)) * WIDTH };
};

const captionFor = (schedule: Schedule, strip: Strip): Text =>
  sentences([words.caption, schedule.finish > strip.to ? words.firstDays(MOST_DAYS) : undefined]);

const words = phrases('shift-strip', {
  caption: say`Run schedule. Grey: unattended. Bars: cutting. Dashed: waiting. Pins: operator needed.`,
  firstDays: (days: number) => say`The first ${{ days: count(days) }} days are shown.`,
});

/** Stretches of one kind within the strip, those that nearly touch joined: a strip has room for few. */
const barsOf = (schedule: Schedule, strip: Strip, kind: Schedule['events'][number]['kind']): readonly (readonly [Moment, Moment])[] => {
  const least = (FINE / WIDTH) * (strip.to - strip.from);
  const bars: [Moment, Moment][] = [];
  for (const event of schedule.events) {
    if (event.kind !== kind || event.from > strip.to) continue;
    const last = bars.at(-1);
    if (last !== undefined && event.from - last[1] < least) last[1] = event.to;
    else bars.push([event.from, event.to]);
  }
  return bars;
};

interface Bar {
  readonly low: number;
  readonly high: number;
  readonly grey: number;
}

const box = (strip: Strip, { from, to }: Pick<Strip, 'from' | 'to'>, { low, high, grey }: Bar): readonly Stroke[] => {
  const [left, right] = [strip.x(from), strip.x(to)];
  if (right <= left) return [];
  return [{ data: `M${pathNumber(left)} ${low}H${pathNumber(right)}V${high}H${pathNumber(left)}Z`, width: 0.02, grey, fill: grey }];
};

const line = (data: string, width: number): Stroke => ({ data, width, grey: 0.1 });

const waitStroke = (strip: Strip, from: Moment, to: Moment): Stroke => ({
  data: `M${pathNumber(strip.x(from))} 4.5H${pathNumber(strip.x(to))}`,
  width: 0.3,
  grey: 0.25,
  dash: [1, 0.8],
});

/** A pin on the strip's upper edge. */
const markStrokes = (x: number): readonly Stroke[] => [
  line(`M${pathNumber(x)} 7V${HEIGHT}`, 0.25),
  { data: circleData({ x, y: HEIGHT + 1 }, 0.9), width: 0.2, grey: 0.1, fill: 0.1 },
];

/** Full hours, so many apart that their labels have room; midnights come with them. */
const ticksOf = ({ from, to }: Strip): readonly Moment[] => {
  const step = 60 * (HOURS.find((h) => (to - from) / (60 * h) <= MOST_TICKS) ?? 48);
  const ticks: Moment[] = [];
  for (let at = from + ((step - (minuteOfWeek(from) % step)) % step); at <= to; at += step) ticks.push(at);
  return ticks;
};

/** The time of day, and below it the day where one begins. */
const labelsOf = (strip: Strip, at: Moment, first: boolean): readonly WrittenLabel[] => {
  const x = strip.x(at);
  const timeOfDay: WrittenLabel = { at: { x, y: -2.8 }, text: moment(at, 'time'), side: 'centre', ring: false };
  return first || minuteOfWeek(at) % DAY === 0 ? [timeOfDay, { ...timeOfDay, at: { x, y: -6 }, text: moment(at, 'day') }] : [timeOfDay];
};
