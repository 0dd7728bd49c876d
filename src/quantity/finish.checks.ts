/** What standards and charts say of finishes (CHECKS A). */
import type { CheckRow } from './check.ts';
import { microinches, parseFinish, raFromMicroinches, raFromVdi, rqFromRa, rqPerRa, rzBand, vdiFromRa } from './finish.ts';

const vdi = (ra: number): number => vdiFromRa.compute({ ra });
const ra = (k: number): number => raFromVdi.compute({ vdi: k });
const covers = (band: { readonly low: number; readonly high: number }, low: number, high: number): string =>
  band.low <= low && band.high >= high ? 'yes' : 'no';

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
  { id: 'A-01', source: 'vdi-3400', place: 'formula', question: 'class of Ra 0.1 µm', printed: '0.000', ours: () => vdi(0.1) },
  { id: 'A-02', source: 'vdi-3400', place: 'formula', question: 'class of Ra 1.6 µm', printed: '24.082', ours: () => vdi(1.6) },
  { id: 'A-03', source: 'vdi-3400', place: 'formula', question: 'class of Ra 3.2 µm', printed: '30.103', ours: () => vdi(3.2) },
  { id: 'A-04', source: 'vdi-3400', place: 'formula', question: 'Ra of class 12, µm', printed: '0.3981', ours: () => ra(12) },
  { id: 'A-05', source: 'vdi-3400', place: 'formula', question: 'Ra of class 33, µm', printed: '4.4668', ours: () => ra(33) },
  ...vdiList.map(
    ([k, printed]): CheckRow => ({
      id: `A-list-${k}`,
      source: 'vdi-3400',
      place: 'list of classes',
      question: `Ra of class ${k}, µm, two digits`,
      printed,
      ours: () => ra(k),
    }),
  ),
  {
    id: 'A-06',
    source: 'inch',
    place: 'definition',
    question: '63 µin in µm',
    printed: '1.6002',
    ours: () => raFromMicroinches.compute({ microinches: 63 }),
  },
  {
    id: 'A-06b',
    source: 'inch',
    place: 'definition',
    question: '1 µm in µin',
    printed: '39.370',
    ours: () => microinches.compute({ ra: 1 }),
  },
  { id: 'A-07a', source: 'iso-1302', place: 'annex, N numbers', question: 'Ra of N7, µm', printed: '1.6', ours: () => raOf('N7') },
  { id: 'A-07b', source: 'iso-1302', place: 'annex, N numbers', question: 'Ra of N5, µm', printed: '0.4', ours: () => raOf('N5') },
  { id: 'A-07c', source: 'iso-1302', place: 'annex, N numbers', question: 'Ra of N12, µm', printed: '50', ours: () => raOf('N12') },
  {
    id: 'A-08',
    source: 'texture-definitions',
    place: 'definition of Rq, sine profile',
    question: 'Rq of a sine profile with Ra 0.8 µm',
    printed: '0.88858',
    ours: () => rqFromRa.compute({ ra: 0.8, ratio: rqPerRa.sine }),
  },
  {
    id: 'A-09',
    source: 'texture-definitions',
    place: 'definition of Rq, Gaussian heights',
    question: 'Rq of a Gaussian profile with Ra 0.8 µm',
    printed: '1.00265',
    ours: () => rqFromRa.compute({ ra: 0.8, ratio: rqPerRa.gaussian }),
  },
  {
    id: 'A-10',
    source: 'roughness-charts',
    place: 'both charts',
    question: 'is Rz of Ra 1.0 µm a band that covers 4.0 to 7.6?',
    printed: 'yes',
    ours: () => covers(rzBand(1), 4, 7.6),
  },
];

const raOf = (text: string): number | string => {
  const answer = parseFinish(text);
  return answer.kind === 'finish' ? answer.ra : answer.kind;
};
