/** How places and sizes are written in the sentences of the drawing layer. */

import type { Point } from '../geometry/segment.ts';
import type { Place } from '../text/finding.ts';
import type { DrawingUnits } from './drawing.ts';

/** A number with at most `digits` decimals and no trailing zeros. */
export const number = (value: number, digits = 4): string => {
  const text = value.toFixed(digits);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
};

/** A length in mm, told in µm below a tenth of a millimetre. */
export const length = (mm: number): string => {
  if (mm === 0) return '0 mm';
  if (mm < 1e-6) return 'less than 0.001 µm';
  if (mm < 0.1) return `${Number((mm * 1000).toPrecision(3))} µm`;
  return `${number(mm, mm < 10 ? 3 : 2)} mm`;
};

/** A point in mm as the drawing has it: '(12.5, 3)'. */
export const point = (at: Point, units: DrawingUnits): string =>
  `(${number(at.x / units.millimetres)}, ${number(at.y / units.millimetres)})`;

/** A point in mm as a place on the drawing; `reach` in mm. */
export const spot = (at: Point, units: DrawingUnits, reach?: number): Place & { readonly kind: 'spot' } => ({
  kind: 'spot',
  x: at.x / units.millimetres,
  y: at.y / units.millimetres,
  ...(reach === undefined ? {} : { reach: reach / units.millimetres }),
});

/** '1 loop', '3 loops'. */
export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
