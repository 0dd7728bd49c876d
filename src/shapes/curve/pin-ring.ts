/**
 * The rotor that touches all pins of a ring at once. Seen from the rotor each pin's centre runs along the same epitrochoid, so the wall
 * is the line that stands a pin's radius inside of it. Lengths in mm, angles in rad; the rotor's middle at 0, 0, a valley on X.
 */

import type { FitCurve } from '../../geometry/make/fit-curve.ts';
import { type Point, point } from '../../geometry/segment.ts';
import type { Formula } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';

export interface PinRing {
  /** Pins of the ring, or teeth of the outer rotor: one more than the rotor has lobes. */
  readonly pins: number;
  /** Of the circle that the pins' centres lie on. */
  readonly radius: number;
  readonly eccentricity: number;
}

/** Where a pin's centre is when it has gone round by an angle; valleys at multiples of 2π / lobes, lobes between them. */
export const pinCentre = ({ pins, radius, eccentricity }: PinRing, angle: number): Point =>
  point(radius * Math.cos(angle) - eccentricity * Math.cos(pins * angle), radius * Math.sin(angle) - eccentricity * Math.sin(pins * angle));

/** Direction in which the pin presses away from the rotor, of unit length. */
const outward = ({ pins, radius, eccentricity }: PinRing, angle: number): Point => {
  const x = radius * Math.cos(angle) - eccentricity * pins * Math.cos(pins * angle);
  const y = radius * Math.sin(angle) - eccentricity * pins * Math.sin(pins * angle);
  const size = Math.hypot(x, y);
  return point(x / size, y / size);
};

/** The wall from the bottom of a valley to the top of the lobe after it; `reach` is how far it stands inside of the pin's path. */
export const halfLobe = (ring: PinRing, reach: number): FitCurve => ({
  start: 0,
  end: Math.PI / (ring.pins - 1),
  pointAt: (angle) => {
    const [c, n] = [pinCentre(ring, angle), outward(ring, angle)];
    return point(c.x - reach * n.x, c.y - reach * n.y);
  },
  tangentAt: (angle) => {
    const n = outward(ring, angle);
    return point(-n.y, n.x);
  },
});

/** Signed radius of the pin's path, above 0 where it bends as a circle about the rotor would. */
export const pathRadius = ({ pins, radius, eccentricity }: PinRing, angle: number): number => {
  const turn = Math.cos((pins - 1) * angle);
  const square = radius ** 2 + (eccentricity * pins) ** 2 - 2 * radius * eccentricity * pins * turn;
  return square ** 1.5 / (radius ** 2 + eccentricity ** 2 * pins ** 3 - radius * eccentricity * pins * (pins + 1) * turn);
};

const RING = {
  radius: { unit: 'mm', name: 'radius of the pin circle' },
  pins: { unit: '1', name: 'pins' },
  eccentricity: { unit: 'mm', name: 'eccentricity' },
} as const;

/** How near the path comes to one with loops, which it has from 1 on. */
export const shortening: Formula<'radius' | 'pins' | 'eccentricity'> = {
  name: say('curve.shortening')`shortening of the trochoid`,
  text: symbols`K = e z / R`,
  source: 'trochoid-rotors',
  unit: '1',
  inputs: RING,
  compute: ({ radius, pins, eccentricity }) => (eccentricity * pins) / radius,
};

export const lobeTopRadius: Formula<'radius' | 'pins' | 'eccentricity'> = {
  name: say('curve.lobe-top-radius')`radius of the pin’s path at the top of a lobe`,
  text: symbols`ρ = R (1 + K)² / (1 + z K), K = e z / R`,
  source: 'trochoid-rotors',
  unit: 'mm',
  inputs: RING,
  compute: (ring) => (ring.radius * (1 + shortening.compute(ring)) ** 2) / (1 + ring.pins * shortening.compute(ring)),
};

/** Beside the top once the path is much shortened, on it else. */
export const leastPathRadius: Formula<'radius' | 'pins' | 'eccentricity'> = {
  name: say('curve.least-path-radius')`smallest outward radius of the pin’s path`,
  text: say(
    'curve.least-path-radius.by',
  )`ρ = R √(27 (1 - K²)(z - 1) / (z + 1)³) for K > (z - 2) / (2 z - 1), else that at the top of a lobe`,
  source: 'trochoid-rotors',
  unit: 'mm',
  inputs: RING,
  compute: (ring) => {
    const [k, z] = [shortening.compute(ring), ring.pins];
    if (k <= (z - 2) / (2 * z - 1)) return lobeTopRadius.compute(ring);
    return ring.radius * Math.sqrt((27 * (1 - k * k) * (z - 1)) / (z + 1) ** 3);
  },
};
