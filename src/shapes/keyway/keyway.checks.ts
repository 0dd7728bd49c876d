/** What DIN 6885-1 and ASME B17.1 print of keys and keyways (CHECKS H-10 to H-12); the whole table of the first. */
import { zoneLimits } from '../../physics/limits-and-fits.ts';
import type { CheckRow } from '../../quantity/check.ts';
import { asmeB17, hubSize, shaftSize } from './asme-b17.ts';
import { din6885 } from './din-6885.ts';

/** As printed: shafts over, to, key b × h, depth in the shaft, depth in the hub. */
const PRINTED = `
6 8 2x2 1.2 1.0 | 8 10 3x3 1.8 1.4 | 10 12 4x4 2.5 1.8 | 12 17 5x5 3.0 2.3 | 17 22 6x6 3.5 2.8 | 22 30 8x7 4.0 3.3 |
30 38 10x8 5.0 3.3 | 38 44 12x8 5.0 3.3 | 44 50 14x9 5.5 3.8 | 50 58 16x10 6.0 4.3 | 58 65 18x11 7.0 4.4 | 65 75 20x12 7.5 4.9 |
75 85 22x14 9.0 5.4 | 85 95 25x14 9.0 5.4 | 95 110 28x16 10.0 6.4 | 110 130 32x18 11.0 7.4`;

const rowAt = (shaft: number): string => {
  const row = din6885(shaft);
  return row === undefined ? 'none' : `${row.over} ${row.to} ${row.width}x${row.height} ${row.shaft.toFixed(1)} ${row.hub.toFixed(1)}`;
};
const zone = (name: string, size: number): string => {
  const limits = zoneLimits(name, size);
  return limits.kind === 'limits' ? `${limits.low}/${limits.high}` : limits.reason;
};
const inch = (value: number): number => value * 25.4;
const S = (d: number, w: number): number => shaftSize.compute({ diameter: inch(d), width: inch(w), height: inch(w) }) / 25.4;
const T = (d: number, w: number): number =>
  hubSize.compute({ diameter: inch(d), width: inch(w), height: inch(w), clearance: inch(0.005) }) / 25.4;

export const checks: readonly CheckRow[] = [
  {
    id: 'H-10a',
    source: 'din-6885-1',
    place: 'table',
    question: 'key and depths for a shaft of 40 mm',
    printed: '38 44 12x8 5.0 3.3',
    ours: () => rowAt(40),
  },
  {
    id: 'H-10b',
    source: 'din-6885-1',
    place: 'table',
    question: 'hub across its keyway, shaft 40 mm, mm',
    printed: '43.3',
    ours: () => 40 + (din6885(40)?.hub ?? 0),
  },
  { id: 'H-11a', source: 'din-6885-1', place: 'table', question: 'key for 30 mm', printed: '22 30 8x7 4.0 3.3', ours: () => rowAt(30) },
  {
    id: 'H-11b',
    source: 'din-6885-1',
    place: 'table',
    question: 'key for 30.01 mm',
    printed: '30 38 10x8 5.0 3.3',
    ours: () => rowAt(30.01),
  },
  ...PRINTED.trim()
    .split(/\s*\|\s*/)
    .map((printed, i) => ({
      id: `H-10-${String(i + 1).padStart(2, '0')}`,
      source: 'din-6885-1',
      place: 'table',
      question: `row of shafts up to ${printed.split(' ')[1]} mm`,
      printed,
      ours: () => rowAt(Number(printed.split(' ')[1])),
    })),
  {
    id: 'H-10z',
    source: 'iso-286-1',
    place: 'keyway widths',
    question: 'limits of JS9 at 8 mm, µm',
    printed: '-18/18',
    ours: () => zone('JS9', 8),
  },
  {
    id: 'H-10y',
    source: 'iso-286-1',
    place: 'keyway widths',
    question: 'limits of P9 at 8 mm, µm',
    printed: '-51/-15',
    ours: () => zone('P9', 8),
  },
  {
    id: 'H-12a',
    source: 'asme-b17-1',
    place: 'depth formula',
    question: 'S for 1 in, key 1/4 in',
    printed: '0.8591',
    ours: () => S(1, 0.25),
  },
  {
    id: 'H-12b',
    source: 'asme-b17-1',
    place: 'depth formula',
    question: 'T for 1 in, key 1/4 in',
    printed: '1.1116',
    ours: () => T(1, 0.25),
  },
  {
    id: 'H-12c',
    source: 'asme-b17-1',
    place: 'depth formula',
    question: 'S for 1/2 in, key 1/8 in',
    printed: '0.4296',
    ours: () => S(0.5, 0.125),
  },
  {
    id: 'H-12d',
    source: 'asme-b17-1',
    place: 'depth formula',
    question: 'T for 1/2 in, key 1/8 in',
    printed: '0.5571',
    ours: () => T(0.5, 0.125),
  },
  {
    id: 'H-12e',
    source: 'asme-b17-1',
    place: 'depth formula',
    question: 'S for 2 in, key 1/2 in',
    printed: '1.7182',
    ours: () => S(2, 0.5),
  },
  {
    id: 'H-12f',
    source: 'asme-b17-1',
    place: 'depth formula',
    question: 'T for 2 in, key 1/2 in',
    printed: '2.2207',
    ours: () => T(2, 0.5),
  },
  {
    id: 'H-12g',
    source: 'asme-b17-1',
    place: 'key size by shaft',
    question: 'width of the key for 1 in, inch',
    printed: '0.25',
    ours: () => asmeB17(1)?.width ?? 'none',
  },
  {
    id: 'H-12h',
    source: 'asme-b17-1',
    place: 'key size by shaft',
    question: 'width of the key for 2 in, inch',
    printed: '0.5',
    ours: () => asmeB17(2)?.width ?? 'none',
  },
];
