/** The segments of a chain out of its plain numbers, and what can be asked of them without making objects of all. */
import { boundsOf, nearestOn, pointAt } from '../../geometry/measure.ts';
import type { Segment } from '../../geometry/segment.ts';
import { PER_SEGMENT } from '../work/chain-view.ts';
import type { ChainView } from '../work/views.ts';
import type { Spot, Window } from './view.ts';

export const countOf = (numbers: Float64Array): number => Math.floor(numbers.length / PER_SEGMENT);

/** Segment `i` of a chain, as geometry knows it. */
export const segmentAt = (numbers: Float64Array, i: number): Segment => {
  const [x1, y1, x2, y2, cx, cy, radius, sweep] = numbers.subarray(i * PER_SEGMENT, (i + 1) * PER_SEGMENT) as unknown as number[];
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

/** The place of a chain nearest to a point, over all its segments. A chain without segments has none. */
export const nearestOnChain = (
  chain: ChainView,
  p: Spot,
): { readonly at: Spot; readonly distance: number; readonly segment: number } | undefined => {
  let best: { at: Spot; distance: number; segment: number } | undefined;
  for (let i = 0; i < countOf(chain.segments); i += 1) {
    const { at, distance } = nearestOn(segmentAt(chain.segments, i), p);
    if (best === undefined || distance < best.distance) best = { at, distance, segment: i };
  }
  return best;
};

/** Whether a point lies inside a closed chain: an odd number of its segments lie to the right of it. */
export const isInside = ({ closed, segments }: ChainView, p: Spot): boolean => {
  if (!closed) return false;
  let crossings = 0;
  for (let i = 0; i < countOf(segments); i += 1) crossings += crossingsRightOf(segments, i, p);
  return crossings % 2 === 1;
};

/** How often the ray from `p` to the right crosses segment `i`; an end counts with the half above it, so that corners count once. */
const crossingsRightOf = (numbers: Float64Array, i: number, p: Spot): number => {
  const at = i * PER_SEGMENT;
  const radius = numbers[at + 6];
  if (radius > 0) return arcCrossings(numbers, at, p);
  const [x1, y1, x2, y2] = [numbers[at], numbers[at + 1], numbers[at + 2], numbers[at + 3]];
  if (y1 > p.y === y2 > p.y) return 0;
  return x1 + ((p.y - y1) / (y2 - y1)) * (x2 - x1) > p.x ? 1 : 0;
};

/** An arc cut at its highest and lowest point rises or falls all along, like a line. */
const arcCrossings = (numbers: Float64Array, at: number, p: Spot): number => {
  const [cx, cy, radius, sweep] = [numbers[at + 4], numbers[at + 5], numbers[at + 6], numbers[at + 7]];
  if (p.y < cy - radius || p.y > cy + radius || p.x > cx + radius) return 0;
  const start = Math.atan2(numbers[at + 1] - cy, numbers[at] - cx);
  const stops = [start, ...turningsWithin(start, sweep), start + sweep];
  let crossings = 0;
  for (let k = 0; k + 1 < stops.length; k += 1) {
    const y1 = k === 0 ? numbers[at + 1] : cy + radius * Math.sin(stops[k]);
    const y2 = k + 2 === stops.length ? numbers[at + 3] : cy + radius * Math.sin(stops[k + 1]);
    if (y1 > p.y === y2 > p.y) continue;
    const side = Math.cos((stops[k] + stops[k + 1]) / 2) >= 0 ? 1 : -1;
    if (cx + side * Math.sqrt(Math.max(0, radius ** 2 - (p.y - cy) ** 2)) > p.x) crossings += 1;
  }
  return crossings;
};

/** Angles at the top and bottom of the circle that the arc passes, in the order of travel. */
const turningsWithin = (start: number, sweep: number): readonly number[] => {
  const found: number[] = [];
  const [low, high] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  for (let k = Math.ceil((low - Math.PI / 2) / Math.PI); Math.PI / 2 + k * Math.PI <= high; k += 1) found.push(Math.PI / 2 + k * Math.PI);
  return sweep > 0 ? found : found.reverse();
};

/** Places along a chain worth snapping to: named as a person would name them. */
export const remarkable = (segment: Segment): readonly { readonly kind: 'end' | 'middle' | 'centre' | 'quadrant'; readonly at: Spot }[] => {
  const ends = [segment.from, segment.to].map((at) => ({ kind: 'end' as const, at }));
  const full = segment.kind === 'arc' && Math.abs(segment.sweep) > 2 * Math.PI - 1e-9;
  const middle = { kind: 'middle' as const, at: pointAt(segment, 0.5) };
  if (segment.kind === 'line') return [...ends, middle];
  const quadrants = quadrantsOf(segment).map((at) => ({ kind: 'quadrant' as const, at }));
  const centre = { kind: 'centre' as const, at: segment.centre };
  return full ? [...quadrants, centre] : [...ends, ...quadrants, middle, centre];
};

/** East, north, west and south of the centre, as far as the arc passes them. */
const quadrantsOf = ({ from, centre, radius, sweep }: Extract<Segment, { kind: 'arc' }>): readonly Spot[] => {
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const turn = 2 * Math.PI;
  return [0, 1, 2, 3].flatMap((quarter) => {
    const away = (quarter * Math.PI) / 2 - start;
    const along = sweep > 0 ? ((away % turn) + turn) % turn : ((-away % turn) + turn) % turn;
    const [x, y] = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ][quarter];
    return along <= Math.abs(sweep) + 1e-9 ? [{ x: centre.x + radius * x, y: centre.y + radius * y }] : [];
  });
};
