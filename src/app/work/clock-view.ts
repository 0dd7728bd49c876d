/** The run on the clock of the shop, for the strip. */

import { attendedWeek } from '../../job/pipeline/schedule.ts';
import type { Shop } from '../../job/shop.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import type { ClockEventView, ClockView, Untold } from './views.ts';

const DAY = 1440;
const DAYS = ['Thu', 'Fri', 'Sat', 'Sun', 'Mon', 'Tue', 'Wed'] as const;

export const clockView = ({ clock }: Pick<HoursFacts, 'clock'>, { shifts }: Pick<Shop, 'shifts'>): ClockView<Untold> | undefined =>
  clock === undefined
    ? undefined
    : {
        start: clock.start,
        finish: clock.finish,
        startText: momentText(clock.start),
        finishText: momentText(clock.finish),
        events: clock.events.map(eventView),
        nights: clock.nights,
        week: attendedWeek(shifts),
      };

type Clock = NonNullable<HoursFacts['clock']>;

const eventView = ({ block, stop, pass: _, what, ...event }: Clock['events'][number]): ClockEventView<Untold> => ({
  ...event,
  what,
  ...(block !== undefined && { block }),
  ...(stop !== undefined && { stop }),
  oclock: momentText(event.from),
});

/** 'Thu 17:45'. Moments count minutes from 1970, whose first day was a Thursday. */
export const momentText = (at: number): string => {
  const whole = Math.round(at);
  const day = Math.floor(whole / DAY);
  const minute = whole - day * DAY;
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${DAYS[((day % 7) + 7) % 7]} ${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
};
