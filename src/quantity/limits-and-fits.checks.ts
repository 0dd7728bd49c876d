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

/** Ends of the steps, mm, and what stands at each: widths of the grades, then deviations of shafts nearest to the size and of the hole D, µm. */
const ENDS = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500] as const;

const WIDTHS: readonly (readonly [grade: number, value: string, how: CheckRow['how']])[] = [
  [5, '4 5 6 8 9 11 13 15 18 20 23 25 27', 'secondary page'],
  [6, '6 8 9 11 13 16 19 22 25 29 32 36 40', 'secondary page'],
  [7, '10 12 15 18 21 25 30 35 40 46 52 57 63', 'secondary page'],
  [8, '14 18 22 27 33 39 46 54 63 72 81 89 97', 'secondary page'],
  [9, '25 30 36 43 52 62 74 87 100 115 130 140 155', 'memory'],
  [10, '40 48 58 70 84 100 120 140 160 185 210 230 250', 'memory'],
  [11, '60 75 90 110 130 160 190 220 250 290 320 360 400', 'memory'],
];

const DEVIATIONS: readonly (readonly [zone: string, end: 'low' | 'high', value: string, how: CheckRow['how']])[] = [
  ['f7', 'high', '-6 -10 -13 -16 -20 -25 -30 -36 -43 -50 -56 -62 -68', 'memory'],
  ['g6', 'high', '-2 -4 -5 -6 -7 -9 -10 -12 -14 -15 -17 -18 -20', 'secondary page'],
  ['m6', 'low', '2 4 6 7 8 9 11 13 15 17 20 21 23', 'secondary page'],
  ['n6', 'low', '4 8 10 12 15 17 20 23 27 31 34 37 40', 'secondary page'],
  ['p6', 'low', '6 12 15 18 22 26 32 37 43 50 56 62 68', 'secondary page'],
  ['D10', 'low', '20 30 40 50 65 80 100 120 145 170 190 210 230', 'memory'],
  ['P9', 'high', '-6 -12 -15 -18 -22 -26 -32 -37 -43 -50 -56 -62 -68', 'memory'],
];

/** Steps of the hole A end here, mm, which other zones do not know. */
const A_ENDS = [3, 6, 10, 18, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500] as const;
const A_DEVIATIONS = '270 270 280 290 300 310 320 340 360 380 410 460 520 580 660 740 820 920 1050 1200 1350 1500 1650';

const limit = (name: string, end: 'low' | 'high', size: number): number => {
  const answer = zoneLimits(name, size);
  return answer.kind === 'limits' ? answer[end] : Number.NaN;
};

const widthsAt = (grade: number, sizes: readonly number[]): string => sizes.map((size) => width(grade, size)).join(' ');
const limitsAt = (name: string, end: 'low' | 'high', sizes: readonly number[]): string =>
  sizes.map((size) => limit(name, end, size)).join(' ');

/** What stands just above each end but the last is what stands at the next. */
const justAbove = (ends: readonly number[]): readonly number[] => ends.slice(0, -1).map((end) => end * 1.0001);

const whole = (
  [id, question, value, how]: readonly [string, string, string, CheckRow['how']],
  at: CheckRow['ours'],
  above: CheckRow['ours'],
): readonly CheckRow[] => {
  const about = { source, place: 'table, whole row', how };
  return [
    { ...about, id, question: `${question} at the ends of the steps, µm`, value, ours: at },
    {
      ...about,
      id: `${id}-above`,
      question: `${question} just above the ends of the steps, µm`,
      value: value.split(' ').slice(1).join(' '),
      ours: above,
    },
  ];
};

const wholeRows: readonly CheckRow[] = [
  ...WIDTHS.flatMap(([grade, value, how]) =>
    whole(
      [`B-IT${grade}`, `IT${grade}`, value, how],
      () => widthsAt(grade, ENDS),
      () => widthsAt(grade, justAbove(ENDS)),
    ),
  ),
  ...DEVIATIONS.flatMap(([name, end, value, how]) =>
    whole(
      [`B-${name}`, `deviation of ${name}`, value, how],
      () => limitsAt(name, end, ENDS),
      () => limitsAt(name, end, justAbove(ENDS)),
    ),
  ),
  ...whole(
    ['B-A11', 'deviation of A', A_DEVIATIONS, 'memory'],
    () => limitsAt('A11', 'low', A_ENDS),
    () => limitsAt('A11', 'low', justAbove(A_ENDS)),
  ),
];

export const checks: readonly CheckRow[] = [
  ...wholeRows,
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
