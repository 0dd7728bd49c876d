/** The metal that area alone would allow on a plate: what no layout of the pieces can be above. */
import { areaOf, regionAreaOf } from '../../geometry/area.ts';
import type { Prepared } from '../prepared.ts';
import type { PlateGround } from './ground.ts';

/**
 * mm² of metal. Grown pieces do not overlap and lie inside the free contours beside the zones, so their areas add up to the free area at most;
 * filled with the pieces that have most metal for their room first, the last of them in part, the sum of metal is the largest.
 */
export const areaBound = ({ free, kinds }: Prepared, { blockedArea }: PlateGround): number => {
  let room = free.reduce((sum, c) => sum + Math.abs(areaOf(c)), 0) - blockedArea;
  let metal = 0;
  const dense = kinds.map(({ area, grown, quantity }) => ({ area, quantity, needs: regionAreaOf(grown) }));
  for (const { area, quantity, needs } of dense.toSorted((a, b) => b.area / b.needs - a.area / a.needs)) {
    const count = Math.min(quantity, room / needs);
    metal += count * area;
    room -= count * needs;
  }
  return metal;
};
