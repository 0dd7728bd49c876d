/** Pulses, melting energy and craters against arithmetic on published inputs (CHECKS D3, D5, D6). */
import type { CheckRow } from '../../quantity/check.ts';
import {
  craterVolume,
  finishRatio,
  heatDepth,
  hemisphereRadius,
  meanCurrent,
  meanPower,
  meltEnergy,
  rectangleEnergy,
  triangleEnergy,
} from './pulse.ts';

const sato = { source: 'sato-wire-break', place: 'pulse of the first set; recomputed' } as const;
const book = { source: 'physics-textbook', place: 'energy balance; recomputed' } as const;
const energy = (): number => triangleEnergy.compute({ voltage: 20, current: 700, duration: 1.4 });
const steel = (): number => meltEnergy.compute({ density: 7.8, heat: 500, rise: 1480, fusion: 270 });
const crater = (mJ: number): number => craterVolume.compute({ share: 0.18, energy: mJ, melt: steel() });

export const checks: readonly CheckRow[] = [
  { id: 'D-07a', ...sato, question: 'triangle of 20 V, 700 A, 1.4 µs, mJ', printed: '9.800', ours: energy },
  {
    id: 'D-07b',
    ...sato,
    question: 'the same at 60 kHz, W',
    printed: '588.0',
    ours: () => meanPower.compute({ energy: energy(), frequency: 60000 }),
  },
  {
    id: 'D-07c',
    ...sato,
    question: 'the same, mean current, A',
    printed: '29.40',
    ours: () => meanCurrent.compute({ current: 700, duration: 1.4, frequency: 60000 }),
  },
  {
    id: 'D-07d',
    ...book,
    question: 'rectangle of 25 V, 10 A, 100 µs, mJ',
    printed: '25',
    ours: () => rectangleEnergy.compute({ voltage: 25, current: 10, duration: 100 }),
  },
  { id: 'D-13', ...book, question: 'energy to melt steel (7.8, 500, 1480 K, 270), J/mm³', printed: '7.878', ours: steel },
  { id: 'D-14a', ...book, question: 'crater in steel, share 0.18 of 1 mJ, µm³', printed: '22848', ours: () => crater(1) },
  {
    id: 'D-14b',
    ...book,
    question: 'radius of that crater as a half ball, µm',
    printed: '22.18',
    ours: () => hemisphereRadius.compute({ volume: crater(1) }),
  },
  {
    id: 'D-14c',
    ...book,
    question: 'crater in steel, share 0.18 of 10 mJ, µm³',
    printed: '228484',
    ours: () => crater(10),
    wider: { tolerance: 2, reason: 'printed from a melting energy rounded to 7.878' },
  },
  {
    id: 'D-15a',
    source: 'klocke-koenig',
    place: 'Ra and pulse energy',
    question: 'Ra with eight times the energy, ratio',
    printed: '2.000',
    ours: () => finishRatio.compute({ energyRatio: 8 }),
  },
  {
    id: 'D-15b',
    source: 'klocke-koenig',
    place: 'Ra and pulse energy',
    question: 'Ra with a tenth of the energy, ratio',
    printed: '0.464',
    ours: () => finishRatio.compute({ energyRatio: 0.1 }),
  },
  {
    id: 'D-16a',
    source: 'carslaw-jaeger',
    place: 'diffusion depth; recomputed',
    question: 'heat depth, κ 8e-6 m²/s, 2 µs, µm',
    printed: '8.000',
    ours: () => heatDepth.compute({ diffusivity: 8e-6, duration: 2 }),
  },
  {
    id: 'D-16b',
    source: 'carslaw-jaeger',
    place: 'diffusion depth; recomputed',
    question: 'heat depth, κ 8e-6 m²/s, 100 µs, µm',
    printed: '56.6',
    ours: () => heatDepth.compute({ diffusivity: 8e-6, duration: 100 }),
  },
];
