/** What the DXF reference says of units and of planes seen from below, asked of whole files. */
import type { CheckRow } from '../../quantity/check.ts';
import type { DrawnFile } from '../curve/curve.ts';
import { readDxf } from './read-dxf.ts';

const row = (id: string, place: string, question: string, value: string, ours: CheckRow['ours']): CheckRow => ({
  id,
  source: 'dxf-reference',
  place,
  how: place === '$INSUNITS' ? 'printed and seen' : 'recomputed',
  question,
  value,
  ours,
});

const fileOf = (lines: string): DrawnFile => readDxf(new TextEncoder().encode(lines.trim().split(/\s+/).join('\n')));

const withUnit = (code: number): DrawnFile =>
  fileOf(`0 SECTION 2 HEADER 9 $INSUNITS 70 ${code} 0 ENDSEC 0 SECTION 2 ENTITIES 0 ENDSEC 0 EOF`);
/** As text, because these are exact. */
const millimetres = (code: number): string => String(withUnit(code).units?.millimetres);

const fromBelow = fileOf('0 SECTION 2 ENTITIES 0 ARC 8 0 10 0 20 0 40 10 50 0 51 30 210 0 220 0 230 -1 0 ENDSEC 0 EOF').curves.map(
  (c) => c.curve,
)[0];
const endFromBelow = (axis: 'x' | 'y'): number => (fromBelow?.kind === 'arc' ? fromBelow.to[axis] : Number.NaN);

export const checks: readonly CheckRow[] = [
  row('K-04a', '$INSUNITS', 'millimetres in one unit of code 1', '25.4', () => millimetres(1)),
  row('K-04b', '$INSUNITS', 'millimetres in one unit of code 4', '1', () => millimetres(4)),
  row('K-04c', '$INSUNITS', 'millimetres in one unit of code 9', '0.0254', () => millimetres(9)),
  row('K-04d', '$INSUNITS', 'millimetres in one unit of code 13', '0.001', () => millimetres(13)),
  ...(
    [
      [2, '304.8'],
      [3, '1609344'],
      [5, '10'],
      [6, '1000'],
      [8, '0.0000254'],
      [10, '914.4'],
      [14, '100'],
    ] as const
  ).map(([code, value]) => ({
    ...row(`K-04-${code}`, 'unit by its code', `millimetres in one unit of code ${code}`, value, () => Number(millimetres(code))),
    wider: { tolerance: Number(value) * 1e-9, reason: 'exact but for binary fractions' },
  })),
  row('K-04e', '$INSUNITS', 'code 0 names no unit and has to be asked for', 'yes', () => {
    const file = withUnit(0);
    return file.unitless && file.units === undefined ? 'yes' : 'no';
  }),
  row('K-05d', 'object coordinates', 'x of the end of an ARC R 10, 0 to 30 degrees, extrusion -Z, as read', '-8.66025', () =>
    endFromBelow('x'),
  ),
  row('K-05e', 'object coordinates', 'y of the end of that ARC as read', '5.00000', () => endFromBelow('y')),
];
