/** What standards and handbooks print of splines (CHECKS H-08): basic sizes, deviations, factors and tolerances of the classes. */
import type { CheckRow } from '../../quantity/check.ts';
import { printPlain } from '../../text/print/print.ts';
import { over, teeth } from '../gear/examples.checks.ts';
import { isoHubMinor, splineSizes } from './basic-sizes.ts';
import { fundamentalDeviation } from './fundamental-deviations.ts';
import { splineThickness } from './spline-teeth.ts';
import {
  ANSI_SHARES,
  ansiMachining,
  ansiVariation,
  effectiveVariation,
  ISO_CLASSES,
  isoTotal,
  leadVariation,
  pitchVariation,
  profileVariation,
} from './tolerance-formulas.ts';

/** Deviation over tan α in mm by the pitch diameter up to: d at 30, 37.5 and 45°, then e, then f. */
const REDUCTIONS = `
3 0.035 0.026 0.020 0.024 0.018 0.014 0.010 0.008 0.006 | 6 0.052 0.039 0.030 0.035 0.026 0.020 0.017 0.013 0.010 |
10 0.069 0.052 0.040 0.043 0.033 0.025 0.023 0.017 0.013 | 18 0.087 0.065 0.050 0.055 0.042 0.032 0.028 0.021 0.016 |
30 0.113 0.085 0.065 0.069 0.052 0.040 0.035 0.026 0.020 | 50 0.139 0.104 0.080 0.087 0.065 0.050 0.043 0.033 0.025 |
80 0.173 0.130 0.100 0.104 0.078 0.060 0.052 0.039 0.030 | 120 0.208 0.156 0.120 0.125 0.094 0.072 0.062 0.047 0.036 |
180 0.251 0.189 0.145 0.147 0.111 0.085 0.074 0.056 0.043 | 250 0.294 0.222 0.170 0.173 0.130 0.100 0.087 0.065 0.050 |
315 0.329 0.248 0.190 0.191 0.143 0.110 0.097 0.073 0.056 | 400 0.364 0.274 0.210 0.217 0.163 0.125 0.107 0.081 0.062 |
500 0.398 0.300 0.230 0.234 0.176 0.135 0.118 0.089 0.068 | 630 0.450 0.339 0.260 0.251 0.189 0.145 0.132 0.099 0.076 |
800 0.502 0.378 0.290 0.277 0.209 0.160 0.139 0.104 0.080 | 1000 0.554 0.417 0.320 0.294 0.222 0.170 0.149 0.112 0.086`;

const reduction = (column: number, diameter: number): number => {
  const deviation = fundamentalDeviation((['d', 'e', 'f'] as const)[Math.floor(column / 3)] ?? 'h', diameter);
  const angle = [30, 37.5, 45][column % 3] as number;
  return deviation === 'none' ? Number.NaN : -deviation / Math.tan((angle * Math.PI) / 180);
};

/** Class 5 in ten thousandths of an inch, by diametral pitch: machining and variation for 10 and for 20 teeth. */
const CLASS_5 = `
3 15.8 23.5 17.6 27.0 | 5 14.5 20.3 16.0 22.6 | 8 12.5 17.0 14.0 19.0 | 12 12.0 15.7 13.0 17.4 | 20 11.7 14.2 12.4 15.4 |
48 11.7 12.2 12.4 13.4 | 80 9.6 11.0 10.2 12.0 | 128 9.5 9.8 10.0 10.6`;

const inTable = (table: string): readonly (readonly string[])[] =>
  table
    .trim()
    .split(/\s*\|\s*/)
    .map((row) => row.split(' '));

const factors = (key: '4' | '5' | '6' | '7'): string => {
  const { pitch, profile, lead } = ISO_CLASSES[key];
  return [...pitch, ...profile, ...lead].join(' ');
};

