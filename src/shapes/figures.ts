/** Numbers of a request as figures, and what follows from them by more than one formula. */
import { type Figure, given } from '../quantity/figure.ts';
import { type Source, saidBy } from '../quantity/source.ts';
import type { Text } from '../text/text.ts';
import type { Unit } from '../text/unit.ts';

/** A number that the request gives. */
export const asked = (key: string, name: Text, value: number, unit: Unit = 'mm'): Figure =>
  given({ key, name, value, unit, basis: 'job', source: saidBy.request });

/** A number taken off the drawn contour, or found by a search; `how` tells the way, `source` whose rule it is. */
export const found = (
  key: string,
  name: Text,
  value: number,
  how: Text,
  more: { readonly unit?: Unit; readonly source?: Source; readonly from?: readonly Figure[] } = {},
): Figure => ({
  ...asked(key, name, value, more.unit ?? 'mm'),
  basis: 'computed',
  source: more.source ?? { file: 'plane-geometry' },
  formula: how,
  from: more.from ?? [],
});

/** The number of the request where it gives one; else the one that was taken for it, and by what rule. */
export const askedOrFound = (
  wanted: number | undefined,
  key: string,
  name: Text,
  value: number,
  how: Text,
  more: Parameters<typeof found>[4] = {},
): Figure => (wanted === undefined ? found(key, name, value, how, more) : asked(key, name, value, more.unit));
