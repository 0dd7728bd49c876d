/** Thermal cutting and water jet against standards and papers (CHECKS G). */

import { there } from '../../../test/there.ts';
import type { CheckRow } from '../../quantity/check.ts';
import { sideBySide } from '../../sequence/sequence.ts';
import { jetEdge, jetPerpendicularity, jetRoughness } from './jet-edge.ts';
import { jetNumbers, processRows } from './process-table.ts';
import { perpendicularity, thermalRoughness, thermalScope, waterJetFeed } from './thermal-and-jet-laws.ts';

const iso = { source: 'iso-9013', place: 'formulas of the ranges, on a secondary page', how: 'recomputed' } as const;
const u = (range: keyof typeof perpendicularity, thickness: number): number => perpendicularity[range].compute({ thickness });
const rz = (range: keyof typeof thermalRoughness, thickness: number): number => thermalRoughness[range].compute({ thickness });

const jet = { abrasive: 1, machinability: jetNumbers.steel?.value ?? Number.NaN, quality: 1 } as const;
const metric = (more: { readonly thickness?: number; readonly quality?: number } = {}): number =>
  waterJetFeed.compute({ ...jet, pressure: 345, orifice: 0.33, abrasiveFlow: 340, thickness: 25.4, tube: 1.02, ...more });
/** u of ranges 1 to 5 in mm, then Rz5 of ranges 1 to 4 in µm, by thickness in mm, as the ranges print out. */
const table: readonly (readonly [thickness: number, u: readonly string[], rz: readonly string[]])[] = [
  [6, ['0.068', '0.192', '0.46', '0.92', '1.41'], ['13.6', '44.8', '77.2', '120.8']],
  [12, ['0.086', '0.234', '0.52', '1.04', '1.62'], ['17.2', '49.6', '84.4', '131.6']],
  [50, ['0.200', '0.500', '0.90', '1.80', '2.95'], ['40.0', '80.0', '130.0', '200.0']],
];

const tableRows = table.flatMap(([thickness, us, rzs]): readonly CheckRow[] => [
  ...sideBySide([1, 2, 3, 4, 5] as const, us).map(([range, value]) => ({
    id: `G-01-${thickness}-${range}`,
    ...iso,
    how: range === 5 ? ('memory' as const) : ('recomputed' as const),
    question: `u of ${thickness} mm, range ${range}, mm`,
    value,
    ours: () => u(range, thickness),
  })),
  ...sideBySide([1, 2, 3, 4] as const, rzs).map(([range, value]) => ({
    id: `G-02-${thickness}-${range}`,
    ...iso,
    question: `Rz5 of ${thickness} mm, range ${range}, µm`,
    value,
    ours: () => rz(range, thickness),
  })),
]);

/** Thickness limits of the standard, asked from just outside them. */
const scopeRows = (
  [
    ['oxyfuel', 2, 'low', '3'],
    ['oxyfuel', 301, 'high', '300'],
    ['plasma', 0.4, 'low', '0.5'],
    ['plasma', 151, 'high', '150'],
    ['laser', 0.4, 'low', '0.5'],
  ] as const
).map(
  ([process, thickness, side, value]): CheckRow => ({
    id: `G-04-${process}-${side}`,
    source: 'iso-9013',
    place: 'scope',
    how: 'printed and seen',
    question: `${process} cut of ${thickness} mm: ${side === 'low' ? 'least' : 'largest'} thickness that the standard covers, mm`,
    value,
    ours: () => {
      const answer = thermalScope(process, thickness);
      return answer.kind === 'outside' ? answer[side] : answer.kind;
    },
  }),
);

const jetRough = (thickness: number): number =>
  jetRoughness.compute({ base: jetEdge.roughBase.value, slope: jetEdge.roughSlope.value, thickness });
const jetSquare = (thickness: number): number =>
  jetPerpendicularity.compute({ base: jetEdge.squareBase.value, slope: jetEdge.squareSlope.value, thickness });

export const checks: readonly CheckRow[] = [
  ...tableRows,
  ...scopeRows,
  ...sideBySide([1, 2, 3, 4] as const, ['0.080', '0.220', '0.500', '1.000']).map(
    ([range, value]): CheckRow => ({
      id: `G-01-${range}`,
      ...iso,
      question: `u of 10 mm, range ${range}, mm`,
      value,
      ours: () => u(range, 10),
    }),
  ),
  ...sideBySide([1, 2, 3, 4] as const, ['25', '60', '100', '155']).map(
    ([range, value]): CheckRow => ({
      id: `G-02-${range}`,
      ...iso,
      question: `Rz5 of 25 mm, range ${range}, µm`,
      value,
      ours: () => rz(range, 25),
    }),
  ),
  { id: 'G-03', ...iso, how: 'memory', question: 'u of 25 mm, range 5, mm', value: '2.075', ours: () => u(5, 25) },
  {
    id: 'G-04',
    source: 'iso-9013',
    place: 'scope',
    how: 'printed and seen',
    question: 'laser cut of 40 mm: largest thickness that the standard covers, mm',
    value: '32',
    ours: () => {
      const answer = thermalScope('laser', 40);
      return answer.kind === 'outside' ? answer.high : answer.kind;
    },
  },
  {
    id: 'G-05a',
    source: 'zeng-kim',
    place: 'feed law; recomputed',
    how: 'memory',
    question: 'jet in 25.4 mm mild steel, 345 MPa, 0.33, 340 g/min, 1.02, mm/min',
    value: '148.26',
    ours: metric,
  },
  {
    id: 'G-06a',
    source: 'zeng-kim',
    place: 'exponents; recomputed',
    how: 'memory',
    question: 'twice the thickness, ratio',
    value: '0.4506',
    ours: () => metric({ thickness: 50.8 }) / metric(),
  },
  {
    id: 'G-06b',
    source: 'zeng-kim',
    place: 'exponents; recomputed',
    how: 'memory',
    question: 'quality 3 instead of 1, ratio',
    value: '0.2827',
    ours: () => metric({ quality: 3 }) / metric(),
  },
  {
    id: 'CP-oxyfuel',
    source: 'common-practice',
    place: 'flame cutting',
    how: 'memory',
    question: 'flame cuts unalloyed steel and titanium, and neither stainless nor aluminium',
    value: 'yes',
    ours: () => {
      const not = there(processRows.find((r) => r.name === 'oxyfuel')).not;
      const cut = not.steel === undefined && not.titanium === undefined;
      return cut && not.stainless !== undefined && not.aluminium !== undefined ? 'yes' : 'no';
    },
  },
  ...(
    [
      ['rough', 'Ra', 1.3, () => jetRough(60) / jetRough(10)],
      ['square', 'perpendicularity', 1.3, () => jetSquare(60) / jetSquare(10)],
    ] as const
  ).map(
    ([id, what, least, ours]): CheckRow => ({
      id: `CP-jet-${id}`,
      source: 'common-practice',
      place: 'abrasive jets',
      how: 'memory',
      question: `${what} of a jet's edge in 60 mm against 10 mm`,
      value: '2',
      ours,
      limits: { low: least, high: 6, reason: 'it grows with depth; how much, shops do not agree' },
    }),
  ),
];
