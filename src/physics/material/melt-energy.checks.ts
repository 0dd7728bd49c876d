/** What melting takes, by the heat balance of any textbook (CHECKS D5). */
import type { CheckRow } from '../../quantity/check.ts';
import { meltEnergy } from './melt-energy.ts';

const row = (id: string, question: string, value: string, inputs: Parameters<typeof meltEnergy.compute>[0]): CheckRow => ({
  id,
  source: 'physics-textbook',
  place: 'energy balance',
  how: 'recomputed',
  question,
  value,
  ours: () => meltEnergy.compute(inputs),
});

export const checks: readonly CheckRow[] = [
  row('D-13', 'energy to melt steel (7.8, 500, 1480 K, 270), J/mm³', '7.878', { density: 7.8, heat: 500, rise: 1480, fusion: 270 }),
];
