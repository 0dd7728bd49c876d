/** A wall of craters whose roughness Ra is exactly the one given: the shape is invented, the size is not. */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { congruential32 } from 'pure-rand/generator/congruential32';

export interface Profile {
  /** µm along the wall. */
  readonly along: readonly number[];
  /** µm off the mean line, outwards positive; their mean is 0 and the mean of their amounts is Ra. */
  readonly off: readonly number[];
}

/** Sparks leave bowls several times as wide as deep; our own choice, for drawing only. */
const WIDE_IN_RA = 14;

/** Places along the wall. */
const PLACES = 400;

/** The same wall for the same seed. */
export const craterProfile = (ra: number, length: number, seed: number): Profile => {
  const along = Array.from({ length: PLACES + 1 }, (_, i) => (i / PLACES) * length);
  if (!(ra > 0) || !(length > 0)) return { along, off: along.map(() => 0) };
  const generator = congruential32(seed);
  const next = (): number => uniformFloat64(generator);
  const raw: number[] = [];
  let [from, wide, deep] = [0, 0, 0];
  for (const at of along) {
    while (at >= from + wide) {
      from += wide;
      wide = WIDE_IN_RA * ra * (0.55 + 0.9 * next());
      deep = wide * (0.75 + 0.5 * next());
    }
    const t = (at - from) / wide;
    raw.push(4 * deep * t * (t - 1));
  }
  const mean = raw.reduce((sum, y) => sum + y, 0) / raw.length;
  const rough = raw.reduce((sum, y) => sum + Math.abs(y - mean), 0) / raw.length;
  return { along, off: raw.map((y) => ((y - mean) * ra) / rough) };
};
