/** Diameters of involute splines for side fit: multiples of the module above and below the pitch diameter, by pressure angle and root. */

export type SplineRoot = 'flat' | 'fillet';
export type SplineAngle = 30 | 37.5 | 45;
export type SplineStandard = 'ISO 4156' | 'ANSI B92.1';

export interface SplineSizes {
  /** Major diameters are m (z + this): of the shaft, and of the hub, where its root lies. */
  readonly shaftMajor: number;
  readonly hubMajor: number;
  /** Minor diameters are m (z - this): of the shaft, where its root lies, and of the hub. */
  readonly shaftMinor: number;
  readonly hubMinor: number;
  /** The basic space and tooth are m (π / 2 + this) wide: nothing but for short teeth in inches. */
  readonly widening: number;
}

type Table = Readonly<Record<SplineAngle, Partial<Readonly<Record<SplineRoot, SplineSizes>>>>>;

const ISO: Table = {
  30: {
    flat: { shaftMajor: 1, hubMajor: 1.5, shaftMinor: 1.5, hubMinor: 1, widening: 0 },
    fillet: { shaftMajor: 1, hubMajor: 1.8, shaftMinor: 1.8, hubMinor: 1, widening: 0 },
  },
  37.5: { fillet: { shaftMajor: 0.9, hubMajor: 1.4, shaftMinor: 1.4, hubMinor: 0.9, widening: 0 } },
  45: { fillet: { shaftMajor: 0.8, hubMajor: 1.2, shaftMinor: 1.2, hubMinor: 0.8, widening: 0 } },
};

const ANSI: Table = {
  30: {
    flat: { shaftMajor: 1, hubMajor: 1.35, shaftMinor: 1.35, hubMinor: 1, widening: 0 },
    fillet: { shaftMajor: 1, hubMajor: 1.8, shaftMinor: 1.8, hubMinor: 1, widening: 0 },
  },
  37.5: { fillet: { shaftMajor: 1, hubMajor: 1.6, shaftMinor: 1.3, hubMinor: 0.8, widening: 0.1 } },
  45: { fillet: { shaftMajor: 1, hubMajor: 1.4, shaftMinor: 1, hubMinor: 0.6, widening: 0.2 } },
};

/** Fillet roots of 30° are deeper from this diametral pitch on. */
const FINE = 16;
const FINE_MINOR = 2;

/** None where the standard has no such root. `pitch` is the diametral pitch, for ANSI only. */
export const splineSizes = (
  standard: SplineStandard,
  angle: SplineAngle,
  root: SplineRoot,
  pitch: number | undefined,
): SplineSizes | undefined => {
  const sizes = (standard === 'ISO 4156' ? ISO : ANSI)[angle][root];
  const deeper = standard === 'ANSI B92.1' && angle === 30 && root === 'fillet' && (pitch ?? 0) >= FINE;
  return sizes !== undefined && deeper ? { ...sizes, shaftMinor: FINE_MINOR } : sizes;
};

/** Of the rack of ISO 4156, in modules: how far below the pitch line the form of a shaft reaches, and its clearance. */
const FORM_DEPTH: Readonly<Record<SplineAngle, number>> = { 30: 0.6, 37.5: 0.55, 45: 0.5 };
const FORM_CLEARANCE = 0.1;

/** Minor diameter of an ISO hub for a module of 1: where the rack's flank ends on the shaft, and a clearance all round. */
export const isoHubMinor = (teeth: number, angle: SplineAngle): number => {
  const alpha = (angle * Math.PI) / 180;
  const string = (teeth * Math.sin(alpha)) / 2 - FORM_DEPTH[angle] / Math.sin(alpha);
  return 2 * Math.hypot((teeth * Math.cos(alpha)) / 2, Math.max(0, string)) + 2 * FORM_CLEARANCE;
};
