/** Sorts loops that do not cross into regions: each hole goes to the outer contour that it lies in. */
import { areaOf } from '../area.ts';
import type { Contour, Region } from '../contour.ts';
import { windingIn } from '../near/inside.ts';
import type { Lookup } from '../near/lookup.ts';
import { lookupOf } from '../near/lookup.ts';
import type { Point } from '../segment.ts';

/** Regions, largest outer contour first; nothing when a hole lies in none of them. Outer contours run counter-clockwise. */
export const holesToOuters = (contours: readonly Contour[]): readonly Region[] | 'hole outside' => {
  const sized = contours.map((contour) => ({ contour, area: areaOf(contour) })).sort((a, b) => b.area - a.area);
  const outers = sized.filter((s) => s.area > 0).map((s) => ({ contour: s.contour, holes: [] as Contour[], lookup: lookupOf(s.contour) }));
  const holes = sized.filter((s) => s.area < 0);
  // Smallest first, so that a hole lands in the innermost of nested outer contours.
  const inward = outers.toReversed();
  for (const hole of holes) {
    const place = hole.contour.segments[0].from;
    const home = outers.length === 1 ? outers[0] : inward.find((outer) => isIn(outer.lookup, place));
    if (!home) return 'hole outside';
    home.holes.push(hole.contour);
  }
  return outers.map(({ contour, holes: inside }) => ({ outer: contour, holes: inside }));
};

const isIn = (lookup: Lookup, p: Point): boolean => {
  const { minX, minY, maxX, maxY } = lookup.bounds;
  return p.x >= minX && p.x <= maxX && p.y >= minY && p.y <= maxY && windingIn(lookup, p) !== 0;
};
