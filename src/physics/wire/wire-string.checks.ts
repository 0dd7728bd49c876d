/** Wire mechanics against statics and arithmetic (CHECKS F). */
import type { CheckRow } from '../../quantity/check.ts';
import { cornerLag, wireSag } from './wire-string.ts';

const sag = (load: number, span: number, tension: number): number => wireSag.compute({ load, span, tension });
const row = (id: string, question: string, value: string, ours: () => number): CheckRow => ({
  id,
  source: 'statics',
  place: 'textbook formula, recomputed',
  how: 'recomputed',
  question,
  value,
  ours,
});

export const checks: readonly CheckRow[] = [
  row('F-01', 'deflection under 1 N/m, 50 mm, 12 N, µm', '26.042', () => sag(1, 50, 12)),
  row('F-01b', 'deflection under 1 N/m, 100 mm, 12 N, µm', '104.167', () => sag(1, 100, 12)),
  row('F-01c', 'deflection under 0.5 N/m, 80 mm, 22 N, µm', '18.182', () => sag(0.5, 80, 22)),
  row('F-02a', 'deflection with twice the span, ratio', '4.000', () => sag(1, 100, 12) / sag(1, 50, 12)),
  row('F-02b', 'deflection with twice the tension, ratio', '0.500', () => sag(1, 50, 24) / sag(1, 50, 12)),
  {
    id: 'F-05',
    source: 'plane-geometry',
    place: 'circle cut with a trailing wire',
    how: 'recomputed',
    question: 'error of R 0.5 mm with 50 µm lag, µm',
    value: '2.506',
    ours: () => cornerLag.compute({ lag: 50, radius: 0.5 }),
  },
  {
    id: 'F-05b',
    source: 'plane-geometry',
    place: 'circle cut with a trailing wire',
    how: 'recomputed',
    question: 'error of R 1.0 mm with 50 µm lag, µm',
    value: '1.2508',
    ours: () => cornerLag.compute({ lag: 50, radius: 1 }),
  },
];
