/** The run by the shop's schedule, for the strip. */

import { timeText } from '../../documents/part/schedule-text.ts';
import { attendedWeek } from '../../job/pipeline/schedule.ts';
import type { Shop } from '../../job/shop.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import { only } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ScheduleEventView, ScheduleView } from './views.ts';

export const scheduleView = (
  { schedule }: Pick<HoursFacts, 'schedule'>,
  { shifts }: Pick<Shop, 'shifts'>,
): ScheduleView<Text> | undefined =>
  schedule === undefined
    ? undefined
    : {
        start: schedule.start,
        finish: schedule.finish,
        startText: timeOfDay(schedule.start, schedule),
        finishText: timeOfDay(schedule.finish, schedule),
        events: schedule.events.map((event) => eventView(event, schedule)),
        nights: schedule.nights,
        week: attendedWeek(shifts),
      };

type Schedule = NonNullable<HoursFacts['schedule']>;

const eventView = ({ block, stop, what, ...event }: Schedule['events'][number], schedule: Schedule): ScheduleEventView<Text> => ({
  ...event,
  what,
  plain: stop?.comment,
  block,
  stop: stop && { purpose: stop.purpose, loop: stop.loop },
  timeOfDay: timeOfDay(event.from, schedule),
});

/** 'Thu 17:45', with the date where the run is long. */
const timeOfDay = (at: number, schedule: Schedule): Text => only(timeText(at, schedule));
