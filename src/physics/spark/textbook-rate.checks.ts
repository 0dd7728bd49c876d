/** The textbook's rate law against its worked examples (CHECKS D1, D2). */
import type { CheckRow } from '../../quantity/check.ts';
import { erosionResistance, feedFromRemoval, kalpakjianRemoval, textbookRemoval, textbookRemovalInch } from './textbook-rate.ts';

const perSecond = (current: number, melting: number): number => textbookRemoval.compute({ current, melting });
const groover = { source: 'groover', place: 'section 26.3.1, eq. 26.7 and problems' } as const;

/** Heat J/kgK, density g/cm³, conductivity W/mK, melting °C: handbook values from memory. */
const metals = {
  W: [132, 19.3, 173, 3422],
  Mo: [251, 10.22, 138, 2623],
  Cu: [385, 8.96, 390, 1085],
  Fe: [450, 7.87, 80, 1538],
  Al: [897, 2.7, 237, 660],
  Zn: [388, 7.13, 116, 420],
} as const;

const resistance = ([heat, density, conductivity, melting]: (typeof metals)[keyof typeof metals]): number =>
  erosionResistance.compute({ heat, density, conductivity, melting });

const order = (): string =>
  Object.entries(metals)
    .map(([name, constants]) => ({ name, index: resistance(constants) }))
    .sort((a, b) => b.index - a.index)
    .map((m) => m.name)
    .join('>');

export const checks: readonly CheckRow[] = [
  { id: 'D-01', ...groover, question: '25 A, 1100 °C, mm³/s', printed: '3.0144', ours: () => perSecond(25, 1100) },
  { id: 'D-01b', ...groover, question: 'the same as the book rounds it', printed: '3.01', ours: () => perSecond(25, 1100) },
  { id: 'D-02a', ...groover, question: 'tungsten 3410 °C, 20 A, mm³/h', printed: '2158.8', ours: () => perSecond(20, 3410) * 3600 },
  {
    id: 'D-02b',
    ...groover,
    question: 'tin 232 °C, 20 A, mm³/h',
    printed: '58878',
    ours: () => perSecond(20, 232) * 3600,
  },
  {
    id: 'D-03',
    ...groover,
    question: '10 A, 1500 °C, kerf 0.165 mm, 7 mm high: feed, mm/min',
    printed: '42.771',
    ours: () => feedFromRemoval.compute({ removal: perSecond(10, 1500) * 60, kerf: 0.165, height: 7 }),
  },
  {
    id: 'D-04',
    ...groover,
    question: '7 A, 1220 °F, kerf 0.007 in, 0.75 in high: feed, in/min',
    printed: '1.0829',
    ours: () => feedFromRemoval.compute({ removal: textbookRemovalInch.compute({ current: 7, melting: 1220 }), kerf: 0.007, height: 0.75 }),
  },
  {
    id: 'D-05',
    source: 'el-hofy',
    place: 'ch. 12, p. 395',
    question: 'the second textbook against the first, ratio',
    printed: '1.0040',
    ours: () => kalpakjianRemoval.compute({ current: 10, melting: 1500 }) / (perSecond(10, 1500) * 60),
  },
  {
    id: 'D-06',
    ...groover,
    question: 'US form against SI form at 1500 °C, ratio',
    printed: '1.000',
    ours: () => (textbookRemovalInch.compute({ current: 10, melting: 2732 }) * 16387.064) / (perSecond(10, 1500) * 60),
    wider: { tolerance: 0.001, reason: 'both constants are printed to three digits' },
  },
  {
    id: 'D-18',
    source: 'erosion-index',
    place: 'order only',
    question: 'order of erosion resistance',
    printed: 'W>Mo>Cu>Fe>Al>Zn',
    ours: order,
  },
  {
    id: 'D-18b',
    source: 'erosion-index',
    place: 'recomputed from handbook constants',
    question: 'erosion resistance of tungsten, J²/m⁴s',
    printed: '5.16e15',
    ours: () => resistance(metals.W),
  },
];
