/** Lag on arcs (CHECKS F) and what the trade says of stress in blocks. */

import { lagOnArc, pathInsideArc, pathOutsideArc } from '../physics/cut/corner-error.ts';
import type { Family } from '../physics/material/material.ts';
import type { CheckRow } from '../quantity/check.ts';
import { promisedSpread, stressLeft, stressRate, stressRelease } from './error-shares.ts';
import { programScale, sizeAtReference } from './program-scale.ts';

const moves = (family: Family, skims: number, opened = 0): number =>
  stressRelease.compute({ rate: stressRate(family).value, length: 100, opened, left: stressLeft.value, skims });

export const checks: readonly CheckRow[] = [
  ...(
    [
      [1, '3.74'],
      [2, '5.9'],
      [3, '8.1'],
    ] as const
  ).map(
    ([confidence, value]): CheckRow => ({
      id: `CP-promise-k${confidence}`,
      source: 'common-practice',
      place: 'an error budget worked by hand: 1.55 µm systematic, 2.19 µm random',
      how: 'recomputed',
      question: `expected error with k = ${confidence}, µm`,
      value,
      ours: () => 1.55 + promisedSpread.compute({ random: 2.19, confidence }),
    }),
  ),
  {
    id: 'F-05-budget',
    source: 'plane-geometry',
    place: 'circle and chord; recomputed',
    how: 'recomputed',
    question: 'a wire that trails by 50 µm on a path of R 0.5 mm, error of the budget, µm',
    value: '2.506',
    ours: () => lagOnArc.compute({ lag: 50, radius: 0.5 }),
  },
  {
    id: 'C-scale',
    source: 'iso-1',
    place: 'sizes hold at 20 °C; 11.5e-6/K as common steel has it',
    how: 'recomputed',
    question: 'program of 100 mm for steel cut at 21 °C, how much longer, µm',
    value: '1.15',
    ours: () => (programScale.compute({ expansion: 11.5, temperature: 21 }) - 1) * 100 * 1000,
  },
  {
    id: 'C-scale-back',
    source: 'iso-1',
    place: 'sizes hold at 20 °C; recomputed',
    how: 'recomputed',
    question: 'steel of 11.5e-6/K that measures 100.00575 mm at 25 °C, size at 20 °C, mm',
    value: '100.0000',
    ours: () => sizeAtReference.compute({ size: 100.00575, expansion: 11.5, temperature: 25 }),
  },
  ...(
    [
      ['tool steel', '0.08'],
      ['steel', '0.08'],
      ['stainless', '0.1'],
      ['carbide', '0.01'],
      ['aluminium', '0.15'],
      ['titanium', '0.12'],
      ['nickel alloy', '0.1'],
      ['copper', '0.06'],
      ['brass', '0.08'],
    ] as const
  ).map(
    ([family, value]): CheckRow => ({
      id: `CP-stress-${family.replace(' ', '-')}`,
      source: 'common-practice',
      place: 'stress in blocks',
      how: 'memory',
      question: `movement of ${family}, µm per mm of an opening`,
      value,
      ours: () => moves(family, 0) / 100,
      wider: { tolerance: Number(value) * 0.25, reason: 'two blocks of one metal differ by more' },
    }),
  ),
  {
    id: 'CP-stress-left',
    source: 'common-practice',
    place: 'stress in blocks',
    how: 'memory',
    question: 'share of a movement that one skim leaves',
    value: '0.3',
    ours: () => moves('tool steel', 1) / moves('tool steel', 0),
    wider: { tolerance: 0.05, reason: 'as closely as shops agree' },
  },
  {
    id: 'CP-stress-opened',
    source: 'common-practice',
    place: 'stress in blocks',
    how: 'memory',
    question: 'movement of a block cut half away against that of a whole one',
    value: '2',
    ours: () => moves('tool steel', 0, 0.5) / moves('tool steel', 0),
    wider: { tolerance: 0.25, reason: 'as closely as shops agree' },
  },
  {
    id: 'F-05-outside',
    source: 'plane-geometry',
    place: 'circle and chord; recomputed',
    how: 'recomputed',
    question: 'a wire that trails by 50 µm round the outside of R 0.5 mm at an offset of 0.155 mm, error, µm',
    value: '1.911',
    ours: () => lagOnArc.compute({ lag: 50, radius: pathOutsideArc.compute({ radius: 0.5, offset: 0.155 }) }),
  },
  {
    id: 'F-05-inside',
    source: 'plane-geometry',
    place: 'circle and chord; recomputed',
    how: 'recomputed',
    question: 'the same round the inside of R 0.5 mm, error, µm',
    value: '3.642',
    ours: () => lagOnArc.compute({ lag: 50, radius: pathInsideArc.compute({ radius: 0.5, offset: 0.155 }) }),
  },
];
