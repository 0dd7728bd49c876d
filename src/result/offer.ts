/** What a quotation offers besides its price: how long it holds, and what would be cheaper. */

import type { Text } from '../text/text.ts';

/** A change to the job that would save money, worked out by running the job again. */
export interface Cheaper {
  /** What would change, as one would say it to the customer. */
  readonly sentence: Text;
  /** Minor money units saved on each piece. */
  readonly saves: number;
  readonly currency: string;
}

export interface Offer {
  /** Last day on which the quotation holds, ISO 8601. */
  readonly until: string;
  /** Of payment and delivery, as the shop typed them. */
  readonly terms?: string | undefined;
  readonly cheaper: readonly Cheaper[];
}
