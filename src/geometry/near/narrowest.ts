/** The narrowest way through the inside of a contour: where two pieces that face each other come closest. */
import { aroundAt } from '../../sequence/sequence.ts';
import { boundsOfChain } from '../area.ts';
import type { Contour } from '../contour.ts';
import type { Side } from '../joints.ts';
import { insideOf, turnAt } from '../joints.ts';
import { boundsOf, endDirection, startDirection, tangentAt } from '../measure.ts';
import type { Point, Segment } from '../segment.ts';
import type { Closest } from './closest.ts';
import { closestBetween } from './closest.ts';
import { lookupOf, type Numbered, segmentsNear } from './lookup.ts';

/**
 * `gap`: a neck, or a narrow end between two corners. `no gap`: nothing faces nothing closer than the contour is wide, as
 * in a circle or a triangle; the corners and the roomiest place say all there is to say.
 */
export type Narrowest =
  | {
      readonly kind: 'gap';
      readonly distance: number;
      readonly from: Point;
      readonly to: Point;
      readonly segments: readonly [number, number];
    }
  | { readonly kind: 'no gap' };

/**
 * The smallest distance across the inside of a contour between pieces that are not neighbours. Only places count from which
 * the other piece cannot be come closer to by moving along the contour a little, so that the short way along a bend is no
 * gap; sharp corners count as ends of the pieces that face each other.
 *
 * @param across look across the inside, or across the outside: between the sides of a slot cut into the shape.
 * @param most mm: wider gaps are not looked for, which saves most of the work where a narrow one is known.
 */
export const narrowestGap = (contour: Contour, across: 'inside' | 'outside' = 'inside', most = Number.POSITIVE_INFINITY): Narrowest => {
  const side: Side = (insideOf(contour) === 'left') === (across === 'inside') ? 'left' : 'right';
  const lookup = lookupOf(contour);
  const b = boundsOfChain(contour);
  let reach = Math.min(most, Math.min(b.maxX - b.minX, b.maxY - b.minY) * (1 + 1e-9));
  let best: Narrowest = { kind: 'no gap' };
  contour.segments.forEach((segment, index) => {
    const one = { segment, index };
    for (const other of segmentsNear(lookup, boundsOf(segment), reach)) {
      if (other.index <= index + 1 || (index === 0 && other.index === contour.segments.length - 1)) continue;
      const closest = closestBetween(segment, other.segment, 0);
      if (closest.distance >= reach || !isGap(contour, one, other, closest, side)) continue;
      reach = closest.distance;
      best = { kind: 'gap', distance: closest.distance, from: closest.first.at, to: closest.second.at, segments: [index, other.index] };
    }
  });
  return best;
};

const isGap = (contour: Contour, one: Numbered, other: Numbered, closest: Closest, side: Side): boolean => {
  const { first, second, distance } = closest;
  if (distance === 0) return false;
  const x = (second.at.x - first.at.x) / distance;
  const y = (second.at.y - first.at.y) / distance;
  return opens(contour, one, first.share, { x, y }, side) && opens(contour, other, second.share, { x: -x, y: -y }, side);
};

/** The turn in rad from which a corner counts as sharp: 10 degrees. */
const SHARP = Math.PI / 18;
/** Cosine of the angle to the normal within which a piece faces a direction: 60 degrees. */
const FACING = 0.5;

/** Whether the way in a unit direction leaves the contour into the side looked across, and is locally the shortest. */
const opens = ({ segments }: Contour, { segment, index }: Numbered, share: number, way: Point, side: Side): boolean => {
  const facing = normalAlong(tangentAt(segment, share), way, side);
  if (share > 0 && share < 1) return facing > 0;
  const before = share === 0 ? aroundAt(segments, index - 1) : segment;
  const after = share === 0 ? segment : aroundAt(segments, index + 1);
  if (facing >= FACING && Math.abs(turnAt(before, after)) > SHARP) return true;
  return (
    isShortest(before, after, way) &&
    (normalAlong(endDirection(before), way, side) > 0 || normalAlong(startDirection(after), way, side) > 0)
  );
};

const normalAlong = (tangent: Point, way: Point, side: Side): number =>
  (tangent.x * way.y - tangent.y * way.x) * (side === 'left' ? 1 : -1);

/** Neither going on nor going back from the joint comes closer; level within rounding is allowed, as where a slot's end begins. */
const isShortest = (before: Segment, after: Segment, way: Point): boolean => {
  const on = startDirection(after);
  const back = endDirection(before);
  return on.x * way.x + on.y * way.y <= 1e-6 && back.x * way.x + back.y * way.y >= -1e-6;
};
