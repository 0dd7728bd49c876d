/** Amounts as small as a deviation, in the user's unit. */
import type { Numbers } from '../../text/print/reader.ts';

export type Small = Pick<Numbers, 'value'>;

/** µm or µin of mm, three digits that count. */
export const small = (numbers: Small, mm: number): string => {
  const value = Math.abs(mm) < 5e-8 ? 0 : mm * 1000;
  // Three digits that count: a range of a third of the value deserves no more.
  const sure = Math.max(Math.abs(value) * 0.3, 0.005);
  return numbers.value({ value, unit: 'µm', low: value - sure, high: value + sure });
};
