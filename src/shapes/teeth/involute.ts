/** The involute of a circle: its function and the inverse, the curve between two radii, and sizes over and between pins. Angles in rad, lengths in mm. */

import type { FitCurve } from '../../geometry/make/fit-curve.ts';
import { type Point, point } from '../../geometry/segment.ts';
import type { Formula } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';
import { inMm, inRad, plain } from '../inputs.ts';

/** inv φ = tan φ - φ: how far round the base circle an involute has turned where its pressure angle is φ. */
export const inv = (angle: number): number => (Math.abs(angle) < 0.02 ? smallInv(angle) : Math.tan(angle) - angle);

/** Near nothing the difference would lose its digits: the series of the tangent instead. */
const smallInv = (a: number): number => a ** 3 * (1 / 3 + a * a * (2 / 15 + a * a * (17 / 315 + (a * a * 62) / 2835)));

/**
 * The pressure angle whose involute function is `value`, below a quarter turn; `none` below nothing and for what is no number.
 *
 * Newton's way on a function that bends upwards, begun above the root, comes down to it without ever passing it: the root lies
 * below the cube root of 3 v, since tan φ - φ exceeds φ³ / 3, and below arctan(v + π / 2), since φ is below a quarter turn.
 */
export const inverseInv = (value: number): number | 'none' => {
  if (!(value >= 0) || !Number.isFinite(value)) return 'none';
  let angle = Math.min(Math.cbrt(3 * value), Math.atan(value + Math.PI / 2));
  for (let i = 0; i < 100 && angle > 0; i += 1) {
    const next = angle - (inv(angle) - value) / Math.tan(angle) ** 2;
    if (!(next < angle)) break;
    angle = next;
  }
  return angle;
};

/**
 * One flank as a curve over the roll angle, from the lower radius to the upper one: about 0, 0, the involute leaves its base circle
 * at `origin` and turns by the way of `hand`, 1 counter-clockwise. Both radii are at least the base radius.
 */
export const involuteCurve = (base: number, from: number, to: number, origin: number, hand: 1 | -1): FitCurve => {
  const roll = (radius: number): number => Math.sqrt(Math.max(0, (radius / base) ** 2 - 1));
  return {
    start: roll(from),
    end: roll(to),
    pointAt: (t) => involutePoint(base, t, origin, hand),
    tangentAt: (t) => {
      const angle = origin + hand * t;
      const size = Math.max(t, 1e-12);
      return { x: size * Math.cos(angle), y: size * Math.sin(angle) };
    },
  };
};

/** Place on the involute at a roll angle t: the string, unwound by t, ends there. */
export const involutePoint = (base: number, t: number, origin: number, hand: 1 | -1): Point => {
  const angle = origin + hand * t;
  return point(base * (Math.cos(angle) + hand * t * Math.sin(angle)), base * (Math.sin(angle) - hand * t * Math.cos(angle)));
};

/** How far a place lies off an involute, square to it, mm: its distance from the base circle's tangent says it exactly. */
export const distanceFromInvolute = (p: Point, base: number, origin: number, hand: 1 | -1): number => {
  const radius = Math.hypot(p.x, p.y);
  if (radius < base) return Number.NaN;
  const t = Math.sqrt((radius / base) ** 2 - 1);
  const there = Math.atan2(p.y, p.x);
  // The involute through p leaves the base circle here; parallel involutes lie base times the turn between them apart.
  const own = there - hand * (t - Math.atan(t));
  const turn = Math.atan2(Math.sin(own - origin), Math.cos(own - origin));
  return Math.abs(turn) * base;
};

/** Pressure angle where the centre of a pin lies that touches both flanks of a space, external teeth. */
export const pinAngleExternal: Formula<'thickness' | 'teeth' | 'module' | 'pressureAngle' | 'pin'> = {
  name: say('teeth.pin-angle-external')`involute function at the centre of the pin`,
  text: symbols`inv φ = s / (m z) + D_M / (m z cos α) + inv α - π / z`,
  source: 'iso-21771',
  unit: '1',
  inputs: {
    thickness: inMm('tooth thickness at the reference circle'),
    teeth: plain('teeth'),
    module: inMm('module'),
    pressureAngle: inRad('pressure angle'),
    pin: inMm('pin'),
  },
  compute: ({ thickness, teeth, module, pressureAngle, pin }) =>
    thickness / (module * teeth) + pin / (module * teeth * Math.cos(pressureAngle)) + inv(pressureAngle) - Math.PI / teeth,
};

/** The same for internal teeth: `thickness` is that of the tooth, the pin lies in the space outside of it. */
export const pinAngleInternal: typeof pinAngleExternal = {
  ...pinAngleExternal,
  text: symbols`inv φ = (π m - s) / (m z) - D_M / (m z cos α) + inv α`,
  compute: ({ thickness, teeth, module, pressureAngle, pin }) =>
    (Math.PI * module - thickness) / (module * teeth) - pin / (module * teeth * Math.cos(pressureAngle)) + inv(pressureAngle),
};
