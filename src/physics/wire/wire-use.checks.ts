/** Wire use and mass against arithmetic from handbook densities (CHECKS F and J). */
import type { CheckRow } from '../../quantity/check.ts';
import { findMaterial } from '../material/find-material.ts';
import { pieceMass } from '../material/piece-mass.ts';
import { metresOfWire, wireKilograms, wireMetres } from './wire-use.ts';

const use = (diameter: number, speed: number): number =>
  1000 * wireKilograms.compute({ length: wireMetres.compute({ minutes: 60, speed }), diameter, density: 8.5 });

const mass = (id: string, area: number, height: number): number | string => {
  const answer = findMaterial(id);
  return answer.kind === 'material' ? pieceMass.compute({ area, height, density: answer.material.density.value }) : answer.kind;
};

const row = (id: string, question: string, value: string, ours: () => number | string): CheckRow => ({
  id,
  source: 'material-handbooks',
  place: 'density; the rest recomputed',
  how: 'recomputed',
  question,
  value,
  ours,
});

export const checks: readonly CheckRow[] = [
  row('F-08', '0.25 brass at 10 m/min, g/h', '250.35', () => use(0.25, 10)),
  row('F-08b', '0.30 brass at 13 m/min, g/h', '468.65', () => use(0.3, 13)),
  row('F-08c', '0.20 brass at 8 m/min, g/h', '128.18', () => use(0.2, 8)),
  row('F-08d', '0.10 brass at 6 m/min, g/h', '24.03', () => use(0.1, 6)),
  row('F-08e', '0.25 brass, metres per kg', '2396.7', () => metresOfWire.compute({ mass: 1, diameter: 0.25, density: 8.5 })),
  row('J-03a', 'mass of a D2 slug 100 x 60 x 25 mm, kg', '1.155', () => mass('d2', 6000, 25)),
  row('J-03b', 'mass of a carbide slug (6 % cobalt) 40 x 40 x 30 mm, kg', '0.715', () => mass('wc-6co', 1600, 30)),
];
