/** How sure a promise has to be, and what goes wrong whatever the passes are. */

/** What adds to the error whatever the passes are. µm where nothing else is said, one standard deviation where it is random. */
export interface ErrorsBeside {
  /** Systematic: growth of the part. */
  readonly growth: number;
  /** Random: water and room, and from one piece to the next. */
  readonly swing: number;
  readonly repeatability: number;
  /** Random: movement of the block after the rough cut, and the share of it that each skim leaves. */
  readonly stress: number;
  readonly stressLeft: number;
  /** Inside arcs of the drawing, mm, the tightest first. */
  readonly insideRadii: readonly number[];
  /** Cut faces that the error counts on: 1 for a profile, 2 for a size across an opening or a part. */
  readonly sides: number;
}

export const nothingBeside: ErrorsBeside = {
  growth: 0,
  swing: 0,
  repeatability: 0,
  stress: 0,
  stressLeft: 1,
  insideRadii: [],
  sides: 1,
};

/** How sure it has to be, and what else goes wrong beside the passes. */
export interface Sureness {
  /** Standard deviations of what is random that a promise holds. */
  readonly confidence?: number | undefined;
  readonly beside?: ErrorsBeside | undefined;
}
