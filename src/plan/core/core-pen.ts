/** Drawing a way piece by piece: straight to a place, or along a ring from one length travelled to another. */

import { startAt } from '../../geometry/chain.ts';
import type { Contour } from '../../geometry/contour.ts';
import { reverse, slice } from '../../geometry/cut.ts';
import { lengthOf } from '../../geometry/measure.ts';
import { lookupOf, nearestIn } from '../../geometry/near/lookup.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { itemAt, lastItem, neighbours, sideBySide } from '../../sequence/sequence.ts';

/** A ring run from a place on it. */
export interface Lap {
  readonly contour: Contour;
  readonly length: number;
  /** Length travelled to the start of each segment, and all round last. */
  readonly told: readonly number[];
  /** Length travelled to the place nearest to a point. */
  readonly lengthAt: (p: Point) => number;
}

export const lapFrom = (ring: Contour, from: Point): Lap => {
  const found = nearestIn(lookupOf(ring), from);
  const contour = startAt(ring, found.segment, found.share);
  const told = [0];
  for (const s of contour.segments) told.push(lastItem(told) + lengthOf(s));
  const lookup = lookupOf(contour);
  const lengthAt = (p: Point): number => {
    const { segment, share } = nearestIn(lookup, p);
    return itemAt(told, segment) + share * lengthOf(itemAt(contour.segments, segment));
  };
  return { contour, told, length: lastItem(told), lengthAt };
};

export interface CorePen {
  readonly at: () => Point;
  readonly segments: () => readonly Segment[];
  /** Straight. */
  readonly to: (p: Point) => void;
  /** Forward along a lap, between two lengths. */
  readonly along: (lap: Lap, from: number, to: number) => void;
  /** From the start of a lap to a place on it, forward or backward, whichever is shorter. */
  readonly alongShorter: (lap: Lap, to: Point) => void;
}

/** Moves shorter than this, mm, are none. */
const NONE = 1e-9;

export const corePen = (start: Point): CorePen => {
  const segments: Segment[] = [];
  let at = start;
  const put = (s: Segment): void => {
    if (lengthOf(s) < NONE) return;
    segments.push(s.kind === 'line' ? { ...s, from: at } : s);
    at = s.to;
  };
  const alongShorter = (lap: Lap, to: Point): void => {
    const length = lap.lengthAt(to);
    if (length <= lap.length / 2) for (const s of stretchOf(lap, 0, length)) put(s);
    else for (const s of stretchOf(lap, length, lap.length).toReversed()) put(reverse(s));
  };
  return {
    at: () => at,
    segments: () => segments,
    to: (p) => put({ kind: 'line', from: at, to: p }),
    along: (lap, from, to) => {
      for (const s of stretchOf(lap, from, to)) put(s);
    },
    alongShorter,
  };
};

const stretchOf = ({ contour, told }: Lap, from: number, to: number): readonly Segment[] =>
  sideBySide(contour.segments, neighbours(told)).flatMap(([s, [start, end]]) => {
    const [low, high] = [Math.max(from, start), Math.min(to, end)];
    if (high - low < NONE) return [];
    const share = (at: number): number => (at - start) / (end - start);
    return [slice(s, low === start ? 0 : share(low), high === end ? 1 : share(high))];
  });
