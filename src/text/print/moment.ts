/** Printing of moments by the clock on the shop's wall; minutes since the midnight that began 1 January 1970 inside the house. */
import type { ShownMoment } from '../part.ts';

/** Names of the days of the week, Monday first, and of the months. */
export interface Calendar {
  readonly weekdays: readonly string[];
  readonly months: readonly string[];
}

const ENGLISH: Calendar = {
  weekdays: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
  months: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
};

/** To the nearest minute. */
export const printMoment = (at: number, shown: ShownMoment = 'day and time', calendar: Calendar = ENGLISH): string => {
  const date = new Date(Math.round(at) * 60_000);
  const weekday = calendar.weekdays[(date.getUTCDay() + 6) % 7];
  const time = date.toISOString().slice(11, 16);
  if (shown === 'time') return time;
  if (shown === 'weekday and time') return `${weekday} ${time}`;
  const day = `${weekday} ${date.getUTCDate()} ${calendar.months[date.getUTCMonth()]}`;
  return shown === 'day' ? day : `${day} ${time}`;
};
