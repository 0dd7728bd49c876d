/** All figures of a job by their keys, leaves included. */
import type { Figure } from '../quantity/figure.ts';

/** Walks results of any shape for figures, and each figure for what it was made of. The first of a key wins. */
export const figuresIn = (...results: readonly unknown[]): ReadonlyMap<string, Figure> => {
  const found = new Map<string, Figure>();
  const seen = new Set<object>();
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || seen.has(value)) return;
    seen.add(value);
    if (isFigure(value)) {
      if (!found.has(value.key)) found.set(value.key, value);
      value.from.forEach(visit);
    } else if (Array.isArray(value)) value.forEach(visit);
    else if (!(value instanceof Map)) Object.values(value).forEach(visit);
  };
  results.forEach(visit);
  return found;
};

const isFigure = (value: object): value is Figure => 'key' in value && 'shares' in value && 'basis' in value;
