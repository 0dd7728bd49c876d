/** A bar of a round length in the unit of the drawing, and in mm where that is another. */

import { number, term, upTo } from '../text/part.ts';
import { print } from '../text/print/print.ts';
import type { Reader } from '../text/reader.ts';
import { symbols } from '../text/say.ts';
import { roundBelow } from './round-length.ts';
import type { View } from './svg.ts';
import { INK, px, QUIET, text } from './svg.ts';

/** A unit of length by its name, and how many millimetres it has. */
export interface BarUnit {
  readonly name: string;
  readonly millimetres: number;
}

/** About a fifth of the sheet, as 1, 2 or 5 times a power of ten. */
export const scaleBar = (view: View, unit: BarUnit, left: number, y: number, reader: Reader): string => {
  if (view.empty) return '';
  const perUnit = view.scale * unit.millimetres;
  const round = roundBelow(220 / perUnit);
  const width = round * perUnit;
  const long = symbols`${number(round, upTo(9))} ${term(unit.name)}`;
  const words = print(unit.millimetres === 1 ? long : symbols`${long} = ${number(round * unit.millimetres, upTo(6))} mm`, reader);
  const half = `<rect x="${px(left)}" y="${px(y - 5)}" width="${px(width / 2)}" height="5" fill="${INK}"/>`;
  const frame = `<rect x="${px(left)}" y="${px(y - 5)}" width="${px(width)}" height="5" fill="none" stroke="${INK}" stroke-width="0.8"/>`;
  return `${half}${frame}${text(left + width + 10, y + 1, words, { size: 11, colour: INK })}${text(left, y - 10, '0', { size: 9, colour: QUIET })}`;
};
