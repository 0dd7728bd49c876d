/** What standards and charts say of finishes (CHECKS A). */
import type { CheckRow } from './check.ts';
import { microinches, parseFinish, raFromMicroinches, raFromVdi, rzBand } from './finish.ts';

const ra = (k: number): number => raFromVdi.compute({ vdi: k });
/** The list of the source gives two digits: its classes and what it prints for them. */
const vdiList: readonly (readonly [number, string])[] = [
  [0, '0.10'],
  [1, '0.11'],
  [7, '0.22'],
  [8, '0.25'],
  [9, '0.28'],
  [10, '0.32'],
  [11, '0.35'],
  [12, '0.40'],
  [13, '0.45'],
  [14, '0.50'],
  [15, '0.56'],
  [16, '0.63'],
  [23, '1.4'],
  [24, '1.6'],
  [26, '2.0'],
  [27, '2.2'],
  [28, '2.5'],
  [29, '2.8'],
  [30, '3.2'],
  [31, '3.5'],
  [32, '4.0'],
  [33, '4.5'],
  [34, '5.0'],
  [35, '5.6'],
  [37, '7.1'],
  [38, '7.9'],
  [39, '8.9'],
];

export const checks: readonly CheckRow[] = [
  {
    id: 'A-04',
    source: 'vdi-3400',
    place: 'formula',
    how: 'secondary page',
    question: 'Ra of class 12, µm',
    value: '0.3981',
    ours: () => ra(12),
  },
  {
    id: 'A-05',
    source: 'vdi-3400',
    place: 'formula',
    how: 'secondary page',
    question: 'Ra of class 33, µm',
    value: '4.4668',
    ours: () => ra(33),
  },
  ...vdiList.map(
    ([k, value]): CheckRow => ({
      id: `A-list-${k}`,
      source: 'vdi-3400',
      place: 'list of classes',
      how: 'secondary page',
      question: `Ra of class ${k}, µm, two digits`,
      value,
      ours: () => ra(k),
    }),
  ),
  {
    id: 'A-06',
    source: 'inch',
    place: 'definition',
    how: 'recomputed',
    question: '63 µin in µm',
    value: '1.6002',
    ours: () => raFromMicroinches.compute({ microinches: 63 }),
  },
  {
    id: 'A-06b',
    source: 'inch',
    place: 'definition',
    how: 'recomputed',
    question: '1 µm in µin',
    value: '39.370',
    ours: () => microinches.compute({ ra: 1 }),
  },
  ...['0.025', '0.05', '0.1', '0.2', '0.4', '0.8', '1.6', '3.2', '6.3', '12.5', '25', '50'].map(
    (value, i): CheckRow => ({
      id: `A-07-${i + 1}`,
      source: 'iso-1302',
      place: 'annex, N numbers',
      how: 'secondary page',
      question: `Ra of N${i + 1}, µm`,
      value,
      ours: () => raOf(`N${i + 1}`),
    }),
  ),
  {
    id: 'A-10a',
    source: 'roughness-charts',
    place: 'first chart: Ra 1.6 beside Rz 6.3',
    how: 'secondary page',
    question: 'least Rz of Ra 1.6 µm',
    value: '6.3',
    ours: () => rzBand(1.6).low,
    wider: {
      tolerance: 0.15,
      reason: 'the chart goes by preferred numbers: 0.8, 1.6 and 3.2 stand beside 3.2, 6.3 and 12.5, a ratio of 4',
    },
  },
  {
    id: 'A-10b',
    source: 'roughness-charts',
    place: 'second chart: Rz = 7.2 Ra',
    how: 'secondary page',
    question: 'is 7.2 µm within the band of Rz for Ra 1 µm, and at most 10 % below its end?',
    value: '7.2',
    ours: () => rzBand(1).high,
    limits: { low: 7.2, high: 7.92, reason: 'the band has to reach the greater of two charts' },
  },
];

const raOf = (text: string): number | string => {
  const answer = parseFinish(text);
  return answer.kind === 'finish' ? answer.ra : answer.kind;
};
