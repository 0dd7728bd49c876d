/**
 * The grid of last digits: every coordinate of a program is a whole number of them. All rounding happens here, on absolute
 * places, so that incremental words are differences of whole numbers and never drift.
 */
import type { Point } from '../../geometry/segment.ts';
import type { Dialect } from '../dialect/dialect.ts';

export interface Grid {
  /** Last digits in one mm. */
  readonly perMillimetre: number;
  readonly decimals: number;
  readonly trailingZeros: boolean;
}

/** A place in last digits, whole numbers. */
export type GridPlace = Point;

const INCH = 25.4;

/** Five figures before the point are more than any machine travels. */
export const LARGEST = 99_999;

export const gridOf = (dialect: Dialect): Grid => ({
  perMillimetre: 10 ** dialect.decimals / (dialect.units === 'inch' ? INCH : 1),
  decimals: dialect.decimals,
  trailingZeros: dialect.trailingZeros,
});

/** mm -> last digits; never minus zero. */
export const toGrid = (length: number, grid: Grid): number => Math.round(length * grid.perMillimetre) + 0;

export const spotOf = (point: Point, grid: Grid): GridPlace => ({ x: toGrid(point.x, grid), y: toGrid(point.y, grid) });

export const fromGrid = (count: number, grid: Grid): number => count / grid.perMillimetre;

/** Whether a program can carry the number at all. */
export const isWritable = (length: number, grid: Grid): boolean => Math.abs(length * grid.perMillimetre) < LARGEST * 10 ** grid.decimals;

/** mm: the furthest that a program can name. */
export const largestOf = (grid: Grid): number => (LARGEST * 10 ** grid.decimals) / grid.perMillimetre;

/** Always with a decimal point, because some controls take a number without one for a count of last digits. */
export const printed = (count: number, { decimals, trailingZeros }: Grid): string => {
  const digits = Math.abs(count)
    .toString()
    .padStart(decimals + 1, '0');
  const cut = digits.length - decimals;
  let end = digits.length;
  if (!trailingZeros) while (end > cut && digits.charCodeAt(end - 1) === 48) end -= 1;
  return `${count < 0 ? '-' : ''}${digits.slice(0, cut)}.${digits.slice(cut, end)}`;
};
