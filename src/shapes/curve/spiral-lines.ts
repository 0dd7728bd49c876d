/** The middle lines of spirals, outwards and counter-clockwise, and the sides that run beside them. Lengths in mm, angles in rad. */

import type { FitCurve } from '../../geometry/make/fit-curve.ts';
import { type Point, point } from '../../geometry/segment.ts';
import type { Formula } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';
import { polar } from '../polar.ts';

export interface SpiralLine {
  readonly start: number;
  readonly end: number;
  readonly pointAt: (angle: number) => Point;
  /** Unit direction of travel, outwards. */
  readonly directionAt: (angle: number) => Point;
  /** mm for each rad of the angle. */
  readonly speedAt: (angle: number) => number;
  /** Radius of the bend; it grows outwards on each of them. */
  readonly bendAt: (angle: number) => number;
}

/** Unit vector of `along` (outwards) and `round` (counter-clockwise) at a polar angle. */
const facing = (along: number, round: number, angle: number): Point => {
  const size = Math.hypot(along, round);
  const [c, n] = [Math.cos(angle), Math.sin(angle)];
  return point((along * c - round * n) / size, (along * n + round * c) / size);
};

/** r = r₀ + p φ / 2π. */
export const archimedean = (inner: number, pitch: number, turns: number): SpiralLine => {
  const rise = pitch / (2 * Math.PI);
  const radius = (angle: number): number => inner + rise * angle;
  return {
    start: 0,
    end: 2 * Math.PI * turns,
    pointAt: (angle) => polar(radius(angle), angle),
    directionAt: (angle) => facing(rise, radius(angle), angle),
    speedAt: (angle) => Math.hypot(rise, radius(angle)),
    bendAt: (angle) => (radius(angle) ** 2 + rise ** 2) ** 1.5 / (radius(angle) ** 2 + 2 * rise ** 2),
  };
};

/** r = r₀ gᶰ after n turns. */
export const logarithmic = (inner: number, growth: number, turns: number): SpiralLine => {
  const rise = Math.log(growth) / (2 * Math.PI);
  const radius = (angle: number): number => inner * Math.exp(rise * angle);
  return {
    start: 0,
    end: 2 * Math.PI * turns,
    pointAt: (angle) => polar(radius(angle), angle),
    directionAt: (angle) => facing(rise, 1, angle),
    speedAt: (angle) => radius(angle) * Math.hypot(1, rise),
    bendAt: (angle) => radius(angle) * Math.hypot(1, rise),
  };
};

/** Involute of the circle whose circumference is the pitch, so that neighbouring turns are everywhere a pitch apart. */
export const involuteSpiral = (inner: number, pitch: number, turns: number): SpiralLine => {
  const base = pitch / (2 * Math.PI);
  const start = Math.sqrt(Math.max(0, (inner / base) ** 2 - 1));
  return {
    start,
    end: start + 2 * Math.PI * turns,
    pointAt: (angle) => point(base * (Math.cos(angle) + angle * Math.sin(angle)), base * (Math.sin(angle) - angle * Math.cos(angle))),
    directionAt: (angle) => point(Math.cos(angle), Math.sin(angle)),
    speedAt: (angle) => base * angle,
    bendAt: (angle) => base * angle,
  };
};

/** The line `aside` to the left of the middle line, which is inwards; below 0 outwards. */
export const besideAt = ({ pointAt, directionAt }: SpiralLine, aside: number, angle: number): Point => {
  const [p, d] = [pointAt(angle), directionAt(angle)];
  return point(p.x - aside * d.y, p.y + aside * d.x);
};

/** A side as a curve; `aside` has to stay below the radius of the bend. */
export const sideOf = (line: SpiralLine, aside: number, way: 'outwards' | 'inwards'): FitCurve => ({
  start: way === 'outwards' ? line.start : line.end,
  end: way === 'outwards' ? line.end : line.start,
  pointAt: (angle) => besideAt(line, aside, angle),
  tangentAt: line.directionAt,
  pieces: Math.max(1, Math.ceil((line.end - line.start) / 2)),
});

const ENDS = {
  inner: { unit: 'mm', name: 'radius at the beginning' },
  outer: { unit: 'mm', name: 'radius at the end' },
} as const;

export const archimedeanLength: Formula<'inner' | 'outer' | 'pitch'> = {
  name: say('curve.archimedean-length')`length of the middle line`,
  text: say('curve.archimedean-length.by')`L = b/2 [u √(1 + u²) + arsinh u] from u = r₀/b to r₁/b, b = p / 2π`,
  source: 'plane-curves',
  unit: 'mm',
  inputs: { ...ENDS, pitch: { unit: 'mm', name: 'pitch' } },
  compute: ({ inner, outer, pitch }) => {
    const rise = pitch / (2 * Math.PI);
    const upTo = (u: number): number => (rise / 2) * (u * Math.sqrt(1 + u * u) + Math.asinh(u));
    return upTo(outer / rise) - upTo(inner / rise);
  },
};

export const logarithmicLength: Formula<'inner' | 'outer' | 'growth'> = {
  name: say('curve.logarithmic-length')`length of the middle line`,
  text: symbols`L = (r₁ - r₀) √(1 + 1/k²), k = ln g / 2π`,
  source: 'plane-curves',
  unit: 'mm',
  inputs: { ...ENDS, growth: { unit: '1', name: 'growth for each turn' } },
  compute: ({ inner, outer, growth }) => (outer - inner) * Math.sqrt(1 + ((2 * Math.PI) / Math.log(growth)) ** 2),
};

export const involuteLength: Formula<'inner' | 'outer' | 'pitch'> = {
  name: say('curve.involute-length')`length of the middle line`,
  text: symbols`L = (r₁² - r₀²) / 2a, a = p / 2π`,
  source: 'plane-curves',
  unit: 'mm',
  inputs: { ...ENDS, pitch: { unit: 'mm', name: 'pitch' } },
  compute: ({ inner, outer, pitch }) => ((outer ** 2 - inner ** 2) * Math.PI) / pitch,
};
