/** Starts in a pocket of a part: what the tab hangs on there is the metal in the pocket, which a neck may hold by a thread. */
import { boundsOfChain } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { intersect } from '../../geometry/intersect.ts';
import { line, point } from '../../geometry/segment.ts';
import type { EntryPlace } from './entry-places.ts';

/** mm to either side of the way out that must be open too: a strip of twice that holds a part. Common practice, no source. */
const BESIDE = 2;
/** mm by which the way begins off the contour, so that the contour itself is not met. */
const OFF = 0.01;
const WITHIN = 1e-6;

/** Whether the part itself stands in the way straight out from an entry. */
export const isInPocket = ({ at, along, aside }: Pick<EntryPlace, 'at' | 'along' | 'aside'>, contour: Contour): boolean => {
  const b = boundsOfChain(contour);
  const far = b.maxX - b.minX + b.maxY - b.minY;
  return [0, BESIDE, -BESIDE].some((beside) => {
    const x = at.x + along.x * beside + aside.x * OFF;
    const y = at.y + along.y * beside + aside.y * OFF;
    const way = line(point(x, y), point(x + aside.x * far, y + aside.y * far));
    return contour.segments.some((s) => intersect(way, s, WITHIN).length > 0);
  });
};
