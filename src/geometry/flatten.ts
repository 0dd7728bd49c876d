/** Chains as points, for pictures and for libraries that know only polygons. Arcs become inscribed chords. */
import { lastOf } from '../sequence/sequence.ts';
import type { Chain } from './contour.ts';
import { pointAt } from './measure.ts';
import type { Arc, Point } from './segment.ts';

/**
 * Points along a chain, none farther than `chordError` mm from the line between its neighbours. The points lie on the
 * arcs, so a convex shape comes out a little too small. A closed chain does not repeat its first point, an open one ends
 * with its last.
 */
export const flatten = (chain: Chain, chordError: number): readonly Point[] => {
  if (!(chordError > 0)) throw new RangeError(`a chord error is above 0 mm, not ${chordError}`);
  const points: Point[] = [];
  for (const s of chain.segments) {
    points.push(s.from);
    if (s.kind === 'line') continue;
    const chords = chordsFor(s, chordError);
    for (let i = 1; i < chords; i += 1) points.push(pointAt(s, i / chords));
  }
  if (!chain.closed) points.push(lastOf(chain.segments).to);
  return points;
};

/** A chord over the angle φ is r (1 - cos φ/2) off; at least three for a full circle, at most a million. */
export const chordsFor = (arc: Arc, chordError: number): number => {
  const step = 4 * Math.asin(Math.sqrt(Math.min(1, chordError / (2 * arc.radius))));
  const least = Math.abs(arc.sweep) > 6 ? 3 : 1;
  return Math.min(Math.max(Math.ceil(Math.abs(arc.sweep) / step), least), 1_000_000);
};
