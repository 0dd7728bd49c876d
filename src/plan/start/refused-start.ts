/** Entries at which the proof refused an earlier plan: the next one begins elsewhere. */
import { perimeterOf } from '../../geometry/area.ts';
import { distanceBetween, type Point } from '../../geometry/segment.ts';
import type { WayAsked } from '../question.ts';
import type { LikeLoops } from '../same-shape.ts';

/** mm between an entry and one that was refused, at least; and share of the contour, where that is more. */
const APART = 2;
const SHARE = 1 / 12;

/** Whether an entry of the first of some like loops lies too near to one that was refused of any of them. */
export const isRefused = ({ first, members }: LikeLoops, { refused = {} }: WayAsked): ((entry: Point) => boolean) => {
  const places = members.flatMap(({ loop, by }) => (refused[loop.loop.id] ?? []).map((p) => ({ x: p.x - by.x, y: p.y - by.y })));
  if (places.length === 0) return () => false;
  const apart = Math.max(APART, SHARE * perimeterOf(first.loop.loop.contour));
  return (entry) => places.some((p) => distanceBetween(p, entry) < apart);
};
