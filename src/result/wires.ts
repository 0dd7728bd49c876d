/** Every wire of the shop carried through the whole job: what each would need and leave, and why it drops out. */

import type { Figure } from '../quantity/figure.ts';
import type { Text } from '../text/text.ts';

/** What a wire would need and leave; money in minor units, times in min, form in µm. */
export interface WireOutcome {
  readonly passes: number;
  /** Machine time of one piece. */
  readonly minutes: number;
  readonly each: number;
  /** Expected either side of the drawing, mm. */
  readonly accuracy: Figure;
  readonly finish: Figure;
  readonly form: Figure;
  /** Feed of the rough cut, mm/min: what the current that the wire stands lets it do. */
  readonly rough: number;
}

export type WireDropOut = 'corner' | 'slot' | 'height' | 'machine' | 'finish' | 'tolerance' | 'layout';

/**
 * `worked out`: plan, program, hours and price were made. `at least`: a lower bound of its hours and price already lies above
 * the total of the wire that was taken, so that no more was worked out. `drops out`: it cannot do what is asked.
 */
export type WireRow = { readonly id: string; readonly name: string; readonly inStock: boolean } & (
  | { readonly kind: 'worked out'; readonly outcome: WireOutcome; readonly unattended: number; readonly price: Figure }
  | { readonly kind: 'at least'; readonly outcome: WireOutcome }
  | { readonly kind: 'drops out'; readonly why: WireDropOut; readonly reason: Text }
);

export interface WireTable {
  readonly rows: readonly WireRow[];
  /** The wire of the plan; none where no wire does the job. */
  readonly chosen?: string | undefined;
  /** The next cheapest in stock. */
  readonly nextCheapest?: string | undefined;
  /** The user named the wire. */
  readonly named: boolean;
  readonly currency: string;
  readonly sentence: Text;
}
