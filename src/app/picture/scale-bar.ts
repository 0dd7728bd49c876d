/** The scale bar, a measured distance, and how fine a coordinate is worth saying: lengths made fit for the eye, in mm or inch. */
import type { Point } from '../../geometry/segment.ts';
import { roundBelow } from '../../picture/round-length.ts';

export type PictureUnit = 'mm' | 'inch';

export const mmIn: Readonly<Record<PictureUnit, number>> = { mm: 1, inch: 25.4 };

export interface ScaleBar {
  /** In the unit asked for: 1, 2 or 5 times a power of ten. */
  readonly length: number;
  readonly unit: PictureUnit;
  readonly pixels: number;
}

/** The longest round length that takes at most `most` pixels at a scale in pixels per mm. */
export const scaleBar = (scale: number, unit: PictureUnit, most: number): ScaleBar => {
  const length = roundBelow(most / scale / mmIn[unit]);
  return { length, unit, pixels: length * mmIn[unit] * scale };
};

export interface Measured {
  readonly dx: number;
  readonly dy: number;
  readonly distance: number;
}

export const measured = (from: Point, to: Point): Measured => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return { dx, dy, distance: Math.hypot(dx, dy) };
};

/** Decimals with which one pixel of the screen can just be told, between a whole unit and a tenth of a micrometre. */
export const decimalsAt = (scale: number, unit: PictureUnit): number =>
  Math.min(unit === 'mm' ? 4 : 5, Math.max(0, Math.ceil(Math.log10(scale * mmIn[unit]) - 1e-9)));
