/** Diameters of involute splines for side fit: multiples of the module above and below the pitch diameter, by pressure angle and root. */

export type SplineRoot = 'flat' | 'fillet';
export type SplineAngle = 30 | 37.5 | 45;

export interface SplineSizes {
  /** Major diameters are m (z + this): of the shaft, and of the hub, where its root lies. */
  readonly shaftMajor: number;
  readonly hubMajor: number;
  /** Minor diameters are m (z - this): of the shaft, where its root lies, and of the hub. */
  readonly shaftMinor: number;
  readonly hubMinor: number;
}

type Table = Readonly<Record<SplineAngle, Partial<Readonly<Record<SplineRoot, SplineSizes>>>>>;

const ISO: Table = {
  30: {
    flat: { shaftMajor: 1, hubMajor: 1.5, shaftMinor: 1.5, hubMinor: 1 },
    fillet: { shaftMajor: 1, hubMajor: 1.8, shaftMinor: 1.8, hubMinor: 1 },
  },
  37.5: { fillet: { shaftMajor: 0.9, hubMajor: 1.4, shaftMinor: 1.4, hubMinor: 0.9 } },
  45: { fillet: { shaftMajor: 0.8, hubMajor: 1.2, shaftMinor: 1.2, hubMinor: 0.8 } },
};

const ANSI: Table = {
  30: {
    flat: { shaftMajor: 1, hubMajor: 1.35, shaftMinor: 1.35, hubMinor: 1 },
    fillet: { shaftMajor: 1, hubMajor: 1.8, shaftMinor: 1.8, hubMinor: 1 },
  },
  37.5: { fillet: { shaftMajor: 1, hubMajor: 1.6, shaftMinor: 1.3, hubMinor: 0.8 } },
  45: { fillet: { shaftMajor: 1, hubMajor: 1.4, shaftMinor: 1, hubMinor: 0.6 } },
};

/** None where the standard has no such root. */
export const splineSizes = (standard: 'ISO 4156' | 'ANSI B92.1', angle: SplineAngle, root: SplineRoot): SplineSizes | undefined =>
  (standard === 'ISO 4156' ? ISO : ANSI)[angle][root];
