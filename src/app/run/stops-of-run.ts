/** The stops of a run in the order in which they come, and which of them are ticked off. */

import type { LogEntry } from '../../server/message/job-record.ts';
import { spoken } from '../../text/print/phrases.ts';
import type { ClockView } from '../work/views.ts';

export interface Stop {
  /** Unlike every other of this run; ticks are kept under it. */
  readonly id: string;
  readonly what: string;
  readonly oclock: string;
  readonly atNight: boolean;
  /** Line of the program, from 1. */
  readonly line?: number;
  readonly ticked?: string;
}

/** A stop ticked an even number of times is not done: a tick can be taken back, and the log keeps both. */
export const stopsOf = (clock: ClockView, log: readonly LogEntry[]): readonly Stop[] =>
  clock.events
    .filter((e) => e.needsPerson)
    .map((e, i) => {
      const id = `${i + 1} ${e.plain ?? e.what}`.slice(0, 120);
      const ticks = log.filter((l) => l.kind === 'tick' && l.about === id);
      const last = ticks.at(-1);
      return {
        id,
        what: sentence(e.what),
        oclock: e.oclock,
        atNight: e.atNight,
        ...(e.block === undefined ? {} : { line: e.block + 1 }),
        ...(ticks.length % 2 === 1 && last !== undefined ? { ticked: last.at } : {}),
      };
    });

/** Comments of a program know only capitals; what the house itself says begins small. */
const sentence = (what: string): string => {
  const calm = what === what.toUpperCase() ? spoken(what) : what;
  return (calm.charAt(0).toUpperCase() + calm.slice(1)).replace(
    /([.!?] )([a-z])/g,
    (_, end: string, letter: string) => end + letter.toUpperCase(),
  );
};
