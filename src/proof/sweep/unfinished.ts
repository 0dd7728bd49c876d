/** Which faces the last pass did not reach: the size may be right there, and the finish is that of an earlier pass. */
import { perimeterOf } from '../../geometry/area.ts';
import { distanceToSegment, lengthOf, pointAt } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { SAME_ENERGY } from './energies.ts';
import type { GroupWork, WorkCut } from './group-alone.ts';

/** Places along a contour stand this far apart, mm, and there are so many at most. */
const SPACING = 0.5;
const MOST_PLACES = 400;

export interface Unfinished {
  readonly at: Point;
  /** mm of the contour. */
  readonly length: number;
  /** The cut that was the last there. */
  readonly cut: number;
}

/** Where a contour was cut last by another pass than the last one; by wanted contour. */
export const unfinishedOf = (work: GroupWork): readonly (Unfinished | undefined)[] =>
  work.wanted.map(({ contour }) => {
    const spacing = Math.max(SPACING, perimeterOf(contour) / MOST_PLACES);
    let found: Unfinished | undefined;
    for (const s of contour.segments) {
      const steps = Math.max(1, Math.round(lengthOf(s) / spacing));
      for (let i = 0; i < steps; i += 1) {
        const at = pointAt(s, (i + 0.5) / steps);
        const cut = lastCutAt(work, at);
        if (cut === undefined || itemAt(work.cuts, cut).radius <= work.energies.last + SAME_ENERGY) continue;
        found = { at: found?.at ?? at, length: (found?.length ?? 0) + lengthOf(s) / steps, cut: found?.cut ?? cut };
      }
    }
    return found;
  });

const lastCutAt = ({ cuts, tolerance }: GroupWork, at: Point): number | undefined => {
  for (let c = cuts.length - 1; c >= 0; c -= 1) if (reaches(itemAt(cuts, c), at, tolerance)) return c;
  return undefined;
};

const reaches = ({ segment, radius }: WorkCut, at: Point, tolerance: number): boolean => {
  const reach = radius + tolerance;
  const { from, to } = segment;
  const more = segment.kind === 'arc' ? 2 * segment.radius + reach : reach;
  if (at.x < Math.min(from.x, to.x) - more || at.x > Math.max(from.x, to.x) + more) return false;
  if (at.y < Math.min(from.y, to.y) - more || at.y > Math.max(from.y, to.y) + more) return false;
  return distanceToSegment(segment, at) <= reach;
};
