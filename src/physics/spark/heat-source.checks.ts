/** Heat sources against values worked from the handbook's formulas (CHECKS D4). */
import type { CheckRow } from '../../quantity/check.ts';
import { discRise, discSteady, pointRise } from './heat-source.ts';

const spark = { flux: 1e10, radius: 10e-6, conductivity: 30 } as const;
const disc = (microseconds: number, depth = 0): number =>
  discRise.compute({ ...spark, diffusivity: 8e-6, time: microseconds * 1e-6, depth });
/** Dimensionless: T K / (q a) at κ t / a² = fo. */
const centre = (fo: number): number => discRise.compute({ flux: 1, radius: 1, conductivity: 1, diffusivity: 1, time: fo, depth: 0 });
const point = (distance: number, microseconds: number): number =>
  pointRise.compute({
    share: 0.183,
    power: 250,
    conductivity: 30,
    diffusivity: 8e-6,
    distance: distance * 1e-6,
    time: microseconds * 1e-6,
  });

const row = (id: string, question: string, printed: string, ours: () => number): CheckRow => ({
  id,
  source: 'carslaw-jaeger',
  place: 'section 10.5',
  question,
  printed,
  ours,
});
const spot = (id: string, question: string, printed: string, ours: () => number): CheckRow => ({
  id,
  source: 'dibitonto',
  place: 'point source, eq. of temperature',
  question,
  printed,
  ours,
});

export const checks: readonly CheckRow[] = [
  row('D-08', 'disc 1e10 W/m², 10 µm, K 30, κ 8e-6: centre after 1 µs, K', '1058.502', () => disc(1)),
  row('D-08b', 'the same after 0.1 µs, K', '336.418', () => disc(0.1)),
  row('D-09a', 'the same after 10 µs, K', '2333.543', () => disc(10)),
  row('D-09b', 'the same after 10 µs, 5 µm deep, K', '1084.749', () => disc(10, 5e-6)),
  row('D-09c', 'the same after 1 µs, 5 µm deep, K', '132.835', () => disc(1, 5e-6)),
  row('D-10a', 'the same after a long time, centre, K', '3333.333', () => discSteady.centre.compute(spark)),
  row('D-10b', 'the same, mean over the disc, K', '2829.421', () => discSteady.mean.compute(spark)),
  row('D-10c', 'the same, edge, K', '2122.066', () => discSteady.edge.compute(spark)),
  row('D-11a', 'dimensionless centre at Fo 1', '0.729097', () => centre(1)),
  row('D-11b', 'dimensionless centre at Fo 0.1', '0.352882', () => centre(0.1)),
  row('D-11c', 'dimensionless centre at Fo 100', '0.971802', () => centre(100)),
  row('D-11d', 'dimensionless centre at Fo 4', '0.860404', () => centre(4)),
  spot('D-12a', 'share 0.183 of 250 W, K 30, κ 8e-6: 20 µm off after 10 µs, K', '1381.589', () => point(20, 10)),
  spot('D-12b', 'the same 10 µm off after 1 µs, K', '301.431', () => point(10, 1)),
  spot('D-12c', 'the same 50 µm off after 100 µs, K', '1025.696', () => point(50, 100)),
];
