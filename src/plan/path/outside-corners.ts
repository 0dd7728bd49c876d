/**
 * Sharp outside corners, and the way the wire goes round them: as the control does it, or out and back by a small loop in the waste,
 * so that the wire has straightened out before it comes to the next side.
 */

import { turnBetween } from '../../geometry/angle.ts';
import type { Contour } from '../../geometry/contour.ts';
import { distanceToSegment, endDirection, startDirection } from '../../geometry/measure.ts';
import { type Lookup, segmentsNear } from '../../geometry/near/lookup.ts';
import type { Arc, Line, Point } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { roundPairs } from '../../sequence/sequence.ts';
import type { Kept } from '../plan.ts';

export interface OutsideCorner {
  readonly at: Point;
  /** Rad by which the contour turns away from the wire, always positive. */
  readonly turn: number;
}

/** Turns below this (rad) are the noise of fitted curves and no corners. */
const NOISE = 0.05;

/** Contour counter-clockwise. */
export const outsideCorners = (contour: Contour, kept: Kept): readonly OutsideCorner[] => {
  const away = kept === 'die' ? -1 : 1;
  return roundPairs(contour.segments).flatMap(([segment, next]) => {
    const turn = away * turnOf(endDirection(segment), startDirection(next));
    return turn > NOISE ? [{ at: segment.to, turn }] : [];
  });
};

const turnOf = (u: Point, v: Point): number => turnBetween(u.x, u.y, v.x, v.y);

/** Corners that turn by less (rad, 30°) need no loop; at sharper points than this (140°) it would reach far into the waste. */
const LEAST_TURN = Math.PI / 6;
const MOST_TURN = (Math.PI * 7) / 9;

/**
 * Radius of the programmed loop, mm: the wire's centre runs a circle small enough to leave no core standing in it, and large enough
 * that a control goes round it with compensation on.
 *
 * @param offset of the rough cut, mm. @param halfKerf of the rough cut, mm.
 */
export const loopRadius = (offset: number, halfKerf: number): number => offset + 0.6 * halfKerf;

/** Corners that are gone round by a loop, which must keep its distance from all metal that stays; and those left to the control. */
export const cornersToLoop = (
  corners: readonly OutsideCorner[],
  contour: Contour,
  clear: Lookup,
  { radius, halfKerf }: { readonly radius: number; readonly halfKerf: number },
): { readonly looped: readonly OutsideCorner[]; readonly left: readonly OutsideCorner[] } => {
  const looped: OutsideCorner[] = [];
  const left: OutsideCorner[] = [];
  for (const corner of corners) {
    const fits =
      corner.turn >= LEAST_TURN && corner.turn <= MOST_TURN && hasRoom(corner, contour, clear, radius, radius + 2 * halfKerf + ROOM);
    (fits ? looped : left).push(corner);
  }
  return { looped, left };
};

/** Besides its own two sides nothing may come so near that the kerfs of both run together and cut the waste through. */
const hasRoom = ({ at }: OutsideCorner, contour: Contour, clear: Lookup, radius: number, need: number): boolean => {
  const joint = contour.segments.findIndex((s) => distanceBetween(s.to, at) < SAME);
  const before = contour.segments[joint];
  const after = contour.segments[(joint + 1) % contour.segments.length];
  if (before === undefined || after === undefined) return false;
  const { centre } = loopAt(at, endDirection(before), startDirection(after), radius).round;
  const box = { minX: centre.x, minY: centre.y, maxX: centre.x, maxY: centre.y };
  return segmentsNear(clear, box, need).every(({ segment: near }) => {
    const own = distanceBetween(near.from, at) < SAME || distanceBetween(near.to, at) < SAME;
    return distanceToSegment(near, centre) >= (own ? radius : need);
  });
};

/** mm of waste that stays between the loop and the next kerf. */
const ROOM = 0.05;

/** mm within which two places are one corner. */
const SAME = 1e-6;

export interface Loop {
  readonly out: Line;
  readonly round: Arc;
  readonly back: Line;
}

/** Straight on beyond the corner, round the long way, and back to the corner in the direction in which the contour goes on. */
export const loopAt = (corner: Point, along: Point, onward: Point, radius: number): Loop => {
  const turn = turnOf(along, onward);
  const reach = radius * Math.tan(Math.abs(turn) / 2);
  const out = { x: corner.x + along.x * reach, y: corner.y + along.y * reach };
  const back = { x: corner.x - onward.x * reach, y: corner.y - onward.y * reach };
  // A contour that turns left is gone round by a loop to the right, and the other way about.
  const sense = turn > 0 ? -1 : 1;
  const centre = { x: out.x - sense * along.y * radius, y: out.y + sense * along.x * radius };
  const sweep = sense * (2 * Math.PI - Math.abs(turn));
  return {
    out: { kind: 'line', from: corner, to: out },
    round: { kind: 'arc', from: out, to: back, centre, radius, sweep },
    back: { kind: 'line', from: back, to: corner },
  };
};
