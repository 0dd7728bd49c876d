/** What ASME B17.1 prints of keys by shaft, of keyways and of their depths (CHECKS H-12): the tables whole, as they were read. */
import type { CheckRow } from '../../quantity/check.ts';
import { asmeB17, hubSize, keywayWider } from './asme-b17.ts';

/** Shafts over, to, width, height of the square key, of the flat one, inch. */
const KEYS = `
5/16 7/16 3/32 3/32 - | 7/16 9/16 1/8 1/8 3/32 | 9/16 7/8 3/16 3/16 1/8 | 7/8 1-1/4 1/4 1/4 3/16 | 1-1/4 1-3/8 5/16 5/16 1/4 |
1-3/8 1-3/4 3/8 3/8 1/4 | 1-3/4 2-1/4 1/2 1/2 3/8 | 2-1/4 2-3/4 5/8 5/8 7/16 | 2-3/4 3-1/4 3/4 3/4 1/2 | 3-1/4 3-3/4 7/8 7/8 5/8 |
3-3/4 4-1/2 1 1 3/4 | 4-1/2 5-1/2 1-1/4 1-1/4 7/8 | 5-1/2 6-1/2 1-1/2 1-1/2 1 | 6-1/2 7-1/2 1-3/4 1-3/4 1-1/2 |
7-1/2 9 2 2 1-1/2 | 9 11 2-1/2 2-1/2 1-3/4`;

/** From memory: what follows in the standard above 11 in. */
const LARGE = '11 13 3 3 2 | 13 15 3-1/2 3-1/2 2-1/2 | 15 18 4 - 3 | 18 22 5 - 3-1/2';

/** Depths T of hubs for shafts from 1/2 to 2 1/2 in by sixteenths: square key, flat key; the flat one was read up to 2 5/16 in. */
const DEPTHS = `
0.560 0.544 | 0.623 0.607 | 0.709 0.678 | 0.773 0.742 | 0.837 0.806 | 0.900 0.869 | 0.964 0.932 | 1.051 1.019 | 1.114 1.083 |
1.178 1.146 | 1.241 1.210 | 1.304 1.273 | 1.367 1.336 | 1.455 1.424 | 1.518 1.487 | 1.605 1.543 | 1.669 1.606 | 1.732 1.670 |
1.796 1.733 | 1.859 1.796 | 1.922 1.860 | 2.032 1.970 | 2.096 2.034 | 2.160 2.097 | 2.223 2.161 | 2.287 2.224 | 2.350 2.288 |
2.414 2.351 | 2.477 2.414 | 2.587 2.493 | 2.651 | 2.714 | 2.778`;

/** Keyways of class 1 by width of the key: over, to, and what they may be wider by, inch. */
const WIDER = '0 1/2 0.002 | 1/2 3/4 0.003 | 3/4 1 0.003 | 1 1-1/2 0.004 | 1-1/2 2-1/2 0.004 | 2-1/2 3-1/2 0.004 | 3 4 0.004 | 4 6 0.004';

const rowsOf = (table: string): readonly (readonly string[])[] =>
  table
    .trim()
    .split(/\s*\|\s*/)
    .map((row) => row.split(' '));

/** '1-3/8' in inches. */
const inches = (text: string): number =>
  text
    .split('-')
    .map((part) => part.split('/').map(Number))
    .reduce((sum, [over = 0, under = 1]) => sum + over / under, 0);

/** As the tables have it: in quarters down to thirty-seconds. */
const fraction = (value: number): string => {
  const [whole, rest] = [Math.floor(value), value - Math.floor(value)];
  const under = [1, 2, 4, 8, 16, 32].find((n) => Number.isInteger(rest * n)) ?? 1;
  const part = rest === 0 ? '' : `${rest * under}/${under}`;
  return whole === 0 ? part : part === '' ? `${whole}` : `${whole}-${part}`;
};

const keyText = (shaft: number): string => {
  const row = asmeB17(shaft);
  if (row === undefined) return 'none';
  const { over, to, width, flat, square } = row;
  return [fraction(over), fraction(to), fraction(width), square ? fraction(width) : '-', flat === width ? '-' : fraction(flat)].join(' ');
};

const keyRows = (table: string, id: string, place: string, how: CheckRow['how']): readonly CheckRow[] =>
  rowsOf(table).map((row, i) => ({
    id: `${id}-${String(i + 1).padStart(2, '0')}`,
    source: 'asme-b17-1',
    place,
    how,
    question: `key for shafts up to ${row[1]} in: over, to, width, heights`,
    value: row.join(' '),
    ours: () => keyText(inches(row[1] ?? '')),
  }));

const depthOf = (shaft: number, which: number): number => {
  const row = asmeB17(shaft);
  const height = which === 0 ? row?.width : row?.flat;
  return hubSize.compute({ diameter: shaft, width: row?.width ?? Number.NaN, height: height ?? Number.NaN, clearance: 0.005 });
};

const WHICH = ['T, square key', 'T, flat key'];

export const checks: readonly CheckRow[] = [
  ...keyRows(KEYS, 'H-12k', 'table 1, key size by shaft', 'secondary page'),
  ...keyRows(LARGE, 'H-12l', 'table 1', 'memory'),
  ...rowsOf(DEPTHS).flatMap((row, i) =>
    row.map((value, which) => ({
      id: `H-12d-${8 + i}-${which + 3}`,
      source: 'asme-b17-1',
      place: 'table 2, depth control values',
      how: 'secondary page' as const,
      question: `${WHICH[which]}, shaft of ${fraction(0.5 + i / 16)} in, inch`,
      value,
      ours: () => depthOf(0.5 + i / 16, which),
    })),
  ),
  ...rowsOf(WIDER).map(([over = '', to = '', value = '']) => ({
    id: `H-12w-${to}`,
    source: 'asme-b17-1',
    place: 'fits for parallel keys, class 1',
    how: 'secondary page' as const,
    question: `keyway wider than a key over ${over} to ${to} in by, inch`,
    value,
    ours: () => keywayWider('1', inches(to)).toFixed(3),
  })),
  {
    id: 'H-12w-2',
    source: 'asme-b17-1',
    place: 'fits for parallel keys, class 2, from memory',
    how: 'memory' as const,
    question: 'keyway wider than a key of 2 in by, inch',
    value: '0.002',
    ours: () => keywayWider('2', 2).toFixed(3),
  },
];
