/** Taking one segment apart and turning it round: reverse, split, slice. */

import { pointAt } from './measure.ts';
import type { Point, Segment } from './segment.ts';

/** The same places travelled the other way. */
export const reverse = (segment: Segment): Segment =>
  segment.kind === 'line'
    ? { kind: 'line', from: segment.to, to: segment.from }
    : { ...segment, from: segment.to, to: segment.from, sweep: -segment.sweep };

/** The two parts on either side of a share strictly between 0 and 1; they meet in exactly the same point. */
export const split = (segment: Segment, share: number): readonly [Segment, Segment] => {
  if (!(share > 0 && share < 1)) throw new RangeError(`a segment is split strictly between its ends, not at share ${share}`);
  const at = pointAt(segment, share);
  return [piece(segment, 0, share, segment.from, at), piece(segment, share, 1, at, segment.to)];
};

/** The part between two shares, `low` below `high`; the whole segment itself for 0 and 1. */
export const slice = (segment: Segment, low: number, high: number): Segment => {
  if (!(low >= 0 && low < high && high <= 1)) throw new RangeError(`no part of a segment lies between shares ${low} and ${high}`);
  return low === 0 && high === 1 ? segment : piece(segment, low, high, pointAt(segment, low), pointAt(segment, high));
};

const piece = (segment: Segment, low: number, high: number, from: Point, to: Point): Segment =>
  segment.kind === 'line' ? { kind: 'line', from, to } : { ...segment, from, to, sweep: segment.sweep * (high - low) };
