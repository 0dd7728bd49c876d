/**
 * Finds the points near a place: points are sorted into square cells, and only the nine cells around are looked at. Ends of a hundred
 * thousand pieces are asked for, so cells are chains of plain numbers: `!` stands where one of those is read.
 */
import type { Point } from '../segment.ts';

export interface Near {
  /** Remembers a point under a number of the caller's, each number once. */
  readonly add: (index: number, at: Point) => void;
  /** Visits the remembered points within `reach`, in no particular order. */
  readonly visit: (at: Point, see: (index: number, distance: number) => void) => void;
}

/**
 * @param size how many points will be added at most; indexes run from 0 to size - 1
 * @param reach how near counts, in the unit of the points; also the side of a cell
 */
export const nearPoints = (size: number, reach: number): Near => {
  const buckets = 2 ** Math.ceil(Math.log2(Math.max(16, size * 2)));
  const first = new Int32Array(buckets).fill(-1);
  const next = new Int32Array(size).fill(-1);
  const xs = new Float64Array(size);
  const ys = new Float64Array(size);
  // A mixture of both cell numbers; `| 0` wraps numbers that are too large for 32 bits, which only costs a shared bucket.
  const bucket = (column: number, row: number): number => {
    const mixed = Math.imul(column | 0, 73856093) ^ Math.imul(row | 0, 19349663);
    return (mixed ^ (mixed >>> 15)) & (buckets - 1);
  };
  const add = (index: number, at: Point): void => {
    xs[index] = at.x;
    ys[index] = at.y;
    const b = bucket(Math.floor(at.x / reach), Math.floor(at.y / reach));
    next[index] = first[b]!;
    first[b] = index;
  };
  const visit = (at: Point, see: (index: number, distance: number) => void): void => {
    const seen = nineBuckets(bucket, Math.floor(at.x / reach), Math.floor(at.y / reach));
    for (const b of seen)
      for (let i = first[b]!; i >= 0; i = next[i]!) {
        const dx = xs[i]! - at.x;
        const dy = ys[i]! - at.y;
        const square = dx * dx + dy * dy;
        if (square <= reach * reach) see(i, Math.sqrt(square));
      }
  };
  return { add, visit };
};

/** Two of the nine cells may share a bucket: each bucket is given once, so that no point is seen twice. */
const nineBuckets = (bucket: (column: number, row: number) => number, column: number, row: number): number[] => {
  const seen: number[] = [];
  for (const x of [-1, 0, 1])
    for (const y of [-1, 0, 1]) {
      const b = bucket(column + x, row + y);
      if (!seen.includes(b)) seen.push(b);
    }
  return seen;
};
