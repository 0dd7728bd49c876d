/** Lines and arcs as plain numbers, eight for each segment, so that thousands of them cross between threads at once. */
import type { Segment } from '../../geometry/segment.ts';
import type { ChainView } from './views.ts';

export const PER_SEGMENT = 8;

interface Chained {
  readonly closed: boolean;
  readonly segments: readonly Segment[];
}

export const chainView = (chain: Chained, owner?: string): ChainView => ({
  closed: chain.closed,
  segments: segmentsView(chain.segments),
  owner,
});

export const segmentsView = (segments: readonly Segment[]): Float64Array => {
  const numbers = new Float64Array(segments.length * PER_SEGMENT);
  segments.forEach((s, i) => {
    const { from, to } = s;
    const bend = s.kind === 'line' ? [0, 0, 0, 0] : [s.centre.x, s.centre.y, s.radius, s.sweep];
    numbers.set([from.x, from.y, to.x, to.y, ...bend], i * PER_SEGMENT);
  });
  return numbers;
};

/** A full circle as one segment. */
export const circleView = (x: number, y: number, radius: number, owner?: string): ChainView => ({
  closed: true,
  segments: Float64Array.of(x + radius, y, x + radius, y, x, y, radius, 2 * Math.PI),
  owner,
});

/** Corners joined by straight lines. */
export const polygonView = (points: readonly { readonly x: number; readonly y: number }[], closed: boolean, owner?: string): ChainView => {
  const ends = closed ? [...points, ...points.slice(0, 1)] : points;
  const numbers = new Float64Array(Math.max(0, ends.length - 1) * PER_SEGMENT);
  for (let i = 0; i + 1 < ends.length; i += 1) {
    const [a, b] = [ends[i] as { x: number; y: number }, ends[i + 1] as { x: number; y: number }];
    numbers.set([a.x, a.y, b.x, b.y], i * PER_SEGMENT);
  }
  return { closed, segments: numbers, owner };
};
