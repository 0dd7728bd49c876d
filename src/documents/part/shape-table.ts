/** The sizes that a part by numbers would be measured by, as a table for the terminal and the papers. */

import type { ShapeSize } from '../../result/shown.ts';
import { type ControlUnit, INCHES } from '../../text/control-unit.ts';
import { fixed, number, type Part, significant, term } from '../../text/part.ts';
import { NOTHING, only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, type WrittenTable } from '../paper.ts';

export const shapeTable = (sizes: readonly ShapeSize[], unit: ControlUnit, measured: 'with room to write' | 'only told'): WrittenTable => {
  const limited = sizes.some((s) => s.limits !== undefined);
  const toWrite = measured === 'with room to write';
  return {
    kind: 'table',
    columns: [
      column(words.size, 4),
      column(words.is, 1.5, 'right'),
      column(NOTHING, 0.6),
      ...(limited ? [column(words.from, 1.3, 'right'), column(words.to, 1.3, 'right')] : []),
      ...(toWrite ? [column(words.measured, 1.3)] : []),
    ],
    rows: sizes.map(({ figure, limits }) => [
      figure.name,
      sizeText(figure.value, figure.unit, unit),
      unitText(figure.unit, unit),
      ...(limited
        ? limits === undefined
          ? [NOTHING, NOTHING]
          : [limits.low, limits.high].map((v) => sizeText(v, figure.unit, unit))
        : []),
      ...(toWrite ? [isTaken(figure.unit) ? term('__________') : NOTHING] : []),
    ]),
  };
};

/** Counts and angles are told, but nobody writes them down from a gauge. */
const isTaken = (unit: string): boolean => unit === 'mm';

const unitText = (unit: string, { name }: ControlUnit): Text => (unit === '1' ? NOTHING : only(term(unit === 'mm' ? name : unit)));

/** A tenth of a µm for lengths, as handbooks print the sizes of gears; thousandths of a thou in inches; a few seconds of an angle. */
const sizeText = (value: number, unit: string, control: ControlUnit): Part => {
  if (unit === 'mm') return number(value / control.millimetres, fixed(control.name === INCHES.name ? 6 : 4));
  return number(value, unit === '°' ? fixed(3) : significant(8));
};

const words = phrases('shape-table', {
  size: say`Size`,
  is: say`Value`,
  from: say`From`,
  to: say`To`,
  measured: say`Measured`,
});
