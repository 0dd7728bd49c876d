/** Depths, flats and diameters of threads as tables print them, against the points of our tools. */

import type { CheckRow } from '../../quantity/check.ts';
import { printPlain } from '../../text/print/print.ts';
import { formTool } from './form-tool.ts';
import { grooveDepth, pointFlat, roundFlat, THREAD_FORMS } from './thread-forms.ts';
import { blankDepth, sideClearance } from './tool-correction.ts';
import { askedPoint } from './tool-point.ts';
import { edges } from './tool-profile.ts';

const INCH = 25.4;
const RAD = Math.PI / 180;

const pointOf = (numbers: Omit<Parameters<typeof formTool.schema.parse>[0] & object, 'kind'>) => {
  const point = askedPoint(formTool.schema.parse({ kind: 'form-tool', ...numbers }));
  if ('finding' in point) throw new Error(printPlain(point.finding.text));
  return point;
};

/** Threads per inch, total depth, flat at the crest of the nut, flat at the root: inches. */
const ACME: readonly (readonly [number, string, string, string])[] = [
  [16, '0.0362', '0.0232', '0.0206'],
  [14, '0.0407', '0.0265', '0.0239'],
  [12, '0.0467', '0.0309', '0.0283'],
  [10, '0.0600', '0.0371', '0.0319'],
  [8, '0.0725', '0.0463', '0.0411'],
  [6, '0.0933', '0.0618', '0.0566'],
  [5, '0.1100', '0.0741', '0.0689'],
  [4, '0.1350', '0.0927', '0.0875'],
  [3, '0.1767', '0.1236', '0.1184'],
  [2.5, '0.2100', '0.1483', '0.1431'],
  [2, '0.2600', '0.1853', '0.1802'],
];

const STUB: readonly (readonly [number, string, string])[] = [
  [16, '0.01875', '0.0264'],
  [14, '0.02143', '0.0302'],
  [12, '0.02500', '0.0352'],
  [10, '0.03000', '0.0422'],
  [8, '0.03750', '0.0528'],
  [6, '0.05000', '0.0704'],
  [5, '0.06000', '0.0845'],
  [4, '0.07500', '0.1056'],
  [3, '0.10000', '0.1408'],
  [2, '0.15000', '0.2112'],
];

/** Nominal diameter, pitch, minor diameter of the screw, mm. */
const TRAPEZOIDAL: readonly (readonly [number, number, string])[] = [
  [8, 1.5, '6.200'],
  [10, 2, '7.500'],
  [12, 3, '8.500'],
  [42, 7, '34.000'],
  [46, 8, '37.000'],
  [44, 12, '31.000'],
];

const TRAPEZOIDAL_POINTS: readonly (readonly [number, string])[] = [
  [2, '0.60'],
  [3, '0.96'],
  [4, '1.33'],
  [5, '1.70'],
  [6, '1.93'],
  [8, '2.66'],
  [10, '3.39'],
  [12, '4.12'],
];

/** The rounded factor of the flat, 0.3707 or 0.4224, is off by less than a unit of its last digit. */
const ROUNDED_FACTOR = { tolerance: 0.00008, reason: 'the table takes a rounded 0.0026 or 0.0052 off a rounded flat' };

const acmeRows: readonly CheckRow[] = ACME.flatMap(([threadsPerInch, depth, crest, root]): readonly CheckRow[] => {
  const row = (part: string, question: string, value: string, ours: () => number): CheckRow => ({
    id: `H-T4${part}-${threadsPerInch}`,
    source: 'asme-b1-5',
    place: 'basic dimensions of Acme threads',
    how: 'secondary page' as const,
    question: `${question}, Acme ${threadsPerInch} threads per inch, in`,
    value,
    ours,
    ...(part === 'a' ? {} : { wider: ROUNDED_FACTOR }),
  });
  const pitch = INCH / threadsPerInch;
  return [
    row('a', 'total depth', depth, () => pointOf({ form: 'acme', threadsPerInch }).depth / INCH),
    row(
      'b',
      'flat at the crest of the nut',
      crest,
      () => pointFlat.compute({ pitch, height: pitch / 2, clearance: 0, left: 14.5 * RAD, right: 14.5 * RAD }) / INCH,
    ),
    row('c', 'flat at the root', root, () => pointOf({ form: 'acme', threadsPerInch }).tool.flat / INCH),
  ];
});

const stubRows: readonly CheckRow[] = STUB.flatMap(([threadsPerInch, height, flat]): readonly CheckRow[] => {
  const stub = { form: 'stub-acme', threadsPerInch, crestClearance: 0 } as const;
  const about = { source: 'asme-b1-8', place: 'basic dimensions of stub Acme threads', how: 'secondary page' as const };
  return [
    {
      ...about,
      id: `H-T5a-${threadsPerInch}`,
      question: `basic height, stub Acme ${threadsPerInch} threads per inch, in`,
      value: height,
      ours: () => pointOf(stub).depth / INCH,
    },
    {
      ...about,
      id: `H-T5b-${threadsPerInch}`,
      question: `basic width of the flat, stub Acme ${threadsPerInch} threads per inch, in`,
      value: flat,
      ours: () => pointOf(stub).tool.flat / INCH,
      wider: ROUNDED_FACTOR,
    },
  ];
});

