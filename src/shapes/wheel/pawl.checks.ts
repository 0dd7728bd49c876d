/** Which way a pawl is pushed, as books on mechanisms say it. */

import { point } from '../../geometry/segment.ts';
import type { CheckRow } from '../../quantity/check.ts';
import { drawOf } from './pawl.ts';

/** A radial face on the X axis, and a pivot seen from the place of contact under this angle to the face. */
const pressedIn = (degrees: number): string => {
  const [contact, angle] = [point(30, 0), (degrees * Math.PI) / 180];
  const draw = drawOf(contact, point(0, -1), point(contact.x + 20 * Math.cos(angle), contact.y - 20 * Math.sin(angle)));
  return draw > 0 ? 'yes' : 'no';
};

export const checks: readonly CheckRow[] = (
  [
    ['a', 80, 'yes'],
    ['b', 89.9, 'yes'],
    ['c', 95, 'no'],
  ] as const
).map(([letter, degrees, value]) => ({
  id: `H-RATCHET-${letter}`,
  source: 'ratchet-wheels',
  place: 'shape of the radial edge',
  how: 'secondary page',
  question: `is the pawl forced inwards where pivot, contact and face make ${degrees}°?`,
  value,
  ours: () => pressedIn(degrees),
}));
