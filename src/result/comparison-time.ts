/** What-ifs that are about time: other starts and orders, with when each is done and whom it needs. */
import type { Moment } from '../text/moment.ts';
import type { Text } from '../text/text.ts';

/** Moments by the shop's schedule; all else min, for all pieces together. */
export interface TimeOutcome {
  readonly start: Moment;
  readonly done: Moment;
  /** Somebody is at the machine. */
  readonly attended: number;
  /** The machine stands and waits for somebody. */
  readonly waiting: number;
  /** Cutting while nobody is in the shop. */
  readonly atNight: number;
  /** For which the machine is taken up while somebody is in the shop: hours that another job could have had. */
  readonly inShift: number;
}

export interface TimeRow {
  readonly what: 'run order' | 'night start';
  /** As one would say it to the customer. */
  readonly sentence: Text;
  readonly outcome: TimeOutcome;
  /** Minutes by which it is done before the job as asked; less than 0 when later. */
  readonly sooner: number;
  /** Hours of the shift and of people won, at the rates of the shop, minor money units; the price does not know them. */
  readonly worth: number;
}

export interface TimeComparison {
  readonly currency: string;
  readonly now: TimeOutcome;
  /** What is worth most first. */
  readonly rows: readonly TimeRow[];
  /** Which order to run, and why. */
  readonly advice: Text;
}
