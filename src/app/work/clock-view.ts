/** The run on the clock of the shop, for the strip. */

import { attendedWeek } from '../../job/pipeline/schedule.ts';
import type { Shop } from '../../job/shop.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import { moment } from '../../text/part.ts';
import { only } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ClockEventView, ClockView } from './views.ts';

export const clockView = ({ clock }: Pick<HoursFacts, 'clock'>, { shifts }: Pick<Shop, 'shifts'>): ClockView<Text> | undefined =>
  clock === undefined
    ? undefined
    : {
        start: clock.start,
        finish: clock.finish,
        startText: oclock(clock.start),
        finishText: oclock(clock.finish),
        events: clock.events.map(eventView),
        nights: clock.nights,
        week: attendedWeek(shifts),
      };

type Clock = NonNullable<HoursFacts['clock']>;

const eventView = ({ block, stop, what, ...event }: Clock['events'][number]): ClockEventView<Text> => ({
  ...event,
  what,
  plain: stop?.comment,
  block,
  stop: stop && { purpose: stop.purpose, loop: stop.loop },
  oclock: oclock(event.from),
});

/** 'Thu 17:45' */
const oclock = (at: number): Text => only(moment(at, 'weekday and time'));
