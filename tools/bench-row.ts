/** One row of `npm run bench`: our own figure beside that of others on the same work in the same run. */

export interface BenchRow {
  readonly name: string;
  readonly ours: number;
  /** Of ms and MB less is better, of MB/s more. */
  readonly unit: 'ms' | 'MB' | 'MB/s';
  /** `atLeast` is how many times as fast as this peer we promise to be. */
  readonly peers: readonly { readonly name: string; readonly value: number; readonly atLeast?: number }[];
  readonly note?: string;
}
