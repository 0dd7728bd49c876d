/** Kerf and offset against plane geometry (CHECKS I). */
import type { CheckRow } from '../../quantity/check.ts';
import { kerf, wireOffset } from './spark-gap.ts';

const row = (id: string, question: string, value: string, ours: () => number): CheckRow => ({
  id,
  source: 'plane-geometry',
  place: 'a wire and what it clears',
  how: 'recomputed',
  question,
  value,
  ours,
});

export const checks: readonly CheckRow[] = [
  row('I-09', 'offset of 0.25 wire, gap 0.03, stock 0.10, mm', '0.255', () => wireOffset.compute({ d: 0.25, gap: 0.03, stock: 0.1 })),
  row('I-09b', 'kerf of 0.25 wire with a gap of 0.031, mm', '0.312', () => kerf.compute({ d: 0.25, gap: 0.031 })),
];
