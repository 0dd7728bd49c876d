/** A run on the clock in a few sentences: when it is done, when somebody must be there, when the machine waits. */
import type { Clock, ClockEvent } from '../../estimate/clock/clock.ts';
import { DAY, type Moment, printDay, printMoment, printOclock } from '../../estimate/clock/moment.ts';
import { printDuration } from '../../text/print/duration.ts';

/** Visits to the machine that are told one by one. */
const MOST_VISITS = 8;
/** Whoever is needed again so soon stays at the machine, minutes. */
const STAYS = 15;

export const clockSentences = (clock: Clock): readonly string[] => [doneSentence(clock), visitsSentence(clock), aloneSentence(clock)];

const doneSentence = ({ start, finish, early, late, pieces }: Clock): string => {
  const what = pieces.laid === 1 ? 'it is done' : `${pieces.laid} pieces are done`;
  const sameDay = [early, late].every((at) => printDay(at) === printDay(finish));
  const ends = [early, late].map(sameDay ? printOclock : printMoment).join(' and ');
  const range = late - early < 2 ? '' : ` (likely between ${ends})`;
  return `Started ${printMoment(start)} ${what} ${printMoment(finish)}${range}.`;
};

const visitsSentence = (clock: Clock): string => {
  const visits = visitsOf(clock);
  if (visits.length === 0) return 'Nobody need be there on the way.';
  let day = '';
  const told = visits.slice(0, MOST_VISITS).map(({ from, to, names }) => {
    const when = printDay(from) === day ? '' : `${printDay(from)} `;
    day = printDay(from);
    const until = to - from > STAYS ? ` to ${printOclock(to)}` : '';
    return `${when}${printOclock(from)}${until} (${namesText(names)})`;
  });
  const more = visits.length - told.length;
  const cut = clock.left > 0 ? ' or more' : '';
  return `Somebody must be there at ${told.join(', ')}${more > 0 ? ` and ${more}${cut} more times` : ''}.`;
};

const namesText = (names: readonly string[]): string =>
  names.length <= 3 ? names.join(', ') : `${names.slice(0, 2).join(', ')} and ${names.length - 2} more`;

const aloneSentence = ({ totals }: Clock): string => {
  const night =
    totals.cuttingAtNight < 1
      ? 'all of it while somebody is in the shop'
      : `${printDuration(totals.cuttingAtNight)} of it while nobody is in the shop`;
  const waits =
    totals.waiting < 1 ? 'The machine waits for nobody.' : `The machine waits ${printDuration(totals.waiting)} for somebody to come.`;
  return `It cuts ${printDuration(totals.cutting)}, ${night}. ${waits}`;
};

export interface Visit {
  readonly from: Moment;
  readonly to: Moment;
  /** What it is about, each once: contours, threading, loading, the spool. */
  readonly names: readonly string[];
}

/** Times at which somebody is at the machine; what follows within a quarter of an hour is one visit. */
export const visitsOf = ({ events }: Clock): readonly Visit[] => {
  const visits: { from: Moment; to: Moment; names: string[] }[] = [];
  for (const event of events) {
    if (!event.needsPerson) continue;
    const last = visits.at(-1);
    const name = nameOf(event);
    if (last === undefined || event.from - last.to > STAYS) visits.push({ from: event.from, to: event.to, names: [name] });
    else {
      last.to = event.to;
      if (!last.names.includes(name)) last.names.push(name);
    }
  }
  return visits;
};

/** A stop at a contour is named by it, everything else by its kind: a line that is cut open is a stop like others. */
const nameOf = ({ kind, piece, stop }: ClockEvent): string => {
  if (kind === 'loading') return `load piece ${piece}`;
  if (kind === 'spool change') return 'new spool';
  if (kind === 'threading') return 'thread the wire';
  return stop?.loop?.startsWith('L') === true ? stop.loop : 'stop';
};

/** 'Thu 08:40', and with the date where it lies a week or more behind the start. */
export const oclockText = (at: Moment, start: Moment): string =>
  at - start < 7 * DAY ? `${printDay(at).slice(0, 3)} ${printOclock(at)}` : printMoment(at);
