/** The corner between two compensated moves: how the wire's centre gets from the one to the other. */
import { intersect } from '../../geometry/intersect.ts';
import type { Arc, Line, Point, Segment } from '../../geometry/segment.ts';
import { beside, type Compensation, type Element, ownEnd, ownStart } from './element.ts';
import { CORNER_SLACK, FARTHEST_INTERSECTION, TURNS_BACK } from './tolerance.ts';

/**
 * `joined`: the wire leaves the first element at `leave`, runs `extra`, and begins the second at `enter`.
 * `not entered`: an inside corner in which the two offset elements do not meet.
 */
export type CompensatedCorner =
  | { readonly kind: 'joined'; readonly leave: Point; readonly extra: readonly Segment[]; readonly enter: Point }
  | { readonly kind: 'not entered' }
  | { readonly kind: 'turns back' };

/** `start` is where the wire's centre begins the first element, its earlier corner already taken off. */
export const cornerBetween = (first: Element, start: Point, second: Element, compensation: Compensation): CompensatedCorner => {
  const u = first.endDirection;
  const v = second.startDirection;
  const turn = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
  if (compensation.offset === 0 || Math.abs(turn) <= first.noise + second.noise) return tangentCorner(first, second, compensation);
  if (Math.abs(turn) > Math.PI - TURNS_BACK) return { kind: 'turns back' };
  if (turn > 0 === compensation.signed > 0) return insideCorner(first, start, second, compensation);
  return outsideCorner(first, second, turn, compensation);
};

/**
 * A joint that turns by no more than rounding can make: one point beside it, along the mean of both normals, the element with
 * the better direction counting more.
 */
const tangentCorner = (first: Element, second: Element, { signed }: Compensation): CompensatedCorner => {
  const share = first.noise + second.noise > 0 ? second.noise / (first.noise + second.noise) : 0.5;
  const x = first.endDirection.x * share + second.startDirection.x * (1 - share);
  const y = first.endDirection.y * share + second.startDirection.y * (1 - share);
  const size = Math.hypot(x, y);
  const at = beside(second.programmed.from, { x: x / size, y: y / size }, signed);
  return { kind: 'joined', leave: at, extra: [], enter: at };
};

/** The offset elements overlap; the wire changes from one to the other where they cross, which has to be within both. */
const insideCorner = (first: Element, start: Point, second: Element, compensation: Compensation): CompensatedCorner => {
  const { signed, digit } = compensation;
  const slack = CORNER_SLACK * digit;
  const a = offsetSegment(first, start, ownEnd(first, signed));
  const b = offsetSegment(second, ownStart(second, signed), ownEnd(second, signed));
  const corner = second.programmed.from;
  let nearest = Number.POSITIVE_INFINITY;
  let at = corner;
  for (const contact of intersect(a, b, slack)) {
    const meeting = contact.kind === 'overlap' ? contact.from : contact.at;
    const distance = Math.hypot(meeting.x - corner.x, meeting.y - corner.y);
    if (distance < nearest) {
      nearest = distance;
      at = meeting;
    }
  }
  return nearest === Number.POSITIVE_INFINITY ? { kind: 'not entered' } : { kind: 'joined', leave: at, extra: [], enter: at };
};

/** The offset element as a segment; one that has shrunk to a point is a line of no length. */
const offsetSegment = (element: Element, from: Point, to: Point): Segment => {
  const { programmed, pathRadius } = element;
  if (programmed.kind === 'line' || pathRadius === 0) return { kind: 'line', from, to };
  const { centre, sweep } = programmed;
  const ux = from.x - centre.x;
  const uy = from.y - centre.y;
  const vx = to.x - centre.x;
  const vy = to.y - centre.y;
  const turn = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
  const way = Math.sign(sweep);
  // A start that its corner has moved past the end leaves an arc of hardly any sweep, not a full turn.
  const travel = turn * way >= -1e-3 ? Math.max(turn * way, 1e-12) : turn * way + 2 * Math.PI;
  return { kind: 'arc', from, to, centre, radius: pathRadius, sweep: way * Math.min(travel, Math.max(Math.abs(sweep), 1e-12)) };
};

/** The offset elements are apart: an arc about the corner, or both run on straight until they meet. */
const outsideCorner = (first: Element, second: Element, turn: number, compensation: Compensation): CompensatedCorner => {
  const { signed, offset, outsideCorners } = compensation;
  const leave = ownEnd(first, signed);
  const enter = ownStart(second, signed);
  const stretch = 1 / Math.cos(turn / 2);
  if (outsideCorners === 'intersection' && stretch <= FARTHEST_INTERSECTION) {
    return runningOn([first, leave], [second, enter], Math.abs(signed) * Math.tan(Math.abs(turn) / 2));
  }
  const centre = second.programmed.from;
  const arc: Arc = { kind: 'arc', from: leave, to: enter, centre, radius: offset, sweep: turn };
  return { kind: 'joined', leave, extra: [arc], enter };
};

/** Straight on by `reach` to where both parallels meet. */
const runningOn = (
  [first, leave]: readonly [Element, Point],
  [second, enter]: readonly [Element, Point],
  reach: number,
): CompensatedCorner => {
  const meet = { x: leave.x + first.endDirection.x * reach, y: leave.y + first.endDirection.y * reach };
  const extra: Line[] = [];
  if (first.programmed.kind === 'arc') extra.push({ kind: 'line', from: leave, to: meet });
  if (second.programmed.kind === 'arc') extra.push({ kind: 'line', from: meet, to: enter });
  return {
    kind: 'joined',
    leave: first.programmed.kind === 'arc' ? leave : meet,
    extra,
    enter: second.programmed.kind === 'arc' ? enter : meet,
  };
};
