/** The sizes that a part by numbers would be measured by, as a table for the terminal and the papers. */

import type { ShapeSize } from '../../shapes/shape.ts';
import { type ControlUnit, INCHES } from '../../text/control-unit.ts';
import { printPlain } from '../../text/print/print.ts';
import { column, type PaperBlock } from '../paper.ts';

export const shapeTable = (
  sizes: readonly ShapeSize[],
  unit: ControlUnit,
  measured: 'with room to write' | 'only told',
): PaperBlock & { kind: 'table' } => {
  const limited = sizes.some((s) => s.limits !== undefined);
  const toWrite = measured === 'with room to write';
  return {
    kind: 'table',
    columns: [
      column('Size', 4),
      column('Is', 1.5, 'right'),
      column('', 0.6),
      ...(limited ? [column('From', 1.3, 'right'), column('To', 1.3, 'right')] : []),
      ...(toWrite ? [column('Measured', 1.3)] : []),
    ],
    rows: sizes.map(({ figure, limits }) => [
      printPlain(figure.name),
      sizeText(figure.value, figure.unit, unit),
      unitText(figure.unit, unit),
      ...(limited ? (limits === undefined ? ['', ''] : [limits.low, limits.high].map((v) => sizeText(v, figure.unit, unit))) : []),
      ...(toWrite ? [isTaken(figure.unit) ? '__________' : ''] : []),
    ]),
  };
};

/** Counts and angles are told, but nobody writes them down from a gauge. */
const isTaken = (unit: string): boolean => unit === 'mm';

const unitText = (unit: string, { name }: ControlUnit): string => (unit === 'mm' ? name : unit === '1' ? '' : unit);

/** A tenth of a µm for lengths, as handbooks print the sizes of gears; thousandths of a thou in inches; a few seconds of an angle. */
const sizeText = (value: number, unit: string, control: ControlUnit): string => {
  if (unit === 'mm') return (value / control.millimetres).toFixed(control.name === INCHES.name ? 6 : 4);
  if (unit === '°') return value.toFixed(3);
  return String(Number(value.toPrecision(8)));
};
