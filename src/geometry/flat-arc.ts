/** Arcs so nearly straight that their centres are far away: chords of them, found by their rise and not from the centre. */
import type { Arc, Point } from './segment.ts';

/** How far an arc rises over its chord, mm; good where it is hardly bent. */
export const riseOf = ({ radius, sweep }: Arc): number => (radius * sweep * sweep) / 8;

/** How many equal chords an arc needs, so that it rises by no more than `most` mm over each. */
export const chordCount = (arc: Arc, most: number): number => Math.max(1, Math.ceil(Math.sqrt(riseOf(arc) / most)));

/** The place at a share of a hardly bent arc. One that turns left lies to the right of its chord, in the middle by an eighth of its sweep. */
export const beside = (from: Point, to: Point, sweep: number, share: number): Point => {
  const aside = (share * (1 - share) * sweep) / 2;
  return {
    x: from.x + share * (to.x - from.x) + aside * (to.y - from.y),
    y: from.y + share * (to.y - from.y) - aside * (to.x - from.x),
  };
};
