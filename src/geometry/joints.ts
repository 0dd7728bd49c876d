/** The joints of a chain: smooth or sharp, and which of them a disc rolling along one side cannot reach into. */
import { turnBetween } from './angle.ts';
import { areaOf } from './area.ts';
import { type Chain, type Contour, segmentAt } from './contour.ts';
import { endDirection, pointAt, startDirection } from './measure.ts';
import type { Point, Segment } from './segment.ts';

/** Left or right of travel. */
export type Side = 'left' | 'right';

/**
 * `tangent`: no turn. `inside corner`: the chain turns towards the side looked from, so that less than half a turn is open
 * there. `outside corner`: it turns away. `reversal`: it goes straight back. `end`: an open chain begins or ends here.
 */
export interface ChainJoint {
  readonly kind: 'tangent' | 'inside corner' | 'outside corner' | 'reversal' | 'end';
  readonly at: Point;
  /** Signed turn of the direction of travel in rad, positive to the left; 0 at an end. */
  readonly turn: number;
  /** The angle open on the side looked from, rad: pi where tangent, pi/2 in the corner of a square seen from its inside. */
  readonly opening: number;
}

/**
 * The joint at the start of a segment; for an open chain the number of segments asks for its end.
 *
 * @param within rad: turns up to this are tangent. Joints of drawings are rounded to some 1e-6.
 */
export const cornerAt = (chain: Chain, segment: number, side: Side, within: number): ChainJoint => {
  const before = segmentAt(chain, segment - 1);
  const after = segmentAt(chain, segment);
  if (before === undefined || after === undefined) {
    const at = before?.to ?? after?.from;
    if (at === undefined) throw new RangeError(`the chain has ${chain.segments.length} segments, none meets joint ${segment}`);
    return { kind: 'end', at, turn: 0, opening: Math.PI };
  }
  const turn = turnAt(before, after);
  const towards = side === 'left' ? turn : -turn;
  return { kind: kindOf(towards, within), at: after.from, turn, opening: Math.PI - towards };
};

/** Signed turn in rad from the end of one segment to the start of the next. */
export const turnAt = (before: Segment, after: Segment): number => {
  const u = endDirection(before);
  const v = startDirection(after);
  return turnBetween(u.x, u.y, v.x, v.y);
};

const kindOf = (towards: number, within: number): ChainJoint['kind'] => {
  if (Math.abs(towards) <= within) return 'tangent';
  if (Math.abs(towards) >= Math.PI - within) return 'reversal';
  return towards > 0 ? 'inside corner' : 'outside corner';
};

/** The side of travel on which the inside of a contour lies. */
export const insideOf = (contour: Contour): Side => (areaOf(contour) >= 0 ? 'left' : 'right');

/** A place that a disc on the removed side fits into only up to `radius`: a sharp corner (0) or a concave arc (its radius). */
export interface InsideCorner {
  readonly kind: 'sharp' | 'round';
  readonly at: Point;
  readonly radius: number;
  /** How far the chain turns here, rad, always positive. A small turn of a sharp corner hides little behind a disc. */
  readonly turn: number;
  /** The concave arc, or the segment that begins at the sharp corner. */
  readonly segment: number;
}

/**
 * All sharp inside corners and all concave arcs as seen from the removed side, along the contour. Arcs of one circle that
 * follow each other are listed apart; `simplify` joins them.
 *
 * @param removed which side of the contour is taken away, relative to the contour itself.
 * @param within rad: turns up to this are no corners.
 */
export const insideCorners = (contour: Contour, removed: 'inside' | 'outside', within = 1e-6): readonly InsideCorner[] => {
  const side: Side = (insideOf(contour) === 'left') === (removed === 'inside') ? 'left' : 'right';
  return contour.segments.flatMap((s, i) => {
    const found: InsideCorner[] = [];
    const corner = cornerAt(contour, i, side, within);
    const sharp = corner.kind === 'inside corner' || corner.kind === 'reversal';
    if (sharp) found.push({ kind: 'sharp', at: corner.at, radius: 0, turn: Math.abs(corner.turn), segment: i });
    if (s.kind === 'arc' && s.sweep > 0 === (side === 'left'))
      found.push({ kind: 'round', at: pointAt(s, 0.5), radius: s.radius, turn: Math.abs(s.sweep), segment: i });
    return found;
  });
};
