/** What the model and the planner must know of a machine. */

export interface Machine {
  readonly id: string;
  readonly name: string;
  /** Largest block: table travel in x and y, and height, mm. */
  readonly travel: { readonly x: number; readonly y: number };
  readonly height: number;
  /** Wires it can thread, mm. */
  readonly wire: { readonly low: number; readonly high: number };
  /** Energy rungs: cube root of pulse energy against the rough, falling, the first is 1. */
  readonly rungs: readonly number[];
  /** Form error that skims cannot get below, µm, and positioning error of one size, µm (one standard deviation). */
  readonly formFloor: number;
  readonly positioning: number;
  /** Fastest feed along the contour while sparking, and travel without the wire cutting, mm/min. */
  readonly servoLimit: number;
  readonly travelFeed: number;
  /** Minutes to thread by itself, or by hand when it cannot. */
  readonly threadMinutes: number;
  readonly threadsItself: boolean;
}
