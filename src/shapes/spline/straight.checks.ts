/** Straight-sided splines and serrations as others print them: ISO 14 whole, a row of SAE J499, DIN 5481 as remembered. */
import type { CheckRow } from '../../quantity/check.ts';
import { DIN_5481, DIN_5481_ANGLE } from './din-5481.ts';
import { hubZones, ISO_14, SHAFT_ZONES, symmetryOf } from './iso-14.ts';
import { type SaeFit, saePart, saeSizes } from './sae-j499.ts';
import { roundRoot, serrationPitch } from './serration.ts';
import { hubAngle, serrationNominal, serrationSchema } from './serration-request.ts';
import { chordBetween } from './straight-spline.ts';

/** As printed, by inner diameter: splines, outer diameter and width in the light and in the medium series. */
const PRINTED = `
11 - - - 6 14 3 | 13 - - - 6 16 3.5 | 16 - - - 6 20 4 | 18 - - - 6 22 5 | 21 - - - 6 25 5 | 23 6 26 6 6 28 6 | 26 6 30 6 6 32 6 |
28 6 32 7 6 34 7 | 32 8 36 6 8 38 6 | 36 8 40 7 8 42 7 | 42 8 46 8 8 48 8 | 46 8 50 9 8 54 9 | 52 8 58 10 8 60 10 | 56 8 62 10 8 65 10 |
62 8 68 12 8 72 12 | 72 10 78 12 10 82 12 | 82 10 88 12 10 92 12 | 92 10 98 14 10 102 14 | 102 10 108 16 10 112 16 | 112 10 120 18 10 125 18`
  .trim()
  .split(/\s*\|\s*/);

const rowOf = (inner: number): string =>
  [
    inner,
    ...(['light', 'medium'] as const).map((series) => {
      const row = [...ISO_14.values()].find((r) => r.inner === inner && r.series === series);
      return row === undefined ? '- - -' : `${row.splines} ${row.outer} ${row.width}`;
    }),
  ].join(' ');

const inches = (fit: SaeFit, key: 'inner' | 'width'): number => saeSizes(fit, 25.4)[key] / 25.4;

/** Torque per inch of length at 1000 psi: splines, mean radius and depth have to be right together. */
const torque = (fit: SaeFit): number => {
  const { splines } = saeSizes(fit, 25.4);
  const inner = inches(fit, 'inner');
  return 1000 * splines * ((1 + inner) / 4) * ((1 - inner) / 2);
};

const SAE: readonly (readonly [fit: SaeFit, inner: string, torque: string])[] = [
  ['6A', '0.900', '143'],
  ['6B', '0.850', '208'],
  ['6C', '0.800', '270'],
];

const serration = (size: string) => DIN_5481.get(size) as { readonly pitchDiameter: number; readonly teeth: number };

/** ° ′ ″ rounded to the second. */
const degrees = (teeth: number): string => {
  const seconds = Math.round((hubAngle.compute({ angle: DIN_5481_ANGLE, teeth }) * 180 * 3600) / Math.PI);
  return `${Math.floor(seconds / 3600)}° ${Math.floor(seconds / 60) % 60}′ ${seconds % 60}″`;
};

const root = (part: 'shaft' | 'hub'): number => {
  const nominal = serrationNominal(serrationSchema.parse({ kind: 'serration', size: '8x10', rootRadius: 0.08 }));
  return nominal.kind === 'nominal' ? roundRoot(part, nominal, nominal.rootRadius) : Number.NaN;
};

