/** Numbers of a request as figures, and what follows from them by more than one formula. */
import { type Figure, given } from '../quantity/figure.ts';
import type { Unit } from '../text/unit.ts';

/** A number that the request gives. */
export const asked = (key: string, name: string, value: number, unit: Unit = 'mm'): Figure =>
  given({ key, name, value, unit, basis: 'drawing', source: 'the request' });

/** A number taken off the drawn contour, or found by a search; `how` tells the way, `source` whose rule it is. */
export const found = (
  key: string,
  name: string,
  value: number,
  how: string,
  more: { readonly unit?: Unit; readonly source?: string; readonly from?: readonly Figure[] } = {},
): Figure => ({
  ...asked(key, name, value, more.unit ?? 'mm'),
  basis: 'computed',
  source: more.source ?? 'plane-geometry',
  formula: how,
  from: more.from ?? [],
});

/** The number of the request where it gives one; else the one that was taken for it, and by what rule. */
export const askedOrFound = (
  wanted: number | undefined,
  key: string,
  name: string,
  value: number,
  how: string,
  more: Parameters<typeof found>[4] = {},
): Figure => (wanted === undefined ? found(key, name, value, how, more) : asked(key, name, value, more.unit));
