/** Random closed shapes of lines and arcs, half of them snapped to a grid so that exact coincidences are common. */

import { seeded } from '../../../test/seeded.ts';
import { there } from '../../../test/there.ts';
import type { Contour } from '../contour.ts';
import type { BulgedPoint } from '../example-shapes.fixture.ts';
import { polyline } from '../example-shapes.fixture.ts';

export interface RandomShape {
  readonly contour: Contour;
  /** mm, positive inwards for the counter-clockwise shapes made here. */
  readonly distance: number;
}

const QUARTER = Math.SQRT2 - 1;
const GRID_BULGES = [0, 0, 0, 1, -1, QUARTER, -QUARTER];
const GRID_DISTANCES = [0.5, 1, 1.5, 2, 0.25, Math.SQRT2];

/**
 * Corners on rays at random angles; on the grid they are rounded to whole mm, bulges are half and quarter circles, and
 * distances go in halves. Many of them cross themselves, which is for the offset to find.
 */
export const randomShape = (number: number): RandomShape => {
  const random = seeded(number + 1);
  const pick = <T>(list: readonly T[]): T => there(list[Math.floor(random() * list.length)]);
  const onGrid = number % 2 === 1;
  const count = 3 + Math.floor(random() * 12);
  const corners: BulgedPoint[] = [];
  for (let k = 0; k < count; k++) {
    const angle = (2 * Math.PI * (k + 0.8 * random())) / count;
    const radius = 2 + 8 * random();
    const x = radius * Math.cos(angle);
    const y = radius * Math.sin(angle);
    if (onGrid) corners.push({ x: Math.round(x), y: Math.round(y), bulge: pick(GRID_BULGES) });
    else corners.push({ x, y, bulge: random() < 0.3 ? 0 : 1.6 * (random() - 0.5) });
  }
  const size = onGrid ? pick(GRID_DISTANCES) : 0.05 + 3 * random() * random();
  const contour = polyline(
    corners.filter((c, k) => c.x !== there(corners[(k + 1) % count]).x || c.y !== there(corners[(k + 1) % count]).y),
  );
  return { contour, distance: random() < 0.6 ? size : -size };
};
