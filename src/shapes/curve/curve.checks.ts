/** Curvature and length of curves that handbooks give: trochoids with cusps, spirals; and the counts of a drive. */
import type { CheckRow } from '../../quantity/check.ts';
import { leastPathRadius, lobeTopRadius, shortening } from './pin-ring.ts';
import { reduction } from './rotor-sizes.ts';
import { archimedeanLength, involuteLength, logarithmicLength } from './spiral-lines.ts';

export const checks: readonly CheckRow[] = [
  {
    id: 'H-R1a',
    source: 'plane-curves',
    place: 'cardioid, r = 2a(1 + cos θ)',
    how: 'recomputed',
    question: 'greatest radius of curvature of a cardioid with a = 1, 8a/3, mm',
    value: '2.6667',
    ours: () => lobeTopRadius.compute({ radius: 2, pins: 2, eccentricity: 1 }),
  },
  {
    id: 'H-R1b',
    source: 'plane-curves',
    place: 'nephroid of a fixed circle 2a',
    how: 'recomputed',
    question: 'greatest radius of curvature of a nephroid with a = 1, 3a, mm',
    value: '3.0000',
    ours: () => lobeTopRadius.compute({ radius: 3, pins: 3, eccentricity: 1 }),
  },
  {
    id: 'H-R1c',
    source: 'plane-curves',
    place: 'epicycloids',
    how: 'recomputed',
    question: 'radius of curvature in the cusps of the curve with e z = R, an epicycloid, mm',
    value: '0.0000',
    ours: () => leastPathRadius.compute({ radius: 40, pins: 8, eccentricity: 5 }),
  },
  {
    id: 'H-R1d',
    source: 'plane-curves',
    place: 'epicycloids',
    how: 'recomputed',
    question: 'e z / R of that curve',
    value: '1.0000',
    ours: () => shortening.compute({ radius: 40, pins: 8, eccentricity: 5 }),
  },
  {
    id: 'H-R2',
    source: 'trochoid-rotors',
    place: 'counts of pins and lobes',
    how: 'secondary page',
    question: 'reduction of a drive with 11 pins in the ring',
    value: '10',
    ours: () => reduction.compute({ pins: 11 }),
  },
  {
    id: 'H-S1a',
    source: 'plane-curves',
    place: 'spiral of Archimedes, r = θ',
    how: 'recomputed',
    question: 'length of its first turn',
    value: '21.256',
    ours: () => archimedeanLength.compute({ inner: 0, outer: 2 * Math.PI, pitch: 2 * Math.PI }),
  },
  {
    id: 'H-S1b',
    source: 'plane-curves',
    place: 'involute of a circle, s = a t² / 2',
    how: 'recomputed',
    question: 'length of the involute of the unit circle to t = 2π, 2π²',
    value: '19.739',
    ours: () => involuteLength.compute({ inner: 1, outer: Math.hypot(1, 2 * Math.PI), pitch: 2 * Math.PI }),
  },
  {
    id: 'H-S1c',
    source: 'plane-curves',
    place: 'logarithmic spiral, s = Δr / cos ψ',
    how: 'recomputed',
    question: 'length of a spiral that meets its rays at 60°, from r = 1 to r = 2 mm, mm',
    value: '2.0000',
    ours: () => logarithmicLength.compute({ inner: 1, outer: 2, growth: Math.exp((2 * Math.PI) / Math.tan(Math.PI / 3)) }),
  },
];
