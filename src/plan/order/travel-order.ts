/** The order of openings with little travel. */
import type { Point } from '../../geometry/segment.ts';
import { shortTour } from './tour.ts';

/**
 * Numbers of the points in the order in which they are visited, each once. With `start` the way begins there, which counts
 * as travel; without it at whichever end is best.
 */
export const travelOrder = (points: readonly Point[], start?: Point): readonly number[] => shortTour(points, start).order;
