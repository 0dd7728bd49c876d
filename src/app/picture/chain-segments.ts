/** The segments of a chain out of its plain numbers, and what can be asked of them without making objects of all. */

import { boundsOf, pointAt } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { neighbours } from '../../sequence/sequence.ts';
import { PER_SEGMENT } from '../work/chain-view.ts';
import type { ChainView } from '../work/views.ts';
import type { Window } from './view.ts';

export const countOf = (numbers: Float64Array): number => Math.floor(numbers.length / PER_SEGMENT);

/** Both ends, centre, radius and sweep; the last four are 0 for a line. */
type Eight = readonly [number, number, number, number, number, number, number, number];

/** The numbers of segment `i`; a chain holds eight for each. */
const eightAt = (numbers: Float64Array, i: number): Eight => numbers.subarray(i * PER_SEGMENT, (i + 1) * PER_SEGMENT) as unknown as Eight;

/** Segment `i` of a chain, as geometry knows it. */
export const segmentAt = (numbers: Float64Array, i: number): Segment => {
  const [x1, y1, x2, y2, cx, cy, radius, sweep] = eightAt(numbers, i);
  const from = { x: x1, y: y1 };
  const to = { x: x2, y: y2 };
  return radius > 0 ? { kind: 'arc', from, to, centre: { x: cx, y: cy }, radius, sweep } : { kind: 'line', from, to };
};

export const boxOf = (numbers: Float64Array, i: number): Window => boundsOf(segmentAt(numbers, i));

/** The smallest box around some boxes; none around nothing. */
export const boxAround = (boxes: Iterable<Window>): Window | undefined => {
  let around: { minX: number; minY: number; maxX: number; maxY: number } | undefined;
  for (const b of boxes) {
    if (around === undefined) around = { ...b };
    else {
      around.minX = Math.min(around.minX, b.minX);
      around.minY = Math.min(around.minY, b.minY);
      around.maxX = Math.max(around.maxX, b.maxX);
      around.maxY = Math.max(around.maxY, b.maxY);
    }
  }
  return around;
};

/** Whether a point lies inside a closed chain: an odd number of its segments lie to the right of it. */
export const isInside = ({ closed, segments }: ChainView, p: Point): boolean => {
  if (!closed) return false;
  let crossings = 0;
  for (let i = 0; i < countOf(segments); i += 1) crossings += crossingsRightOf(segments, i, p);
  return crossings % 2 === 1;
};

/** How often the ray from `p` to the right crosses segment `i`; an end counts with the half above it, so that corners count once. */
const crossingsRightOf = (numbers: Float64Array, i: number, p: Point): number => {
  const eight = eightAt(numbers, i);
  const [x1, y1, x2, y2, , , radius] = eight;
  if (radius > 0) return arcCrossings(eight, p);
  if (y1 > p.y === y2 > p.y) return 0;
  return x1 + ((p.y - y1) / (y2 - y1)) * (x2 - x1) > p.x ? 1 : 0;
};

/** An arc cut at its highest and lowest point rises or falls all along, like a line. */
const arcCrossings = ([x1, y1, , y2, cx, cy, radius, sweep]: Eight, p: Point): number => {
  if (p.y < cy - radius || p.y > cy + radius || p.x > cx + radius) return 0;
  const start = Math.atan2(y1 - cy, x1 - cx);
  const turnings = turningsWithin(start, sweep).map((angle) => ({ angle, y: cy + radius * Math.sin(angle) }));
  const stops = [{ angle: start, y: y1 }, ...turnings, { angle: start + sweep, y: y2 }];
  return neighbours(stops).filter(([from, to]) => {
    if (from.y > p.y === to.y > p.y) return false;
    const side = Math.cos((from.angle + to.angle) / 2) >= 0 ? 1 : -1;
    return cx + side * Math.sqrt(Math.max(0, radius ** 2 - (p.y - cy) ** 2)) > p.x;
  }).length;
};

/** Angles at the top and bottom of the circle that the arc passes, in the order of travel. */
const turningsWithin = (start: number, sweep: number): readonly number[] => {
  const found: number[] = [];
  const [low, high] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  for (let k = Math.ceil((low - Math.PI / 2) / Math.PI); Math.PI / 2 + k * Math.PI <= high; k += 1) found.push(Math.PI / 2 + k * Math.PI);
  return sweep > 0 ? found : found.reverse();
};

export interface Remarkable {
  readonly kind: 'end' | 'midpoint' | 'centre' | 'top' | 'bottom' | 'left' | 'right';
  readonly at: Point;
}

/** Places along a chain worth snapping to: named as a person would name them. */
export const remarkable = (segment: Segment): readonly Remarkable[] => {
  const ends = [segment.from, segment.to].map((at) => ({ kind: 'end' as const, at }));
  const full = segment.kind === 'arc' && Math.abs(segment.sweep) > 2 * Math.PI - 1e-9;
  const midpoint = { kind: 'midpoint' as const, at: pointAt(segment, 0.5) };
  if (segment.kind === 'line') return [...ends, midpoint];
  const sides = sidesOf(segment);
  const centre = { kind: 'centre' as const, at: segment.centre };
  return full ? [...sides, centre] : [...ends, ...sides, midpoint, centre];
};

const QUARTERS = [
  ['right', 1, 0],
  ['top', 0, 1],
  ['left', -1, 0],
  ['bottom', 0, -1],
] as const;

/** Right, top, left and bottom of the circle, as far as the arc passes them. */
const sidesOf = ({ from, centre, radius, sweep }: Extract<Segment, { kind: 'arc' }>): readonly Remarkable[] => {
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const turn = 2 * Math.PI;
  return QUARTERS.flatMap(([kind, x, y], quarter) => {
    const away = (quarter * Math.PI) / 2 - start;
    const along = sweep > 0 ? ((away % turn) + turn) % turn : ((-away % turn) + turn) % turn;
    return along <= Math.abs(sweep) + 1e-9 ? [{ kind, at: { x: centre.x + radius * x, y: centre.y + radius * y } }] : [];
  });
};
