/** The stops of a run in the order in which they come, and which of them are ticked off. */

import type { LogEntry } from '../../server/message/job-record.ts';
import type { ScheduleEventView, ScheduleView } from '../work/views.ts';

export interface Stop {
  /** Unlike every other of this run; ticks are kept under it: 'secure slug L3', with a number behind it from the second of its kind on. */
  readonly id: string;
  readonly what: string;
  readonly timeOfDay: string;
  readonly atNight: boolean;
  /** Line of the program, from 1. */
  readonly line?: number | undefined;
  readonly ticked?: string | undefined;
}

/** A stop ticked an even number of times is not done: a tick can be taken back, and the log keeps both. */
export const stopsOf = (schedule: ScheduleView, log: readonly LogEntry[]): readonly Stop[] => {
  const ids = numbered();
  return schedule.events
    .filter((e) => e.needsPerson)
    .map((e, i) => {
      const id = ids(aboutOf(e));
      const ticks = log.filter((l) => l.kind === 'tick' && (l.about === id || isOf03(l.about, e, i)));
      const last = ticks.at(-1);
      return {
        id,
        what: begun(e.what),
        timeOfDay: e.timeOfDay,
        atNight: e.atNight,
        line: e.block === undefined ? undefined : e.block + 1,
        ticked: ticks.length % 2 === 1 && last !== undefined ? last.at : undefined,
      };
    });
};

/** What the moment is for and which piece it is about, in no words that may be said otherwise one day. */
const aboutOf = ({ kind, stop }: ScheduleEventView): string => {
  if (stop === undefined) return kind;
  return stop.loop === undefined ? stop.purpose : `${stop.purpose} ${stop.loop}`;
};

/**
 * Ticks of 0.3 were kept under their place in the list and the words of the comment: a run that is half done goes on. The words of today
 * are others, so that place, contour and whether a piece hung there say which stop it was.
 */
const isOf03 = (about: string, { plain, what, stop }: ScheduleEventView, i: number): boolean => {
  if (about === `${i + 1} ${plain ?? what}`.slice(0, 120)) return true;
  if (stop?.loop === undefined || !about.startsWith(`${i + 1} ${stop.loop}, `)) return false;
  return about.includes(' HANGS ') === stop.purpose.startsWith('secure');
};

const numbered = (): ((about: string) => string) => {
  const seen = new Map<string, number>();
  return (about) => {
    const n = (seen.get(about) ?? 0) + 1;
    seen.set(about, n);
    return n === 1 ? about : `${about} ${n}`;
  };
};

/** What stands on the schedule beside other things begins small. */
const begun = (what: string): string => what.charAt(0).toUpperCase() + what.slice(1);
