/** What a comparison found: the job as asked, its changes ranked by what they save, price over finish. */

import type { Figure } from '../quantity/figure.ts';
import type { Text } from '../text/text.ts';
import type { TimeComparison } from './comparison-time.ts';

export interface ComparedOutcome {
  /** Minor money units for one piece. */
  readonly each: number;
  readonly minutes: number;
  readonly unattended: number;
  readonly wire: string;
  readonly passes: number;
  readonly accuracy: Figure;
  readonly finish: Figure;
}

/** Values of the job file that make the job so; left out where no value of it says so. */
export type JobChange = Readonly<Record<string, unknown>>;

/** `Said`: texts, or what a page has printed of them. */
export type Compared<Said = Text> =
  | {
      readonly kind: 'can';
      readonly what: string;
      readonly sentence: Said;
      readonly outcome: ComparedOutcome;
      readonly saves: number;
      readonly change?: JobChange | undefined;
    }
  | { readonly kind: 'cannot'; readonly what: string; readonly sentence: Said; readonly reason: Said };

export type Comparison<Said = Text> =
  | {
      readonly kind: 'compared';
      readonly currency: string;
      readonly now: ComparedOutcome;
      readonly rows: readonly Compared<Said>[];
      /** Other starts and orders; none where the job cannot be scheduled. */
      readonly time?: TimeComparison;
    }
  | { readonly kind: 'cannot'; readonly reason: Said };

/** One point of price against finish: Ra asked for and reached, µm, and the price of one piece. */
export interface PricePoint {
  readonly finish: number;
  readonly each: number;
  readonly passes: number;
  readonly reached: number;
  /** Found by narrowing down: the finest finish that this number of passes still gives, to a hundredth of it. */
  readonly lastOfStep?: true;
}
