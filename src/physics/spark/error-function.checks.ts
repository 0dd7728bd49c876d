/** The error function against the handbook's table. */
import type { CheckRow } from '../../quantity/check.ts';
import { erfc, ierfc } from './error-function.ts';

const row = (id: string, question: string, printed: string, ours: () => number): CheckRow => ({
  id,
  source: 'abramowitz-stegun',
  place: 'table 7.1',
  question,
  printed,
  ours,
});

export const checks: readonly CheckRow[] = [
  row('D-erf-1', 'erf(0.5)', '0.5204998778', () => 1 - erfc(0.5)),
  row('D-erf-2', 'erf(1)', '0.8427007929', () => 1 - erfc(1)),
  row('D-erf-3', 'erf(2)', '0.9953222650', () => 1 - erfc(2)),
  row('D-erf-4', 'erfc(3)', '2.20904970e-5', () => erfc(3)),
  row('D-erf-5', '√π times the integral of erfc from 0', '1.0000000000', () => ierfc(0) * Math.sqrt(Math.PI)),
];
