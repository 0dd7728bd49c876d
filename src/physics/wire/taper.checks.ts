/** Taper and offsets against plane geometry (CHECKS I). */
import type { CheckRow } from '../../quantity/check.ts';
import { wireOffset } from '../cut/spark-gap.ts';
import { guideShift, wallLength } from './taper.ts';

const row = (id: string, question: string, printed: string, ours: () => number): CheckRow => ({
  id,
  source: 'plane-geometry',
  place: 'recomputed',
  question,
  printed,
  ours,
});
const shift = (angle: number, height: number): number => guideShift.compute({ angle, height });

export const checks: readonly CheckRow[] = [
  row('I-09', 'offset of 0.25 wire, gap 0.03, stock 0.10, mm', '0.255', () => wireOffset.compute({ d: 0.25, gap: 0.03, stock: 0.1 })),
  row('I-10a', 'shift at 10° over 50 mm, mm', '8.81635', () => shift(10, 50)),
  row('I-10b', 'wall length at 10° over 50 mm, mm', '50.77133', () => wallLength.compute({ angle: 10, height: 50 })),
  row('I-10c', 'shift at 30° over 40 mm, mm', '23.09401', () => shift(30, 40)),
  row('I-11a', '5°, 50 mm part, guides 20 above and 15 below: whole shift, mm', '7.43654', () => shift(5, 85)),
  row('I-11b', 'the same, share below the part, mm', '1.31233', () => shift(5, 15)),
];
