/** Imports that the rules do not allow and that stand today. Each goes with the step that ends it; the list may only grow shorter. */

export interface Breaches {
  /** The step of the rebuild after which none of these is left. */
  readonly ends: string;
  readonly faults: readonly string[];
}

export const BREACHES: readonly Breaches[] = [];
