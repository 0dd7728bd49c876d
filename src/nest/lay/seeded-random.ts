/** Numbers that look like chance and are always the same: a sequence from a seed, so that the same question gives the same nest. */

/** Gives shares from 0 up to 1. A multiplicative sequence modulo the prime 2³¹ - 1; its products stay whole numbers. */
export type Chance = () => number;

export const chanceFrom = (seed: number): Chance => {
  let state = (Math.trunc(seed) % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return (state - 1) / 2147483646;
  };
};

/** The numbers 0 to count - 1 in an order by chance. */
export const shuffled = (numbers: readonly number[], chance: Chance): readonly number[] => {
  const out = [...numbers];
  for (let i = out.length - 1; i > 0; i -= 1) {
    const j = Math.floor(chance() * (i + 1)) % (i + 1);
    const held = out[i]!;
    out[i] = out[j]!;
    out[j] = held;
  }
  return out;
};
