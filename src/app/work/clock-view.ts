/** The run on the clock of the shop, for the strip. */

import { oclockText } from '../../documents/part/clock-text.ts';
import { attendedWeek } from '../../job/pipeline/schedule.ts';
import type { Shop } from '../../job/shop.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import { only } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ClockEventView, ClockView } from './views.ts';

export const clockView = ({ clock }: Pick<HoursFacts, 'clock'>, { shifts }: Pick<Shop, 'shifts'>): ClockView<Text> | undefined =>
  clock === undefined
    ? undefined
    : {
        start: clock.start,
        finish: clock.finish,
        startText: oclock(clock.start, clock),
        finishText: oclock(clock.finish, clock),
        events: clock.events.map((event) => eventView(event, clock)),
        nights: clock.nights,
        week: attendedWeek(shifts),
      };

type Clock = NonNullable<HoursFacts['clock']>;

const eventView = ({ block, stop, what, ...event }: Clock['events'][number], clock: Clock): ClockEventView<Text> => ({
  ...event,
  what,
  plain: stop?.comment,
  block,
  stop: stop && { purpose: stop.purpose, loop: stop.loop },
  oclock: oclock(event.from, clock),
});

/** 'Thu 17:45', with the date where the run is long. */
const oclock = (at: number, clock: Clock): Text => only(oclockText(at, clock));