const iso = (name: 'hubMajor' | 'shaftMajor'): number => 2 * (20 + (splineSizes('ISO 4156', 30, 'flat', undefined)?.[name] ?? Number.NaN));
const inch = (angle: 30 | 37.5 | 45, root: 'flat' | 'fillet', pitch: number): string => {
  const s = splineSizes('ANSI B92.1', angle, root, pitch);
  return s === undefined ? 'none' : `${s.hubMajor} ${s.shaftMajor} ${s.hubMinor} ${s.shaftMinor} ${s.widening}`;
};

interface Part {
  readonly words: string;
  readonly module: number;
  readonly reference: number;
  readonly thickness: number;
}

/** The hub and the shaft of the sheet; the tooth of the shaft is thicker by its profile shift. */
const PARTS: readonly Part[] = [
  { words: 'm 1, z 18, space of 1.570796 mm', module: 1, reference: 18, thickness: Math.PI / 2 },
  { words: 'm 1.25, z 18, tooth of 2.691436 mm', module: 1.25, reference: 22.5, thickness: 2.691435877 },
];

const sheet = [
  { key: '5', totals: ['52.73635273', '60.91951152'], variations: ['21.04458377', '22.36294206'] },
  { key: '6', totals: ['82.40055114', '95.18673675'], variations: ['30.376624', '32.27246326'] },
  { key: '7', totals: ['131.8408818', '152.2987788'], variations: ['45.47458554', '48.18292812'] },
] as const;

const variationOf = (key: '5' | '6' | '7', { module, reference }: Part): number => {
  const { pitch, profile, lead } = ISO_CLASSES[key];
  return effectiveVariation.compute({
    pitch: pitchVariation.compute({ of: (Math.PI * reference) / 2, by: pitch[0], at: pitch[1] }),
    profile: profileVariation.compute({ of: module * (1 + (0.0125 * reference) / module), by: profile[0], at: profile[1] }),
    lead: leadVariation.compute({ of: 20, by: lead[0], at: lead[1] }),
  });
};

const help = { source: 'involute-splines', place: 'general CAD help, basic sizes', how: 'secondary page' as const };

