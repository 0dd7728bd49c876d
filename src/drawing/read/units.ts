/** Decides how long a drawing unit is, and says so wherever the file leaves room for doubt. */

import type { Bounds } from '../../geometry/measure.ts';
import type { Finding } from '../../text/finding.ts';
import type { DrawnFile } from '../curve/curve.ts';
import type { DrawingUnits } from '../drawing.ts';
import { find } from '../findings.ts';
import { length } from '../place-in-file.ts';

/** Millimetres in one unit, by the names people write. The inch is 25.4 mm exactly (international inch). */
const KNOWN = new Map<string, { readonly name: string; readonly millimetres: number }>([
  ...named('mm', 1, ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters']),
  ...named('cm', 10, ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters']),
  ...named('m', 1000, ['m', 'metre', 'metres', 'meter', 'meters']),
  ...named('µm', 0.001, ['µm', 'μm', 'um', 'micron', 'microns', 'micrometre', 'micrometres', 'micrometer', 'micrometers']),
  ...named('inch', 25.4, ['in', 'inch', 'inches', '"', '″']),
  ...named('mil', 0.0254, ['mil', 'mils', 'thou']),
  ...named('ft', 304.8, ['ft', 'foot', 'feet', "'", '′']),
]);

function named(name: string, millimetres: number, words: readonly string[]): [string, { name: string; millimetres: number }][] {
  return words.map((word) => [word, { name, millimetres }]);
}

/** The unit a word stands for, or undefined. */
export const unitNamed = (word: string): { readonly name: string; readonly millimetres: number } | undefined =>
  KNOWN.get(word.trim().toLowerCase());

export interface UnitsDecided {
  readonly units: DrawingUnits;
  readonly findings: readonly Finding[];
}

/**
 * The user comes first, then the file; where neither says, millimetres are assumed and asked about.
 *
 * @param bounds of everything drawn, in drawing units; empty when nothing is
 */
export const decideUnits = (
  file: Pick<DrawnFile, 'units' | 'unitless' | 'format'>,
  asked: string | undefined,
  bounds: Bounds,
): UnitsDecided => {
  const findings: Finding[] = [];
  const wanted = asked === undefined ? undefined : unitNamed(asked);
  if (asked !== undefined && !wanted) findings.push(unknownUnit(asked, file.units));
  if (wanted)
    return {
      units: { ...wanted, basis: 'user' },
      findings: [...findings, ...overruled(wanted, file.units), ...implausible(wanted, bounds, true)],
    };
  if (file.units) return { units: file.units, findings: [...findings, ...implausible(file.units, bounds, false)] };
  const assumed: DrawingUnits = { name: 'mm', millimetres: 1, basis: 'assumed' };
  return { units: assumed, findings: [...findings, missing(file.unitless, bounds)] };
};

const unknownUnit = (asked: string, instead: DrawingUnits | undefined): Finding =>
  find('units-unknown', `'${asked}' is not a unit known here.`, {
    place: { kind: 'field', path: 'units' },
    done: instead ? `The unit of the file, ${instead.name}, was kept.` : 'The unit was decided as if none had been given.',
    remedy: 'Give one of mm, cm, m, µm, inch, mil, ft.',
  });

const overruled = (wanted: { readonly name: string; readonly millimetres: number }, own: DrawingUnits | undefined): Finding[] =>
  own && own.millimetres !== wanted.millimetres
    ? [
        find('units-overruled', `The file says it is drawn in ${own.name}, and ${wanted.name} was asked for.`, {
          done: `Every number of the drawing was read as ${wanted.name}.`,
        }),
      ]
    : [];

const missing = (unitless: boolean, bounds: Bounds): Finding =>
  find('units-missing', `The file ${unitless ? 'says that its unit is none' : 'does not say in which unit it is drawn'}.${sizes(bounds)}`, {
    done: 'Millimetres were assumed.',
    remedy: 'Say which unit the drawing is in.',
  });

/** ' In mm it measures 12 × 5 mm, in inches 304.8 × 127 mm.' */
const sizes = (bounds: Bounds): string =>
  isEmpty(bounds) ? '' : ` Read as mm it measures ${sizeIn(bounds, 1)}; read as inches it would be ${sizeIn(bounds, 25.4)}.`;

const sizeIn = (b: Bounds, millimetres: number): string =>
  `${length((b.maxX - b.minX) * millimetres)} by ${length((b.maxY - b.minY) * millimetres)}`;

const isEmpty = (b: Bounds): boolean => !(b.maxX >= b.minX && b.maxY >= b.minY);

/** mm: the travel of the largest wire machines is about this (common practice, no source). */
const LARGEST = 2000;
/** mm: less than the finest wires and their gap are wide. */
const SMALLEST = 0.2;

const implausible = (unit: { readonly name: string; readonly millimetres: number }, bounds: Bounds, asked: boolean): Finding[] => {
  if (isEmpty(bounds)) return [];
  const size = Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY) * unit.millimetres;
  if (size === 0 || (size <= LARGEST && size >= SMALLEST)) return [];
  const than =
    size > LARGEST
      ? `more than the ${LARGEST} mm that any machine is likely to take`
      : `less than the ${SMALLEST} mm of a thin wire's own cut`;
  const other = unit.millimetres === 1 ? { name: 'inches', millimetres: 25.4 } : { name: 'mm', millimetres: 1 };
  return [
    find('units-implausible', `In ${unit.name}, the whole drawing measures ${sizeIn(bounds, unit.millimetres)}, ${than}.`, {
      done: `${unit.name} was kept, as ${asked ? 'asked' : 'the file says'}.`,
      remedy: `Check the unit: read as ${other.name} it would measure ${sizeIn(bounds, other.millimetres)}.`,
    }),
  ];
};
