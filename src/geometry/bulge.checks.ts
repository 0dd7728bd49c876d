/** Bulges and arcs of polylines against the published reference of the drawing format. */
import type { CheckRow } from '../quantity/check.ts';
import { arcByDegrees, bulgeOf, fromBulge } from './bulge.ts';
import { lengthOf } from './measure.ts';
import type { Arc } from './segment.ts';
import { mirroring, transformSegment } from './transform.ts';

const bulged = (bulge: number): Arc => fromBulge({ x: 0, y: 0 }, { x: 10, y: 0 }, bulge) as Arc;
const bulgeOfDegrees = (degrees: number): number => bulgeOf(arcByDegrees({ x: 0, y: 0 }, 10, 0, degrees));
/** An arc of an object coordinate system whose z axis points down: x is turned over, and the arc runs clockwise. */
const seenFromBelow = transformSegment(mirroring(Math.PI / 2), arcByDegrees({ x: 0, y: 0 }, 10, 0, 30)) as Arc;

const row = (id: string, place: string, question: string, value: string, ours: () => number | string): CheckRow => ({
  id,
  source: 'dxf-reference',
  place,
  how: 'recomputed',
  question,
  value,
  ours,
});

export const checks: readonly CheckRow[] = [
  row('K-01a', 'polyline bulge', 'radius of bulge 1 over a chord of 10', '5.00000000000', () => bulged(1).radius),
  row('K-01b', 'polyline bulge', 'sweep of bulge 1, in half turns counter-clockwise', '1.00000000000', () => bulged(1).sweep / Math.PI),
  row('K-01c', 'polyline bulge', 'bulge 1 bulges to the right of the chord', 'yes', () =>
    bulged(1).centre.y === 0 && bulged(1).sweep > 0 ? 'yes' : 'no',
  ),
  row('K-02a', 'polyline bulge', 'bulge of a 90 degree arc', '0.41421356', () => bulgeOfDegrees(90)),
  row('K-02b', 'polyline bulge', 'bulge of a 60 degree arc', '0.26794919', () => bulgeOfDegrees(60)),
  row('K-02c', 'polyline bulge', 'bulge of a 270 degree arc', '2.41421356', () => bulgeOfDegrees(270)),
  row('K-03a', 'polyline bulge', 'radius of bulge -0.5 over a chord of 10', '6.25', () => bulged(-0.5).radius),
  row('K-03b', 'polyline bulge', 'sweep of bulge -0.5 in degrees', '-106.2602', () => (bulged(-0.5).sweep * 180) / Math.PI),
  row('K-03c', 'polyline bulge', 'length of the arc of bulge -0.5 over a chord of 10', '11.59119', () => lengthOf(bulged(-0.5))),
  row('K-05a', 'object coordinates', 'x of the end of an arc R 10, 0 to 30 degrees, seen from below', '-8.66025', () => seenFromBelow.to.x),
  row('K-05b', 'object coordinates', 'y of the end of that arc', '5.00000', () => seenFromBelow.to.y),
  row('K-05c', 'object coordinates', 'that arc runs clockwise', 'yes', () => (seenFromBelow.sweep < 0 ? 'yes' : 'no')),
];
