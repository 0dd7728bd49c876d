/** How the papers word the numbers that come up everywhere. */

import type { Figure } from '../../quantity/figure.ts';
import { MILLIMETRES } from '../control-unit.ts';
import type { Finding } from '../finding.ts';
import { findingInFull } from '../located.ts';
import { printPlain } from './print.ts';

/** '0.1420' : lengths a machine is set to, four digits behind the point, five of an inch. */
export const setting = (millimetres: number, unit = MILLIMETRES): string =>
  (millimetres / unit.millimetres).toFixed(unit.name === 'inch' ? 5 : 4);

/** '12.35' : places on the block. */
export const place = (millimetres: number, unit = MILLIMETRES): string =>
  Number((millimetres / unit.millimetres).toFixed(unit.name === 'inch' ? 4 : 3)).toString();

/** '0.004' : an accuracy promised, rounded up to whole thousandths. */
export const accuracy = (millimetres: number): string => (Math.ceil(millimetres * 1000 - 1e-6) / 1000).toString();

/** '0.39' : a finish, in two digits. */
export const finish = (micrometres: Figure): string => Number(micrometres.value.toPrecision(2)).toString();

/** '1 contour', '3 contours'. */
export const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;

/** '84 g', '2.36 kg' : three digits are enough to lift by. */
export const mass = (kilograms: number): string =>
  kilograms >= 1 ? `${Number(kilograms.toPrecision(3))} kg` : `${Number((kilograms * 1000).toPrecision(3))} g`;

/** A comment of a program in small letters; names of contours, lines and registers keep theirs. */
export const calmed = (comment: string): string => comment.toLowerCase().replace(/\b[lod]\d+\b/g, (id) => id.toUpperCase());

/** A comment of a program, which knows only capitals, as a person would write it. */
export const spoken = (comment: string): string =>
  comment
    .toLowerCase()
    .replace(/\b[ld](\d+)\b/g, (id) => id.toUpperCase())
    .replace(/(^|[.!?] )([a-z])/g, (_, before: string, letter: string) => before + letter.toUpperCase());

/** One finding in full: sentence, place, what was done, what would help. */
export const findingText = (finding: Finding): string => printPlain(findingInFull(finding));
