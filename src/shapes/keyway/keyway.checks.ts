/** What DIN 6885-1 prints of keys and keyways (CHECKS H-10, H-11): the whole table. Those of ASME B17.1 stand beside its table. */

import type { CheckRow } from '../../quantity/check.ts';
import { zoneLimits } from '../../quantity/limits-and-fits.ts';
import { din6885 } from './din-6885.ts';

/** As printed: shafts over, to, key b × h, depth in the shaft, depth in the hub with clearance above the key. */
const PRINTED = `
6 8 2x2 1.2 1.0 | 8 10 3x3 1.8 1.4 | 10 12 4x4 2.5 1.8 | 12 17 5x5 3.0 2.3 | 17 22 6x6 3.5 2.8 | 22 30 8x7 4.0 3.3 |
30 38 10x8 5.0 3.3 | 38 44 12x8 5.0 3.3 | 44 50 14x9 5.5 3.8 | 50 58 16x10 6.0 4.3 | 58 65 18x11 7.0 4.4 | 65 75 20x12 7.5 4.9 |
75 85 22x14 9.0 5.4 | 85 95 25x14 9.0 5.4 | 95 110 28x16 10.0 6.4 | 110 130 32x18 11.0 7.4 | 130 150 36x20 12.0 8.4 |
150 170 40x22 13.0 9.4 | 170 200 45x25 15.0 10.4 | 200 230 50x28 17.0 11.4 | 230 260 56x32 20.0 12.4 | 260 290 63x32 20.0 12.4 |
290 330 70x36 22.0 14.4 | 330 380 80x40 25.0 15.4 | 380 440 90x45 28.0 17.4 | 440 500 100x50 31.0 19.5`;

const rowAt = (shaft: number): string => {
  const row = din6885(shaft);
  return row === undefined ? 'none' : `${row.over} ${row.to} ${row.width}x${row.height} ${row.shaft.toFixed(1)} ${row.hub.toFixed(1)}`;
};
/** By shafts, over and to. */
const RADII = [
  [6, 12, '0.08 to 0.16'],
  [12, 30, '0.16 to 0.25'],
  [30, 65, '0.25 to 0.40'],
  [65, 130, '0.40 to 0.60'],
  [130, 230, '0.70 to 1.00'],
  [230, 330, '1.20 to 1.60'],
  [330, 500, '2.00 to 2.50'],
] as const;

const radiiAt = (shaft: number): string => (din6885(shaft)?.corner ?? []).map((r) => r.toFixed(2)).join(' to ');

const zone = (name: string, size: number): string => {
  const limits = zoneLimits(name, size);
  return limits.kind === 'limits' ? `${limits.low}/${limits.high}` : limits.reason;
};

export const checks: readonly CheckRow[] = [
  {
    id: 'H-10a',
    source: 'din-6885-1',
    place: 'table',
    how: 'secondary page' as const,
    question: 'key and depths for a shaft of 40 mm',
    value: '38 44 12x8 5.0 3.3',
    ours: () => rowAt(40),
  },
  {
    id: 'H-10b',
    source: 'din-6885-1',
    place: 'table',
    how: 'secondary page' as const,
    question: 'hub across its keyway, shaft 40 mm, mm',
    value: '43.3',
    ours: () => 40 + (din6885(40)?.hub ?? 0),
  },
  {
    id: 'H-11a',
    source: 'din-6885-1',
    place: 'table',
    how: 'secondary page' as const,
    question: 'key for 30 mm',
    value: '22 30 8x7 4.0 3.3',
    ours: () => rowAt(30),
  },
  {
    id: 'H-11b',
    source: 'din-6885-1',
    place: 'table',
    how: 'secondary page' as const,
    question: 'key for 30.01 mm',
    value: '30 38 10x8 5.0 3.3',
    ours: () => rowAt(30.01),
  },
  ...PRINTED.trim()
    .split(/\s*\|\s*/)
    .map((value, i) => ({
      id: `H-10-${String(i + 1).padStart(2, '0')}`,
      source: 'din-6885-1',
      place: 'table',
      how: 'secondary page' as const,
      question: `row of shafts up to ${value.split(' ')[1]} mm`,
      value,
      ours: () => rowAt(Number(value.split(' ')[1])),
    })),
  ...(
    [
      [14, '0.1', 'secondary page'],
      [22, '0.1', 'secondary page'],
      [22.1, '0.2', 'secondary page'],
      [54, '0.2', 'secondary page'],
      [130, '0.2', 'memory'],
      [131, '0.3', 'memory'],
      [500, '0.3', 'memory'],
    ] as const
  ).map(([shaft, value, how]) => ({
    id: `H-10t-${shaft}`,
    source: 'din-6885-1',
    place: 'permitted deviation of the depths',
    how,
    question: `how much deeper the keyway for a shaft of ${shaft} mm may be, mm`,
    value,
    ours: () => (din6885(shaft)?.deeper ?? Number.NaN).toFixed(1),
  })),
  ...RADII.map(([over, to, value]) => ({
    id: `H-10r-${to}`,
    source: 'din-6885-1',
    place: 'radii in the bottom of the keyway',
    how: 'memory' as const,
    question: `least and largest radius for shafts over ${over} to ${to} mm, mm`,
    value: `${value}, ${value}`,
    ours: () => `${radiiAt(over + 0.1)}, ${radiiAt(to)}`,
  })),
  {
    id: 'H-10z',
    source: 'iso-286-1',
    place: 'keyway widths',
    how: 'secondary page' as const,
    question: 'limits of JS9 at 8 mm, µm',
    value: '-18/18',
    ours: () => zone('JS9', 8),
  },
  {
    id: 'H-10y',
    source: 'iso-286-1',
    place: 'keyway widths',
    how: 'secondary page' as const,
    question: 'limits of P9 at 8 mm, µm',
    value: '-51/-15',
    ours: () => zone('P9', 8),
  },
];
