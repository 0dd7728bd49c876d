/** Axes of charts: even round steps over a span, and what their ends are. */
import { indexOfLeast } from '../../sequence/sequence.ts';

/** Steps of 1, 2 or 5 times a power of ten over a span, at most so many. */
export const roundSteps = (low: number, high: number, most: number): readonly number[] => {
  if (!(high > low) || most < 1) return [low];
  const rough = (high - low) / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((n) => n * power >= rough * (1 - 1e-9)) ?? 10);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
};

/**
 * Both ends of what a chart of deviation shows, mm, with zero between them and the tolerance too unless it is many times larger.
 * `counted` is the most metal left that counts, mm: peaks in corners that may come out round go beyond it and are cut off.
 */
export const deviationSpan = (
  deviations: Iterable<number>,
  tolerance: number,
  counted = Number.POSITIVE_INFINITY,
): { readonly low: number; readonly high: number; readonly withTolerance: boolean } => {
  let [low, high] = [0, 0];
  for (const d of deviations) {
    low = Math.min(low, d);
    high = Math.max(high, Math.min(d, counted));
  }
  const most = Math.max(high, -low);
  const withTolerance = tolerance > 0 && (most === 0 || tolerance <= 12 * most);
  if (withTolerance) [low, high] = [Math.min(low, -tolerance), Math.max(high, tolerance)];
  const room = 0.12 * (high - low || 1e-3);
  return { low: low - room, high: high + room, withTolerance };
};

/** Of many places the most and the least of each column of a chart: what sticks out is never lost between two of them. */
export const thinned = (value: Float64Array, columns: number): readonly number[] => {
  const n = value.length;
  if (n <= 2 * columns) return [...value.keys()];
  const kept: number[] = [0];
  for (let c = 0; c < columns; c += 1) {
    const from = Math.floor((c * n) / columns);
    const column = value.subarray(from, Math.floor(((c + 1) * n) / columns));
    const [least, most] = [indexOfLeast(column, (v) => v), indexOfLeast(column, (v) => -v)];
    kept.push(from + Math.min(least, most));
    if (least !== most) kept.push(from + Math.max(least, most));
  }
  if (kept.at(-1) !== n - 1) kept.push(n - 1);
  return kept;
};
