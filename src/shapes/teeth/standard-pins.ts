/** The pins that are in stock for sizes over and between pins; one that has to be ground first measures nothing today. Diameters in mm. */

/** DIN 3977, from memory: see sources/measuring-pins.md. */
const METRIC: readonly number[] = [
  0.25, 0.28, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.25, 1.4, 1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 3.75, 4,
  4.25, 4.5, 5, 5.25, 5.5, 6, 6.5, 7, 7.5, 8, 9, 10, 11, 12, 14, 16, 18, 20, 22, 25, 28, 30, 35, 40, 45, 50,
];

/** Sold by the diametral pitch, inch at a pitch of 1: outside teeth, long addenda and splines, the alternative, inside teeth. */
const BY_PITCH: readonly number[] = [1.728, 1.92, 1.68, 1.44];

const pinsOfPitch = (diametralPitch: number): readonly number[] => BY_PITCH.map((inches) => (inches * 25.4) / diametralPitch);

/**
 * The pin nearest in size to `ideal` that measures well, of those that go with the diametral pitch where the teeth are asked by it, else
 * metric ones; none where no pin in stock does.
 */
export const standardPin = (ideal: number, fits: (pin: number) => boolean, diametralPitch?: number): number | undefined => {
  const nearest = (pins: readonly number[]): number | undefined =>
    pins.toSorted((a, b) => Math.abs(a - ideal) - Math.abs(b - ideal)).find(fits);
  return (diametralPitch === undefined ? undefined : nearest(pinsOfPitch(diametralPitch))) ?? nearest(METRIC);
};
