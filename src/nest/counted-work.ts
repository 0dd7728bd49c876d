/** Work that is counted, so that the same question ends in the same way on every machine; and the questioner's say in it. */
import type { Text } from '../text/text.ts';

/** Changes as work is done. */
export interface CountedWork {
  done: number;
  /** Where to stop. */
  readonly most: number;
  stopped: boolean;
  told: number;
  readonly tell: (share: number, note: Text) => 'go on' | 'stop';
}

export const workOf = (most: number, tell: CountedWork['tell'] = () => 'go on'): CountedWork => ({
  done: 0,
  most,
  stopped: false,
  told: 0,
  tell,
});

/** Between two words to the questioner, as a share of all work. */
const TELLING = 0.005;

/** Whether to go on; tells how far it is now and then. */
export const goesOn = (work: CountedWork, note: Text): boolean => {
  if (work.stopped || work.done >= work.most) return false;
  if (work.done >= work.told) {
    work.told = work.done + work.most * TELLING;
    work.stopped = work.tell(Math.min(1, work.done / work.most), note) === 'stop';
  }
  return !work.stopped;
};
