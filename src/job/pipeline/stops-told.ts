/** Stops of our own program, read back, with what they say as data: a reader is told it in his language and units, and the program is not asked. */
import type { Action, ReadProgram } from '../../nc/read/program.ts';
import type { ToldStop } from '../../nc/write/write.ts';

/** A stop whose comment is not the one that was written there keeps the comment alone. */
export const withStopsTold = (program: ReadProgram, written: readonly ToldStop[]): ReadProgram => {
  let stop = 0;
  const told = (action: Action): Action => {
    if (action.kind !== 'stop') return action;
    const wrote = written[stop];
    stop += 1;
    return wrote !== undefined && wrote.comment === action.comment ? { ...action, said: wrote.text, details: wrote.details } : action;
  };
  return { ...program, actions: program.actions.map(told) };
};
