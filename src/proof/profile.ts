/** The deviation round a contour, kept as plain numbers: place after place its share of the perimeter, x, y and deviation. `!` stands where one is read. */
import type { Point } from '../geometry/segment.ts';

/** Lengths in mm. */
export type Profile = Float64Array;

/** Share of the perimeter, place, and signed deviation: metal left is positive. */
export interface ProfilePlace {
  readonly share: number;
  readonly at: Point;
  readonly deviation: number;
}

export const packed = (places: readonly ProfilePlace[]): Profile => {
  const profile = new Float64Array(4 * places.length);
  places.forEach(({ share, at, deviation }, i) => {
    profile.set([share, at.x, at.y, deviation], 4 * i);
  });
  return profile;
};

/** The places again, moved by `origin`. */
export const placesOf = (profile: Profile, origin: Point): readonly ProfilePlace[] =>
  Array.from({ length: profile.length / 4 }, (_, i) => ({
    share: profile[4 * i]!,
    at: { x: profile[4 * i + 1]! + origin.x, y: profile[4 * i + 2]! + origin.y },
    deviation: profile[4 * i + 3]!,
  }));
