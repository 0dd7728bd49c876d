/** Hexagons and squares across their corners, as every table of bolt heads and bar has them. */
import type { CheckRow } from '../../quantity/check.ts';
import { acrossCorners } from './polygon.ts';

export const checks: readonly CheckRow[] = [
  {
    id: 'H-17a',
    source: 'plane-geometry',
    place: 'hexagon',
    how: 'recomputed',
    question: 'across corners of a hexagon of 24 mm, mm',
    value: '27.713',
    ours: () => acrossCorners.compute({ acrossFlats: 24, sides: 6 }),
  },
  {
    id: 'H-17b',
    source: 'plane-geometry',
    place: 'square',
    how: 'recomputed',
    question: 'diagonal of a square of 10 mm, mm',
    value: '14.142',
    ours: () => acrossCorners.compute({ acrossFlats: 10, sides: 4 }),
  },
];
