/** What a wire that keeps a given distance leaves of an open line: inside corners rounded; none where it cannot follow all of it. */

import { turnBetween } from '../../geometry/angle.ts';
import { type Path, path } from '../../geometry/contour.ts';
import { endDirection, startDirection } from '../../geometry/measure.ts';
import { offsetPath } from '../../geometry/offset/offset-path.ts';
import { distanceBetween, type Point, type Segment } from '../../geometry/segment.ts';
import { itemAt, lastOf } from '../../sequence/sequence.ts';
import type { NotFollowed } from './not-followed.ts';

export type OpenedPath =
  | { readonly kind: 'whole'; readonly path: Path }
  /** The wire cannot get into all of it, or the line comes too near to itself. */
  | { readonly kind: 'parts'; readonly at: Point }
  | { readonly kind: 'unsound'; readonly why: NotFollowed; readonly at: Point };

/** mm within which ends meet. */
const SAME = 1e-6;

/**
 * The line offset to the wire's side and back: exact, since a parallel of a parallel never runs into itself on the way back.
 *
 * @param side 1 where the wire runs left of the line, -1 where right. @param distance mm.
 */
export const openedPath = (line: Path, side: 1 | -1, distance: number): OpenedPath => {
  const outcome = offsetPath(line, side * distance);
  const [first, last] = [line.segments[0], lastOf(line.segments)];
  if (outcome.kind === 'self-crossing') return { kind: 'unsound', why: 'crosses or touches itself', at: outcome.places[0].at };
  if (outcome.kind === 'unsound') return { kind: 'unsound', why: outcome.what, at: outcome.at };
  const only = outcome.kind === 'offset' && outcome.paths.length === 1 ? outcome.paths[0] : undefined;
  if (only === undefined) return { kind: 'parts', at: first.from };
  const [start, end] = [beside(first.from, startDirection(first), side * distance), beside(last.to, endDirection(last), side * distance)];
  if (distanceBetween(only.segments[0].from, start) > SAME) return { kind: 'parts', at: first.from };
  if (distanceBetween(lastOf(only.segments).to, end) > SAME) return { kind: 'parts', at: last.to };
  return { kind: 'whole', path: back(only, side, distance) };
};

const beside = (p: Point, along: Point, left: number): Point => ({ x: p.x - along.y * left, y: p.y + along.x * left });

/** Each piece moved back; where the wire turned in a hollow corner stands a round of the distance, and arcs about a corner become the corner. */
const back = (centre: Path, side: 1 | -1, distance: number): Path => {
  const pieces = centre.segments.flatMap((s): { readonly centre: Segment; readonly moved: Segment }[] => {
    const moved = movedBack(s, side * distance);
    return moved === undefined ? [] : [{ centre: s, moved }];
  });
  const segments: Segment[] = [];
  pieces.forEach(({ centre: c, moved }, i) => {
    const before = segments.at(-1);
    if (before !== undefined) {
      const joint = c.from;
      const turn = turnAt(itemAt(pieces, i - 1).centre, c);
      if (side * turn > 0 && distanceBetween(before.to, moved.from) > SAME)
        segments.push({ kind: 'arc', from: before.to, to: moved.from, centre: joint, radius: distance, sweep: turn });
    }
    segments.push({ ...moved, from: segments.at(-1)?.to ?? moved.from });
  });
  return path(segments);
};

const turnAt = (before: Segment, after: Segment): number => {
  const [u, v] = [endDirection(before), startDirection(after)];
  return turnBetween(u.x, u.y, v.x, v.y);
};

/** None for an arc that shrinks to its centre. */
const movedBack = (s: Segment, left: number): Segment | undefined => {
  const ends = { from: beside(s.from, startDirection(s), -left), to: beside(s.to, endDirection(s), -left) };
  if (s.kind === 'line') return { kind: 'line', ...ends };
  const radius = s.radius + Math.sign(s.sweep) * left;
  return radius < SAME ? undefined : { kind: 'arc', ...ends, centre: s.centre, radius, sweep: s.sweep };
};
