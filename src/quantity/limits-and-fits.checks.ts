/** What ISO 286-1 says (CHECKS B). */
import type { CheckRow } from './check.ts';
import { zoneLimits } from './limits-and-fits.ts';

const source = 'iso-286-1';
/** Of the hole's zone whose lower limit is the size itself. */
const width = (grade: number, size: number): number | string => {
  const answer = zoneLimits(`H${grade}`, size);
  return answer.kind === 'limits' ? answer.high - answer.low : answer.reason;
};
/** Tightest and loosest, of our limits for the hole and for the shaft. */
const clearance = (hole: string, shaft: string, size: number): string => {
  const [outer, inner] = [zoneLimits(hole, size), zoneLimits(shaft, size)];
  if (outer.kind !== 'limits' || inner.kind !== 'limits') return 'not in the table';
  return `${outer.low - inner.high}…${outer.high - inner.low}`;
};
const zone = (name: string, size: number): string => {
  const answer = zoneLimits(name, size);
  return answer.kind === 'limits' ? `${answer.high}/${answer.low}` : answer.reason;
};

/** Size, then H7 with g6, h6 and p6 as tightest…loosest clearance. */
const fits: readonly (readonly [number, string, string, string])[] = [
  [3, '2…18', '0…16', '-12…4'],
  [6, '4…24', '0…20', '-20…0'],
  [10, '5…29', '0…24', '-24…0'],
  [16, '6…35', '0…29', '-29…0'],
  [25, '7…41', '0…34', '-35…-1'],
  [40, '9…50', '0…41', '-42…-1'],
  [60, '10…59', '0…49', '-51…-2'],
  [100, '12…69', '0…57', '-59…-2'],
  [150, '14…79', '0…65', '-68…-3'],
  [200, '15…90', '0…75', '-79…-4'],
];

/** As printed, at the upper end of each step. */
const A_D_F: readonly (readonly [size: number, value: string])[] = [
  [3, '-270 -20 -6'],
  [6, '-270 -30 -10'],
  [10, '-280 -40 -13'],
  [14, '-290 -50 -16'],
  [24, '-300 -65 -20'],
  [40, '-310 -80 -25'],
  [50, '-320 -80 -25'],
  [65, '-340 -100 -30'],
  [80, '-360 -100 -30'],
  [100, '-380 -120 -36'],
  [120, '-410 -120 -36'],
  [140, '-460 -145 -43'],
];

export const checks: readonly CheckRow[] = [
  { id: 'B-01', source, place: 'table 1', how: 'secondary page', question: 'IT7 at 25 mm, µm', value: '21', ours: () => width(7, 25) },
  { id: 'B-02a', source, place: 'table 1', how: 'secondary page', question: 'IT7 at 10 mm, µm', value: '15', ours: () => width(7, 10) },
  {
    id: 'B-02b',
    source,
    place: 'table 1',
    how: 'secondary page',
    question: 'IT7 at 10.001 mm, µm',
    value: '18',
    ours: () => width(7, 10.001),
  },
  {
    id: 'B-04',
    source,
    place: 'zones',
    how: 'secondary page',
    question: 'clearance of 25 H7/g6, µm',
    value: '7…41',
    ours: () => clearance('H7', 'g6', 25),
  },
  {
    id: 'B-05',
    source,
    place: 'zones',
    how: 'secondary page',
    question: 'clearance of 50 H7/h6, µm',
    value: '0…41',
    ours: () => clearance('H7', 'h6', 50),
  },
  {
    id: 'B-06',
    source,
    place: 'zones',
    how: 'secondary page',
    question: 'clearance of 100 H7/p6, µm',
    value: '-59…-2',
    ours: () => clearance('H7', 'p6', 100),
  },
  {
    id: 'B-07',
    source,
    place: 'zones',
    how: 'secondary page',
    question: 'clearance of 3 H7/p6, a transition, µm',
    value: '-12…4',
    ours: () => clearance('H7', 'p6', 3),
  },
  {
    id: 'B-08',
    source,
    place: 'zones',
    how: 'secondary page',
    question: 'limits of 200 g6, µm',
    value: '-15/-44',
    ours: () => zone('g6', 200),
  },
  {
    id: 'B-09',
    source,
    place: 'part 2, corrigendum of 2006',
    how: 'secondary page',
    question: 'limits of 300 f9, µm',
    value: '-56/-186',
    ours: () => zone('f9', 300),
  },
  ...A_D_F.map(
    ([size, value]): CheckRow => ({
      id: `B-adf-${size}`,
      source,
      place: 'fundamental deviations, a secondary table',
      how: 'secondary page',
      question: `upper deviations of the shafts a, d and f at ${size} mm, µm`,
      value,
      ours: () => ['a11', 'd10', 'f7'].map((z) => zone(z, size).split('/')[0]).join(' '),
    }),
  ),
  ...fits.flatMap(([size, g, h, p]): readonly CheckRow[] => [
    {
      id: `B-fit-${size}-g6`,
      source,
      place: 'zones',
      how: 'secondary page',
      question: `clearance of ${size} H7/g6, µm`,
      value: g,
      ours: () => clearance('H7', 'g6', size),
    },
    {
      id: `B-fit-${size}-h6`,
      source,
      place: 'zones',
      how: 'secondary page',
      question: `clearance of ${size} H7/h6, µm`,
      value: h,
      ours: () => clearance('H7', 'h6', size),
    },
    {
      id: `B-fit-${size}-p6`,
      source,
      place: 'zones',
      how: 'secondary page',
      question: `clearance of ${size} H7/p6, µm`,
      value: p,
      ours: () => clearance('H7', 'p6', size),
    },
  ]),
];
