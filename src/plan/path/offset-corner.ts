/** How the wire centre gets from one offset piece to the next, in the ways controls do it. */
import { endDirection, startDirection } from '../../geometry/measure.ts';
import type { Arc, Point, Segment } from '../../geometry/segment.ts';
import { midpoint } from '../../geometry/segment.ts';

export interface CornerOptions {
  readonly side: 1 | -1;
  readonly offset: number;
  readonly outsideCorners: 'arc' | 'intersection';
  /** Rad by which the programmed contour turns here, positive to the left. */
  readonly turn: number;
  /** mm between the ends of the two offset pieces. */
  readonly apart: number;
}

export interface OffsetCorner {
  /** Where the piece before ends and the one after begins. */
  readonly leave: Point;
  readonly enter: Point;
  readonly beside: readonly Segment[];
}

/** Ends nearer than this (mm) are one point: far below what any control resolves. */
const JOIN = 2e-6;

/** Meetings further from the corner than this many offsets are given up for an arc, as a careful control does. */
export const POINTED = 2;

export const cornerOf = (before: Segment, after: Segment, corner: Point, options: CornerOptions): OffsetCorner => {
  const { side, offset, outsideCorners, turn, apart } = options;
  if (apart <= JOIN) return { leave: after.from, enter: after.from, beside: [] };
  if (turn * side > 0) {
    // The contour was opened: what turns towards the wire here is the noise of fitted curves.
    const at = before.kind === 'line' && after.kind === 'line' ? crossing(before, after) : midpoint(before.to, after.from);
    return { leave: at, enter: at, beside: [] };
  }
  if (outsideCorners === 'intersection' && 1 / Math.cos(turn / 2) <= POINTED) return runningOn(before, after, options);
  const round: Arc = { kind: 'arc', from: before.to, to: after.from, centre: corner, radius: offset, sweep: turn };
  return { leave: before.to, enter: after.from, beside: [round] };
};

/** Both run on straight until they meet; a line simply gets longer, an arc is followed by a line of its own. */
const runningOn = (before: Segment, after: Segment, { offset, turn }: CornerOptions): OffsetCorner => {
  const along = endDirection(before);
  const reach = offset * Math.tan(Math.abs(turn) / 2);
  const at = { x: before.to.x + along.x * reach, y: before.to.y + along.y * reach };
  const beside: Segment[] = [];
  if (before.kind === 'arc') beside.push({ kind: 'line', from: before.to, to: at });
  if (after.kind === 'arc') beside.push({ kind: 'line', from: at, to: after.from });
  return { leave: before.kind === 'arc' ? before.to : at, enter: after.kind === 'arc' ? after.from : at, beside };
};

/** Where two lines, carried on or cut short, cross. */
const crossing = (before: Segment, after: Segment): Point => {
  const u = endDirection(before);
  const v = startDirection(after);
  const cross = u.x * v.y - u.y * v.x;
  if (Math.abs(cross) < 1e-12) return midpoint(before.to, after.from);
  const ahead = ((after.from.x - before.to.x) * v.y - (after.from.y - before.to.y) * v.x) / cross;
  return { x: before.to.x + u.x * ahead, y: before.to.y + u.y * ahead };
};
