/** Numbers that look like chance and are always the same for a seed, so that the same question gives the same nest. */

import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { congruential32 } from 'pure-rand/generator/congruential32';
import { itemAt } from '../../sequence/sequence.ts';

/** Gives shares from 0 up to 1. */
export type Chance = () => number;

export const chanceFrom = (seed: number): Chance => {
  const generator = congruential32(seed);
  return () => uniformFloat64(generator);
};

/** The numbers 0 to count - 1 in an order by chance. */
export const shuffled = (numbers: readonly number[], chance: Chance): readonly number[] => {
  const out = [...numbers];
  for (let i = out.length - 1; i > 0; i -= 1) {
    const j = Math.floor(chance() * (i + 1));
    const held = itemAt(out, i);
    out[i] = itemAt(out, j);
    out[j] = held;
  }
  return out;
};
