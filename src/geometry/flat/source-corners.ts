/**
 * What becomes of a corner of the source when both its sides are shifted: a joint, a bridge, or two loose ends. It runs over long arrays
 * of plain numbers: `!` stands where one of those is read.
 */
import type { Curves } from './curves.ts';
import { bendOf, endDirection, startDirection } from './curves.ts';

/**
 * `loose`: the sides run into each other and their ends lie too near the source; `joint`: they meet as they are; `arc` and
 * `reach`: the gap between them is bridged.
 */
export const LOOSE_ENDS = 0;
export const JOINT = 1;
export const ARC_BRIDGE = 2;
export const REACH_BRIDGE = 3;

/** One corner, reused from corner to corner: its kind, the two directions of travel, and how far it turns to the left. */
export interface SourceCorner {
  kind: number;
  /** Unit directions: before the corner (x, y), after it (x, y). */
  readonly directions: Float64Array;
  /** rad, -pi to pi. */
  turn: number;
}

export const newCorner = (): SourceCorner => ({ kind: LOOSE_ENDS, directions: new Float64Array(4), turn: 0 });

/** Rad: sides that turn by less than this from a full reversal are told apart by how they bend. */
const REVERSAL = 1e-7;

/** mm: ends of shifted sides that part by less than this are drawn together in their middle, see `isJoint`. */
const JOINT_GAP = 1e-6;

/** mm: how far that middle may lie off the true curve. */
const JOINT_ERROR = 1e-10;

/** Fills in directions and turn at the corner from curve i to curve j of the source. */
export const measureCorner = (curves: Curves, i: number, j: number, halfTurn: number, corner: SourceCorner): void => {
  const u = corner.directions;
  endDirection(curves, i, u, 0);
  startDirection(curves, j, u, 2);
  const cross = u[0]! * u[3]! - u[1]! * u[2]!;
  const dot = u[0]! * u[2]! + u[1]! * u[3]!;
  corner.turn = Math.atan2(cross, dot);
  if (dot < 0 && Math.abs(cross) < REVERSAL)
    corner.turn = reversal(bendOf(curves, i) + bendOf(curves, j), halfTurn, cross) * Math.abs(corner.turn);
};

/**
 * At a cusp the sides leave in the same direction, and rounding alone would decide between a turn to the left and one to
 * the right. When both bend to the right on the whole, the narrow wedge between them lies on the left of travel: the turn
 * is to the left. Straight sides need telling, or their own tiny angle does.
 */
const reversal = (bends: number, halfTurn: number, cross: number): number => {
  if (Math.abs(bends) > 1e-12) return bends < 0 ? 1 : -1;
  if (halfTurn !== 0) return halfTurn;
  return cross > 0 ? 1 : -1;
};

/**
 * Whether the shifted sides of a nearly smooth corner may be joined where their tangents meet. A crossing at so small an
 * angle cannot be placed well by arithmetic, and a bridge as short is nothing; the tangents' meeting lies off both curves by
 * less than `JOINT_ERROR`. Sides shorter than the gap are left to the general rule: they are used up.
 */
export const isJoint = (turn: number, distance: number, shortest: number): boolean => {
  const angle = Math.abs(turn);
  const gap = angle * distance;
  return gap < JOINT_GAP && angle < 0.02 && gap * angle < 8 * JOINT_ERROR && 1.2 * gap < shortest;
};
