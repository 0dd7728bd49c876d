/** Repeatable dice for the fuzzers: the same seed always falls the same way (xorshift, 32 bits). */
export interface Dice {
  /** A whole number from 0 to below `n`. */
  readonly below: (n: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
}

export const diceOf = (seed: number): Dice => {
  let state = (seed * 2654435761 + 1) >>> 0 || 1;
  const below = (n: number): number => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % n;
  };
  return { below, pick: (from) => from[below(from.length)] as (typeof from)[number] };
};
