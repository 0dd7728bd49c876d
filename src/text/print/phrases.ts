/** How the papers word the numbers that come up everywhere. */

import { MILLIMETRES } from '../control-unit.ts';

/** '0.1420' : lengths a machine is set to, four digits behind the point, five of an inch. */
export const setting = (millimetres: number, unit = MILLIMETRES): string =>
  (millimetres / unit.millimetres).toFixed(unit.name === 'inch' ? 5 : 4);

/** '0.004' : an accuracy promised, rounded up to ten-thousandths. */
export const accuracy = (millimetres: number): string => (Math.ceil(millimetres * 1e4 - 1e-6) / 1e4).toString();

/** A comment of a program in small letters; names of contours, lines and registers keep theirs. */
export const calmed = (comment: string): string => comment.toLowerCase().replace(/\b[lod]\d+\b/g, (id) => id.toUpperCase());
