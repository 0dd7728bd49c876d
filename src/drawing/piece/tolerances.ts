/** How near counts as what, in mm, all in one place and each with its reason. */
import type { Bounds } from '../../geometry/measure.ts';
import type { DrawingUnits, ReadOptions } from '../drawing.ts';

/** All in mm. */
export interface Tolerances {
  /** Ends this near are the same but for the rounding of the file: a hundredth of the finest thing a wire can do. */
  readonly coincident: number;
  /** Free ends up to this far apart are joined and reported. */
  readonly join: number;
  /** Lines this near to each other all along are drawn twice. */
  readonly same: number;
  /** Loops this near to each other all round are drawn twice: wider, since a whole loop is hardly ever alike by chance. */
  readonly sameLoop: number;
  /** Greatest distance between a fitted arc and the drawn curve. */
  readonly fit: number;
}

/** mm: what a file with five decimals leaves between ends that are meant to be one; a hundredth of a micrometre. */
const COINCIDENT = 1e-5;
/** mm: no shop can tell lines apart that lie closer than a micrometre. */
const SAME = 1e-3;
const JOIN = 0.005;
const FIT = 0.0005;

/** @param bounds in drawing units: far from the origin the rounding of the numbers themselves may be coarser than all else */
export const tolerancesOf = (options: ReadOptions, units: DrawingUnits, bounds: Bounds): Tolerances => {
  const far = Math.max(0, ...[bounds.minX, bounds.minY, bounds.maxX, bounds.maxY].filter(Number.isFinite).map(Math.abs));
  const rounding = 8 * Number.EPSILON * far * units.millimetres;
  const asked = sound(options.join) ?? JOIN;
  const join = options.joinInDrawingUnits && sound(options.join) !== undefined ? asked * units.millimetres : asked;
  const coincident = Math.max(rounding, Math.min(COINCIDENT, Math.max(join, COINCIDENT / 1000)));
  const same = Math.max(coincident, Math.min(SAME, Math.max(join, COINCIDENT)));
  return { coincident, join, same, sameLoop: Math.max(same, Math.min(join, JOIN)), fit: positive(options.fit) ?? FIT };
};

const sound = (value: number | undefined): number | undefined =>
  value !== undefined && value >= 0 && value < Infinity ? value : undefined;

const positive = (value: number | undefined): number | undefined =>
  value !== undefined && value > 0 && value < Infinity ? value : undefined;