export const checks: readonly CheckRow[] = [
  ...PRINTED.map((value) => ({
    id: `H-ISO14-${value.split(' ')[0]}`,
    source: 'iso-14',
    place: 'table of dimensions',
    how: 'secondary page' as const,
    question: `light and medium series at ${value.split(' ')[0]} mm: splines, outer diameter, width`,
    value,
    ours: () => rowOf(Number(value.split(' ')[0])),
  })),
  {
    id: 'H-ISO14-hub',
    source: 'iso-14',
    place: 'tolerances',
    how: 'secondary page' as const,
    question: 'zones of B, D, d in the hole, not treated and treated after broaching',
    value: 'H9 H10 H7, H11 H10 H7',
    ours: () =>
      [false, true]
        .map(hubZones)
        .map((z) => `${z.width} ${z.outer} ${z.inner}`)
        .join(', '),
  },
  {
    id: 'H-ISO14-shaft',
    source: 'iso-14',
    place: 'tolerances',
    how: 'secondary page' as const,
    question: 'zones of B, D, d of the shaft, sliding, close, fixed',
    value: 'd10 a11 f7, f9 a11 g7, h10 a11 h7',
    ours: () =>
      Object.values(SHAFT_ZONES)
        .map((z) => `${z.width} ${z.outer} ${z.inner}`)
        .join(', '),
  },
  {
    id: 'H-ISO14-symmetry',
    source: 'iso-14',
    place: 'symmetry',
    how: 'secondary page' as const,
    question: 'symmetry at widths of 3, 3.5, 6, 7, 10, 12 and 18 mm',
    value: '0.010 0.012 0.012 0.015 0.015 0.018 0.018',
    ours: () => [3, 3.5, 6, 7, 10, 12, 18].map((b) => symmetryOf(b).toFixed(3)).join(' '),
  },
  ...SAE.flatMap(([fit, inner, carried]): readonly CheckRow[] => [
    {
      id: `H-J499-${fit}-inner`,
      source: 'sae-j499',
      place: 'table 3, 1 in',
      how: 'secondary page' as const,
      question: `inner diameter of fit ${fit}, in`,
      value: inner,
      ours: () => inches(fit, 'inner'),
    },
    {
      id: `H-J499-${fit}-torque`,
      source: 'sae-j499',
      place: 'table 3, 1 in',
      how: 'secondary page' as const,
      question: `torque of fit ${fit}, lbf in per inch`,
      value: carried,
      ours: () => torque(fit),
    },
  ]),
  {
    id: 'H-J499-width',
    source: 'sae-j499',
    place: 'table 3, 1 in',
    how: 'secondary page' as const,
    question: 'width, in',
    value: '0.250',
    ours: () => saePart.compute({ part: inches('6B', 'width'), outer: 1 }),
  },
  ...(
    [
      ['8x10', '1.010'],
      ['10x12', '1.152'],
    ] as const
  ).map(([size, value]) => ({
    id: `H-5481-pitch-${size}`,
    source: 'din-5481',
    place: 'table, from memory',
    how: 'memory' as const,
    question: `pitch of ${size}, mm`,
    value,
    ours: () => serrationPitch.compute(serration(size)),
  })),
  ...(
    [
      [28, '47° 8′ 34″'],
      [30, '48° 0′ 0″'],
      [32, '48° 45′ 0″'],
      [36, '50° 0′ 0″'],
    ] as const
  ).map(([teeth, value]) => ({
    id: `H-5481-angle-${teeth}`,
    source: 'din-5481',
    place: 'angles of the hub, from memory',
    how: 'memory' as const,
    question: `angle of a hub’s space with ${teeth} teeth`,
    value,
    ours: () => degrees(teeth),
  })),
  {
    id: 'H-5481-shaft-root',
    source: 'din-5481',
    place: 'table, from memory',
    how: 'memory' as const,
    question: 'root of the shaft 8 × 10 with R 0.08, mm',
    value: '8.26',
    ours: () => root('shaft'),
    wider: { tolerance: 0.015, reason: 'the table rounds from angles and chords to hundredths, and it is from memory' },
  },
  {
    id: 'H-5481-hub-root',
    source: 'din-5481',
    place: 'table, from memory',
    how: 'memory' as const,
    question: 'root of the hub 8 × 10 with R 0.08, mm',
    value: '9.90',
    ours: () => root('hub'),
  },
  {
    id: 'H-CHORD',
    source: 'plane-geometry',
    place: 'square in a circle',
    how: 'recomputed' as const,
    question: 'chord between four splines without width on a circle of 10 mm: side of the square in it, mm',
    value: '7.071',
    ours: () => chordBetween.compute({ diameter: 10, width: 0, splines: 4 }),
  },
];
