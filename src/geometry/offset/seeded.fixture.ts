/** Numbers that look random and are the same on every run. */

/** A source of numbers from 0 up to 1: a 32-bit counter whose bits are mixed by two multiplications. */
export const seeded = (seed: number): (() => number) => {
  let counter = seed >>> 0;
  return () => {
    counter = (counter + 0x9e3779b9) >>> 0;
    let mixed = counter ^ (counter >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed ^= mixed >>> 15;
    mixed = Math.imul(mixed, 0x735a2d97);
    mixed ^= mixed >>> 15;
    return (mixed >>> 0) / 2 ** 32;
  };
};