const buttress = (
  form: 'buttress-3-30' | 'buttress-7-45',
  id: string,
  source: string,
  value: string,
  more: Pick<CheckRow, 'wider'>,
): readonly CheckRow[] => {
  const point = () => pointOf({ form, pitch: 1 });
  return [
    {
      id: `${id}a`,
      source,
      place: 'proportions of the thread',
      how: 'secondary page' as const,
      question: 'flat at the crest, in pitches: what the groove leaves there',
      value,
      ours: () => 1 - edges(point().tool, point().depth).width,
      ...more,
    },
    {
      id: `${id}b`,
      source,
      place: 'proportions of the thread',
      how: 'secondary page' as const,
      question: 'width of the groove at the pitch line, in pitches',
      value: '0.500',
      ours: () => edges(point().tool, point().pitchLine as number).width,
    },
  ];
};

export const checks: readonly CheckRow[] = [
  ...acmeRows,
  ...stubRows,
  ...TRAPEZOIDAL.map(
    ([diameter, pitch, value]): CheckRow => ({
      id: `H-T6a-${diameter}x${pitch}`,
      source: 'iso-2904',
      place: 'table of diameters, d3',
      how: 'secondary page' as const,
      question: `minor diameter of the screw Tr ${diameter} × ${pitch}, mm`,
      value,
      ours: () => diameter - 2 * pointOf({ form: 'trapezoidal', pitch }).depth,
    }),
  ),
  ...TRAPEZOIDAL_POINTS.map(
    ([pitch, value]): CheckRow => ({
      id: `H-T6b-${pitch}`,
      source: 'iso-2904',
      place: 'width of the turning tool, from memory',
      how: 'memory' as const,
      question: `width of the point for a trapezoidal thread of pitch ${pitch} mm, mm`,
      value,
      ours: () => pointOf({ form: 'trapezoidal', pitch }).tool.flat,
    }),
  ),
  {
    id: 'H-T7',
    source: 'square-thread',
    place: 'width of the cutting edge, half the pitch',
    how: 'secondary page' as const,
    question: 'width of the point for a square thread of 4 per inch, in',
    value: '0.1250',
    ours: () => pointOf({ form: 'square', threadsPerInch: 4 }).tool.flat / INCH,
  },
  ...buttress('buttress-7-45', 'H-T8', 'asme-b1-9', '0.1631', {
    wider: { tolerance: 0.0002, reason: 'depth and radius of the root are factors rounded to four digits' },
  }),
  ...buttress('buttress-3-30', 'H-T9', 'din-513', '0.26384', {
    wider: { tolerance: 0.00002, reason: 'depth and radius of the root are rounded factors' },
  }),
  {
    id: 'H-T9c',
    source: 'plane-geometry',
    place: 'circle between two lines at right angles',
    how: 'recomputed' as const,
    question: 'width between the sharp corners that a full round of R 1 mm takes in a v of 90°, 2 (√2 - 1) mm',
    value: '0.8284',
    ours: () => roundFlat.compute({ radius: 1, left: 45 * RAD, right: 45 * RAD }),
  },
  {
    id: 'H-T9d',
    source: 'plane-geometry',
    place: 'a block tilted by 60°',
    how: 'recomputed' as const,
    question: 'depth on the blank of a groove of 2 mm, no rake, mm',
    value: '1.0000',
    ours: () => blankDepth.compute({ depth: 2, workRadius: 0, tilt: 60 * RAD, rake: 0 }),
  },
  {
    id: 'H-T9e',
    source: 'plane-geometry',
    place: 'right triangle 3, 4, 5',
    how: 'recomputed' as const,
    question: 'with work of R 3 mm, rake 90° less a hair and no tilt: way along the face to R 5 mm, mm',
    value: '4.0000',
    ours: () => blankDepth.compute({ depth: 2, workRadius: 3, tilt: -Math.PI / 2, rake: Math.PI / 2 }),
  },
  {
    id: 'H-T9f',
    source: 'plane-geometry',
    place: 'a wall tilted by 45°, seen beside a flank of 30°',
    how: 'recomputed' as const,
    question: 'side clearance, atan 1/2, °',
    value: '26.565',
    ours: () => sideClearance.compute({ tilt: 45 * RAD, flank: 30 * RAD }),
  },
  {
    id: 'H-T9g',
    source: 'asme-b1-5',
    place: 'total depth of Acme threads, P/2 + 0.010 in',
    how: 'secondary page' as const,
    question: 'depth of the groove of 4 threads per inch, in',
    value: '0.1350',
    ours: () =>
      grooveDepth.compute({ height: INCH / 8, clearance: THREAD_FORMS.acme.root === 'flat' ? THREAD_FORMS.acme.clearance(INCH / 4) : 0 }) /
      INCH,
  },
];
