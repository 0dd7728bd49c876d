/** What a DIMENSION measures between its own points, and what it says of that. */

import type { DrawnDimension } from '../dimensions.ts';
import { pointOf } from './entity-curves.ts';
import type { Fields } from './fields.ts';

/** None where it gives no length: angles, ordinates, and those without points. `ofStyle` is the factor of its style. */
export const dimensionOf = (f: Fields, ofStyle: number): DrawnDimension | undefined => {
  const factor = ofStyle >= 1 / LARGEST_SCALE && ofStyle <= LARGEST_SCALE ? ofStyle : 1;
  const drawn = drawnLength(f);
  if (drawn === undefined || !(drawn > 0) || f.bad !== undefined) return undefined;
  const { x, y } = pointOf(f, f.has(13) ? 13 : 10);
  const { text: written } = f;
  const own = written.trim();
  if (own !== '' && !own.includes('<>')) return { drawn, said: own, at: { x, y } };
  if (own !== '' || !(f.get(42, 0) > 0)) return { drawn, said: asWritten(drawn * factor), at: { x, y } };
  return { drawn, said: asWritten(f.get(42, 0) * factor), at: { x, y } };
};

const asWritten = (value: number): string => String(Math.round(value * 1e4) / 1e4);

const drawnLength = (f: Fields): number | undefined => {
  const kind = f.get(70, 0) & 7;
  if ((kind === ROTATED || kind === ALIGNED) && f.has(13) && f.has(14)) {
    const [from, to] = [pointOf(f, 13), pointOf(f, 14)];
    if (kind === ALIGNED) return Math.hypot(to.x - from.x, to.y - from.y);
    const angle = (f.get(50, 0) * Math.PI) / 180;
    return Math.abs((to.x - from.x) * Math.cos(angle) + (to.y - from.y) * Math.sin(angle));
  }
  if ((kind !== DIAMETER && kind !== RADIUS) || !f.has(15)) return undefined;
  const [from, to] = [pointOf(f, 10), pointOf(f, 15)];
  return Math.hypot(to.x - from.x, to.y - from.y);
};

/** A hundred is the factor of plans of buildings, and stands unmeant in the usual styles of some programs. */
const LARGEST_SCALE = 50;

/** Group 70. */
const ROTATED = 0;
const ALIGNED = 1;
const DIAMETER = 3;
const RADIUS = 4;
