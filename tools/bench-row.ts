/** One row of `npm run bench`: our own figure beside that of others on the same work in the same run. */

export interface BenchRow {
  readonly name: string;
  readonly ours: number;
  readonly unit: 'ms' | 'MB/s';
  /** `atLeast` is how many times as fast as this peer we promise to be. */
  readonly peers: readonly { readonly name: string; readonly value: number; readonly atLeast?: number }[];
  readonly note?: string;
}
