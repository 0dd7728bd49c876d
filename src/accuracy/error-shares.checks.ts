/** Lag on arcs (CHECKS F) and what the trade says of stress in blocks. */

import { lagOnArc } from '../physics/cut/corner-error.ts';
import type { Family } from '../physics/material/material.ts';
import type { CheckRow } from '../quantity/check.ts';
import { stressLeft, stressRate, stressRelease } from './error-shares.ts';
import { programScale, sizeAtReference } from './program-scale.ts';

const moves = (family: Family, skims: number, opened = 0): number =>
  stressRelease.compute({ rate: stressRate(family).value, length: 100, opened, left: stressLeft.value, skims });

const yes = (holds: boolean): string => (holds ? 'yes' : 'no');

export const checks: readonly CheckRow[] = [
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
  {
    id: 'CP-stress-metal',
    source: 'common-practice',
    place: 'stress in blocks',
    how: 'memory',
    question: 'rolled aluminium moves more than tool steel, and tool steel more than carbide',
    value: 'yes',
    ours: () => yes(moves('aluminium', 0) > moves('tool steel', 0) && moves('tool steel', 0) > moves('carbide', 0)),
  },
  {
    id: 'CP-stress-frame',
    source: 'common-practice',
    place: 'stress in blocks',
    how: 'memory',
    question: 'a frame of which more is cut away moves more, and skims cut most of the movement away',
    value: 'yes',
    ours: () => yes(moves('tool steel', 0, 0.6) > moves('tool steel', 0, 0.1) && moves('tool steel', 2) < moves('tool steel', 0) / 5),
  },
];
