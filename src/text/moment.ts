/** Days and hours as plain minutes, by the wall clock of the shop: no zone, no summer time, no clock of our own. */

/** Minutes since the midnight that began 1 January 1970, as the clock on the shop's wall would have counted them. */
export type Moment = number;

export const DAY = 1440;
export const WEEK = 7 * DAY;

/** Minutes since Monday's midnight. 1 January 1970 was a Thursday. */
export const minuteOfWeek = (at: Moment): number => at + 3 * DAY - Math.floor((at + 3 * DAY) / WEEK) * WEEK;
