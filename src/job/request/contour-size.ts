/** A size asked across a contour: its limits, the size that was drawn, and how far each face moves so that the middle of the limits is aimed at. */
import { sizesOn } from '../../accuracy/sizes-on-contour.ts';
import type { Contour } from '../../geometry/contour.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { zoneLimits } from '../../quantity/limits-and-fits.ts';
import { type ContourInput, FIT } from '../contour-schema.ts';

type Size = NonNullable<ContourInput['size']>;

/** mm */
export interface SizeLimits {
  readonly nominal: number;
  readonly lower: number;
  readonly upper: number;
  /** As it was asked: '20 H7', or '20 +0.021 0'. */
  readonly called: string;
}

export type LimitsOfSize = { readonly kind: 'limits'; readonly limits: SizeLimits } | { readonly kind: 'unknown'; readonly reason: string };

export const limitsOfSize = (size: Size): LimitsOfSize => {
  if (typeof size !== 'string') {
    const { length, upper, lower } = size;
    return { kind: 'limits', limits: { nominal: length, upper, lower, called: `${length} ${signed(upper)} ${signed(lower)}` } };
  }
  const [, digits = '', zone = ''] = FIT.exec(size) ?? [];
  const nominal = Number(digits.replace(',', '.'));
  const found = zoneLimits(zone, nominal);
  if (found.kind !== 'limits') return { kind: 'unknown', reason: found.reason };
  return { kind: 'limits', limits: { nominal, lower: found.low / 1000, upper: found.high / 1000, called: `${nominal} ${zone}` } };
};

const signed = (value: number): string => (value > 0 ? `+${value}` : String(value));

/** What a size asks of the contour it lies on, mm. */
export interface Aim extends SizeLimits {
  /** Across the contour as drawn. */
  readonly drawn: number;
  /** Middle of the limits. */
  readonly aimed: number;
  /** Outward per side, inward when negative, from the drawn contour to the aimed one. */
  readonly moved: number;
  /** Either side of the aimed contour: half of what the size may be off. */
  readonly tolerance: number;
}

/** mm: a drawn size further from the limits is another size. */
const SAME_SIZE = 0.05;

/** mm: less is rounding. */
const NO_MOVE = 1e-7;

/** None where no size across the contour is the one that is asked; `nearest` is what there is. */
export const aimOf = (limits: SizeLimits, contour: Contour): { readonly aim?: Aim | undefined; readonly nearest: number } => {
  const { nominal, lower, upper } = limits;
  const nearest = sizesOf(contour).reduce((a, b) => (Math.abs(b - nominal) < Math.abs(a - nominal) ? b : a), Number.POSITIVE_INFINITY);
  const reach = SAME_SIZE + Math.max(Math.abs(lower), Math.abs(upper));
  if (Math.abs(nearest - nominal) > reach) return { nearest };
  const aimed = nominal + (lower + upper) / 2;
  const moved = (aimed - nearest) / 2;
  return {
    nearest,
    aim: { ...limits, drawn: nearest, aimed, moved: Math.abs(moved) < NO_MOVE ? 0 : moved, tolerance: (upper - lower) / 4 },
  };
};

/** Of a circle its diameter, to the last digit. */
const sizesOf = (contour: Contour): readonly number[] => {
  const first = contour.segments[0];
  const isCircle =
    first.kind === 'arc' &&
    contour.segments.every(
      (s) => s.kind === 'arc' && Math.abs(s.radius - first.radius) < 1e-6 && distanceBetween(s.centre, first.centre) < 1e-6,
    );
  return isCircle ? [2 * first.radius] : sizesOn([contour]);
};
