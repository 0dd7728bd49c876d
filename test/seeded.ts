/** Numbers that look like chance, from 0 up to 1, and are the same for the same seed: for made-up cases that can be made again. */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { congruential32 } from 'pure-rand/generator/congruential32';

export type Random = () => number;

export const seeded = (seed: number): Random => {
  const generator = congruential32(seed);
  return () => uniformFloat64(generator);
};