export const checks: readonly CheckRow[] = [
  {
    id: 'H-08c',
    ...help,
    question: 'm 2, z 20, 30°, flat root: major diameter of the hub, mm',
    value: '43.0',
    ours: () => iso('hubMajor'),
  },
  { id: 'H-08d', ...help, question: 'm 2, z 20, 30°: major diameter of the shaft, mm', value: '42.0', ours: () => iso('shaftMajor') },
  ...(
    [
      ['H-08e', 30, 'flat', 12, '1.35 1 1 1.35 0'],
      ['H-08f', 30, 'fillet', 12, '1.8 1 1 1.8 0'],
      ['H-08g', 30, 'fillet', 16, '1.8 1 1 2 0'],
      ['H-08h', 37.5, 'fillet', 12, '1.6 1 0.8 1.3 0.1'],
      ['H-08i', 45, 'fillet', 12, '1.4 1 0.6 1 0.2'],
    ] as const
  ).map(([id, angle, root, pitch, value]) => ({
    id,
    ...help,
    question: `inches, ${angle}°, ${root}, pitch ${pitch}: major of hub and shaft, minor of hub and shaft, widening, in 1/P`,
    value,
    ours: () => inch(angle, root, pitch),
  })),
  {
    id: 'H-08j',
    ...help,
    question: '45°, 1 DP: smallest effective space, 0.5 π + 0.2, in',
    value: '1.7708',
    ours: () => splineThickness.compute({ module: 1, widening: 0.2, away: 0, backlash: 0, pressureAngle: Math.PI / 4 }),
  },
  ...inTable(REDUCTIONS).flatMap(([diameter = '', ...values]) =>
    values.map((value, column) => ({
      id: `H-30-${diameter}-${column + 1}`,
      source: 'iso-4156-classes',
      place: 'handbook table 17, reduction es / tan α',
      how: 'secondary page' as const,
      question: `fit ${'def'[Math.floor(column / 3)]}, ${[30, 37.5, 45][column % 3]}°, pitch diameter ${diameter} mm, mm`,
      value: value,
      ours: () => reduction(column, Number(diameter)),
    })),
  ),
  ...(
    [
      ['4', '2.5 6.3 1.6 10 0.8 4'],
      ['5', '3.55 9 2.5 16 1 5'],
      ['6', '5 12.5 4 25 1.25 6.3'],
      ['7', '7.1 18 6.3 40 2 10'],
    ] as const
  ).map(([key, value]) => ({
    id: `H-31-${key}`,
    source: 'iso-4156-classes',
    place: 'handbook table 16',
    how: 'secondary page' as const,
    question: `class ${key}: factors of index, profile and lead variation`,
    value,
    ours: () => factors(key),
  })),
  ...(
    [
      ['4', '10'],
      ['5', '16'],
      ['6', '25'],
      ['7', '40'],
    ] as const
  ).map(([key, value]) => ({
    id: `H-32-${key}`,
    source: 'iso-4156-classes',
    place: 'two open programs',
    how: 'secondary page' as const,
    question: `class ${key}: factor of the tolerance unit`,
    value,
    ours: () => ISO_CLASSES[key].factor,
  })),
  ...inTable(CLASS_5).flatMap(([pitch = '', ...values]) =>
    values.map((value, i) => {
      const formula = i % 2 === 0 ? ansiMachining : ansiVariation;
      const count = i < 2 ? 10 : 20;
      return {
        id: `H-33-${pitch}-${i + 1}`,
        source: 'ansi-b92-1',
        place: 'handbook table of class 5',
        how: 'memory' as const,
        question: `pitch ${pitch}, ${count} teeth: ${printPlain(formula.name)}, 1/10,000 in`,
        value: value,
        ours: () => formula.compute({ pitch: Number(pitch), teeth: count, share: 1 }) / 25.4e-4,
      };
    }),
  ),
  {
    id: 'H-34',
    source: 'ansi-b92-1',
    place: 'footnote of the table',
    how: 'secondary page' as const,
    question: 'classes 4, 6 and 7 as shares of class 5',
    value: '0.71 1.4 2',
    ours: () => `${ANSI_SHARES[4]} ${ANSI_SHARES[6]} ${ANSI_SHARES[7]}`,
  },
  ...sheet.flatMap(({ key, totals, variations }) =>
    [0, 1].flatMap((i): readonly CheckRow[] => [
      {
        id: `H-35t-${key}-${i + 1}`,
        source: 'spline-sheet',
        place: 'T + λ',
        how: 'printed and seen' as const,
        question: `class ${key}, ${PARTS[i]?.words}: total tolerance, µm`,
        value: totals[i] as string,
        ours: () => 1000 * isoTotal.compute({ ...(PARTS[i] as Part), factor: ISO_CLASSES[key].factor }),
      },
      {
        id: `H-35v-${key}-${i + 1}`,
        source: 'spline-sheet',
        place: 'λ',
        how: 'printed and seen' as const,
        question: `class ${key}, ${PARTS[i]?.words}, engaged over 20 mm: variation, µm`,
        value: variations[i] as string,
        ours: () => 1000 * variationOf(key, PARTS[i] as Part),
      },
    ]),
  ),
  {
    id: 'H-36',
    source: 'spline-sheet',
    place: 'minor diameter of the hub',
    how: 'printed and seen' as const,
    question: 'm 1, z 18, 30°: minor diameter of the hub, mm',
    value: '17.12808318',
    ours: () => isoHubMinor(18, 30),
  },
  {
    id: 'H-37',
    source: 'spline-sheet',
    place: 'over pins, even teeth',
    how: 'recomputed' as const,
    question: 'm 1.25, z 18, 20°, tooth of 2.590671877 mm, pins of 2.7: over pins, mm',
    value: '28.28294563',
    ours: () => over({ ...teeth(1.25, 18), thickness: { ...teeth(1.25, 18).thickness, value: 2.590671877 } }, 2.7),
  },
];
