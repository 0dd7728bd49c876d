/** The absolute units of the web, which SVG lengths use. */
import type { CheckRow } from '../../quantity/check.ts';
import { lengthOf } from './lengths.ts';

/** Exact, so held as text. */
const pixels = (text: string): string => {
  const length = lengthOf(text);
  return length.kind === 'length' ? String(length.value) : length.kind;
};

const row = (id: string, text: string, value: string): CheckRow => ({
  id,
  source: 'svg-2',
  place: 'units, by reference to CSS values and units, absolute lengths',
  how: 'recomputed',
  question: `pixels in ${text}`,
  value,
  ours: () => pixels(text),
});

export const checks: readonly CheckRow[] = [
  row('K-07a', '1in', '96'),
  row('K-07b', '2.54cm', '96'),
  row('K-07c', '1pc', '16'),
  row('K-07d', '72pt', '96'),
];
