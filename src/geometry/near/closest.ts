/** The two places where two segments, or two chains, come closest. */

import type { Chain } from '../contour.ts';
import { intersect } from '../intersect.ts';
import { boundsOf, nearestOn, nearestShare, pointAt } from '../measure.ts';
import type { Arc, Line, Point, Segment } from '../segment.ts';
import { distanceBetween } from '../segment.ts';
import { lookupOf, segmentsNear } from './lookup.ts';

/** A place on each of two segments, by share. */
export interface Closest {
  readonly distance: number;
  readonly first: { readonly at: Point; readonly share: number };
  readonly second: { readonly at: Point; readonly share: number };
}

/**
 * The closest places of two segments. Where a whole stretch is equally close, as between parallel lines, its middle.
 *
 * @param within mm: segments that meet within this are 0 apart.
 */
export const closestBetween = (a: Segment, b: Segment, within: number): Closest => {
  const contact = intersect(a, b, within)[0];
  if (contact !== undefined) {
    const [first, second] = contact.kind === 'overlap' ? [contact.first[0], contact.second[0]] : [contact.first, contact.second];
    return { distance: 0, first: { at: pointAt(a, first), share: first }, second: { at: pointAt(b, second), share: second } };
  }
  const level = a.kind === 'line' && b.kind === 'line' ? middleOfParallels(a, b) : [];
  const tries = [...level, fromFirst(a, b, 0), fromFirst(a, b, 1), fromSecond(a, b, 0), fromSecond(a, b, 1), ...betweenArcs(a, b)];
  return tries.reduce((best, t) => (t.distance < best.distance ? t : best));
};

const pair = (a: Segment, first: number, b: Segment, second: number): Closest => {
  const p = pointAt(a, first);
  const q = pointAt(b, second);
  return { distance: distanceBetween(p, q), first: { at: p, share: first }, second: { at: q, share: second } };
};

const fromFirst = (a: Segment, b: Segment, share: number): Closest => pair(a, share, b, nearestShare(b, pointAt(a, share)));

const fromSecond = (a: Segment, b: Segment, share: number): Closest => pair(a, nearestShare(a, pointAt(b, share)), b, share);

/** Where at least one is an arc: the places on the common normal, through the centres, on the near and the far side. */
const betweenArcs = (a: Segment, b: Segment): Closest[] => {
  if (a.kind === 'line') return b.kind === 'line' ? [] : [pair(a, nearestShare(a, b.centre), b, nearestShare(b, footOf(a, b.centre)))];
  if (b.kind === 'line') return [pair(a, nearestShare(a, footOf(b, a.centre)), b, nearestShare(b, a.centre))];
  return [...towards(a, b.centre)].flatMap((first) => [...towards(b, a.centre)].map((second) => pair(a, first, b, second)));
};

const footOf = (line: Line, p: Point): Point => nearestOn(line, p).at;

/** Shares nearest to a point, and nearest to its mirror in the centre. */
const towards = (arc: Arc, p: Point): number[] => [
  nearestShare(arc, p),
  nearestShare(arc, { x: 2 * arc.centre.x - p.x, y: 2 * arc.centre.y - p.y }),
];

/** The middle of the stretch over which parallel lines face each other. */
const middleOfParallels = (a: Line, b: Line): Closest[] => {
  const x = a.to.x - a.from.x;
  const y = a.to.y - a.from.y;
  const square = x * x + y * y;
  const u = { x: b.to.x - b.from.x, y: b.to.y - b.from.y };
  if (Math.abs(x * u.y - y * u.x) > 1e-12 * Math.sqrt(square * (u.x * u.x + u.y * u.y))) return [];
  const along = (p: Point): number => ((p.x - a.from.x) * x + (p.y - a.from.y) * y) / square;
  const [s, t] = [along(b.from), along(b.to)];
  const low = Math.max(0, Math.min(s, t));
  const high = Math.min(1, Math.max(s, t));
  return low < high ? [fromFirst(a, b, (low + high) / 2)] : [];
};

/** The closest places of two chains with the numbers of their segments; 0 apart where they meet within the tolerance. */
export interface ClosestChains extends Closest {
  readonly segments: readonly [number, number];
}

/**
 * Where two chains come closest: only pairs whose boxes are nearer than the best pair so far are looked at.
 *
 * @param within mm: chains that meet within this are 0 apart.
 */
export const closestBetweenChains = (a: Chain, b: Chain, within: number): ClosestChains => {
  const lookup = lookupOf(b);
  let best: ClosestChains = { ...fromFirst(a.segments[0], b.segments[0], 0), segments: [0, 0] };
  a.segments.forEach((segment, i) => {
    const near = lookup.index.nearest(segment.from, 1);
    const reach = Math.min(best.distance, ...near.map((other) => fromFirst(segment, other.segment, 0).distance));
    for (const other of [...near, ...segmentsNear(lookup, boundsOf(segment), reach)]) {
      const closest = closestBetween(segment, other.segment, within);
      if (closest.distance < best.distance) best = { ...closest, segments: [i, other.index] };
    }
  });
  return best;
};
