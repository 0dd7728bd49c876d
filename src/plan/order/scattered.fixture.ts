/** Points that look random and are always the same, on a field of 300 by 200 mm. */
import { type Point, point } from '../../geometry/segment.ts';

export const scattered = (count: number, seed = 12345): readonly Point[] => {
  let state = seed;
  const next = (): number => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 2147483648;
  };
  return Array.from({ length: count }, () => point(next() * 300, next() * 200));
};
