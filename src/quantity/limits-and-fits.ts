/** ISO 286-1 tolerance grades and the few zones a wire shop meets. The table is shipped: the formula does not give it back everywhere. */

import { lastOf, type NonEmpty } from '../sequence/sequence.ts';

/** Sizes are 'over a, up to and including b': 10 mm is in 6 to 10, 10.001 mm in 10 to 18. */
const steps = [
  [3, 0],
  [6, 1],
  [10, 2],
  [18, 3],
  [30, 4],
  [50, 5],
  [80, 6],
  [120, 7],
  [180, 8],
  [250, 9],
  [315, 10],
  [400, 11],
  [500, 12],
] as const;

type Step = (typeof steps)[number][1];

/** One number for each step. */
type BySteps = Readonly<Record<Step, number>>;

const widths: Readonly<Record<number, BySteps>> = {
  5: [4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27],
  6: [6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40],
  7: [10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63],
  8: [14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97],
  9: [25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155],
  10: [40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250],
  11: [60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400],
};

/** Upper deviation of f and g (negative), lower deviation of m, n, p and of the hole D, µm, by step. */
const fundamental: Readonly<Record<'f' | 'g' | 'm' | 'n' | 'p' | 'D', BySteps>> = {
  f: [-6, -10, -13, -16, -20, -25, -30, -36, -43, -50, -56, -62, -68],
  g: [-2, -4, -5, -6, -7, -9, -10, -12, -14, -15, -17, -18, -20],
  m: [2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23],
  n: [4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40],
  p: [6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68],
  D: [20, 30, 40, 50, 65, 80, 100, 120, 145, 170, 190, 210, 230],
};

/** Lower deviation of the hole A, µm; its steps are narrower than those of the other zones. */
const deviationA: NonEmpty<readonly [upTo: number, deviation: number]> = [
  [6, 270],
  [10, 280],
  [18, 290],
  [30, 300],
  [40, 310],
  [50, 320],
  [65, 340],
  [80, 360],
  [100, 380],
  [120, 410],
  [140, 460],
  [160, 520],
  [180, 580],
  [200, 660],
  [225, 740],
  [250, 820],
  [280, 920],
  [315, 1050],
  [355, 1200],
  [400, 1350],
  [450, 1500],
  [500, 1650],
];

type Stepped =
  /** Width of grade IT5 to IT11, µm. */
  { readonly kind: 'width'; readonly width: number; readonly step: Step } | { readonly kind: 'not in the table'; readonly reason: string };

const stepped = (grade: number, size: number): Stepped => {
  const row = widths[grade];
  if (row === undefined) return { kind: 'not in the table', reason: `grade IT${grade} is not in the table; IT5 to IT11 are` };
  const step = size > 0 ? steps.find(([end]) => size <= end)?.[1] : undefined;
  if (step === undefined) return { kind: 'not in the table', reason: `${size} mm is not in the table; sizes up to 500 mm are` };
  return { kind: 'width', width: row[step], step };
};

export type ZoneAnswer =
  /** Deviations from the nominal size, µm. */
  { readonly kind: 'limits'; readonly low: number; readonly high: number } | { readonly kind: 'not in the table'; readonly reason: string };

/** Limits of a zone: holes 'H7', 'JS9', 'P9', 'D10', 'A11', shafts 'a11', 'd10', 'f7', 'g6', 'h6' to 'p6' and their neighbours, at a size in mm. */
export const zoneLimits = (zone: string, size: number): ZoneAnswer => {
  const parts = /^([A-Za-z]+)(\d{1,2})$/.exec(zone);
  if (parts === null) return { kind: 'not in the table', reason: `'${zone}' is not a tolerance zone like H7 or g6` };
  const [, letter = '', grade = ''] = parts;
  const answer = stepped(Number(grade), size);
  if (answer.kind !== 'width') return answer;
  const { width, step } = answer;
  if (letter === 'H') return { kind: 'limits', low: 0, high: width };
  if (letter === 'h') return { kind: 'limits', low: -width, high: 0 };
  if (letter === 'f' || letter === 'g') {
    const high = fundamental[letter][step];
    return { kind: 'limits', low: high - width, high };
  }
  if (letter === 'm' || letter === 'n' || letter === 'p') {
    const low = fundamental[letter][step];
    return { kind: 'limits', low, high: low + width };
  }
  if (letter === 'JS') return { kind: 'limits', low: -Math.floor(width / 2), high: Math.floor(width / 2) };
  if (letter === 'A' || letter === 'D') {
    const low = letter === 'D' ? fundamental.D[step] : deviationAt(size);
    return { kind: 'limits', low, high: low + width };
  }
  // The shafts of these letters lie as far below the size as the holes lie above it.
  if (letter === 'a' || letter === 'd') {
    const off = letter === 'd' ? fundamental.D[step] : deviationAt(size);
    return { kind: 'limits', low: -off - width, high: -off };
  }
  // In finer grades the hole P lies elsewhere by a step's own amount; the keyways that want it are of grade 9.
  if (letter === 'P' && Number(grade) >= 9) return { kind: 'limits', low: -fundamental.p[step] - width, high: -fundamental.p[step] };
  return { kind: 'not in the table', reason: `zone ${letter} is not in the table; A, D, H, JS, P9, a, d, f, g, h, m, n and p are` };
};

const deviationAt = (size: number): number => {
  const [, deviation] = deviationA.find(([end]) => size <= end) ?? lastOf(deviationA);
  return deviation;
};
