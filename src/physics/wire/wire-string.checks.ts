/** Wire mechanics against statics and arithmetic (CHECKS F). */
import type { CheckRow } from '../../quantity/check.ts';
import type { Wire } from './wire.ts';
import { cornerLag, wireMassPerLength, wirePitch, wireSag, wireStress } from './wire-string.ts';
import { wires } from './wires.ts';

const sag = (load: number, span: number, tension: number): number => wireSag.compute({ load, span, tension });
const pitch = (density: number, d: number, span: number, tension: number): number =>
  wirePitch.compute({ span, tension, massPerLength: wireMassPerLength.compute({ density, d }) });

const row = (id: string, question: string, printed: string, ours: () => number): CheckRow => ({
  id,
  source: 'statics',
  place: 'textbook formula, recomputed',
  question,
  printed,
  ours,
});

/** MPa, cold, the least of the range: brass half hard is softer still, but is not what a shop cuts straight walls with. */
const strength: Readonly<Record<Wire['kind'], number>> = {
  brass: 900,
  'coated brass': 800,
  molybdenum: 1800,
  tungsten: 2800,
  'steel-cored': 1800,
};

export const checks: readonly CheckRow[] = [
  row('F-01', 'deflection under 1 N/m, 50 mm, 12 N, µm', '26.042', () => sag(1, 50, 12)),
  row('F-01b', 'deflection under 1 N/m, 100 mm, 12 N, µm', '104.167', () => sag(1, 100, 12)),
  row('F-01c', 'deflection under 0.5 N/m, 80 mm, 22 N, µm', '18.182', () => sag(0.5, 80, 22)),
  row('F-02a', 'deflection with twice the span, ratio', '4.000', () => sag(1, 100, 12) / sag(1, 50, 12)),
  row('F-02b', 'deflection with twice the tension, ratio', '0.500', () => sag(1, 50, 24) / sag(1, 50, 12)),
  row('F-03', 'natural frequency of 0.25 brass, 100 mm, 12 N, Hz', '847.94', () => pitch(8.5, 0.25, 100, 12)),
  row('F-03b', 'natural frequency of 0.30 brass, 80 mm, 22 N, Hz', '1195.96', () => pitch(8.5, 0.3, 80, 22)),
  row('F-03c', 'natural frequency of 0.18 molybdenum, 100 mm, 10 N, Hz', '977.59', () => pitch(10.28, 0.18, 100, 10)),
  row('F-04', 'stress of 22 N on 0.30 wire, MPa', '311.24', () => wireStress.compute({ tension: 22, d: 0.3 })),
  row('F-04b', 'stress of 12 N on 0.25 wire, MPa', '244.46', () => wireStress.compute({ tension: 12, d: 0.25 })),
  {
    id: 'F-strength',
    source: 'material-handbooks',
    place: 'strength of wires; rule of 50 to 60 %',
    question: 'is the tension of every wire of the house at most 60 % of what it stands?',
    printed: 'yes',
    ours: () => (wires.every((w) => wireStress.compute({ tension: w.tension, d: w.diameter }) <= 0.6 * strength[w.kind]) ? 'yes' : 'no'),
  },
  {
    id: 'F-05',
    source: 'plane-geometry',
    place: 'circle cut with a trailing wire',
    question: 'error of R 0.5 mm with 50 µm lag, µm',
    printed: '2.506',
    ours: () => cornerLag.compute({ lag: 50, radius: 0.5 }),
  },
  {
    id: 'F-05b',
    source: 'plane-geometry',
    place: 'circle cut with a trailing wire',
    question: 'error of R 1.0 mm with 50 µm lag, µm',
    printed: '1.2508',
    ours: () => cornerLag.compute({ lag: 50, radius: 1 }),
  },
];
