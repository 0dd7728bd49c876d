/** Repeatable dice for the fuzzers: the same seed always falls the same way. */
import { seeded } from '../seeded.ts';

export interface Dice {
  /** A whole number from 0 to below `n`. */
  readonly below: (n: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
}

export const diceOf = (seed: number): Dice => {
  const random = seeded(seed);
  const below = (n: number): number => Math.floor(random() * n);
  return { below, pick: (from) => from[below(from.length)] as (typeof from)[number] };
};
