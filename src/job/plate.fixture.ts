/** A die plate with any number of openings, written as a small DXF: for measuring how the work grows. */

import type { Shop } from './shop.ts';

const SPACING = 24;
const MARGIN = 20;

/** Openings of three kinds in rows, in so many sizes: a plate of many openings has its repeats, but not only them. */
export const plateOf = (openings: number, sizes = 97): Uint8Array => {
  const across = Math.ceil(Math.sqrt(openings));
  const down = Math.ceil(openings / across);
  const plate = polyline(
    [0, 0, 0],
    [2 * MARGIN + across * SPACING, 0, 0],
    [2 * MARGIN + across * SPACING, 2 * MARGIN + down * SPACING, 0],
    [0, 2 * MARGIN + down * SPACING, 0],
  );
  const shapes = Array.from({ length: openings }, (_, i) =>
    opening(i, 6 + (i % sizes) / sizes, MARGIN + ((i % across) + 0.5) * SPACING, MARGIN + (Math.floor(i / across) + 0.5) * SPACING),
  );
  return new TextEncoder().encode(
    [
      '0',
      'SECTION',
      '2',
      'HEADER',
      '9',
      '$ACADVER',
      '1',
      'AC1015',
      '9',
      '$INSUNITS',
      '70',
      '4',
      '0',
      'ENDSEC',
      '0',
      'SECTION',
      '2',
      'ENTITIES',
      plate,
      ...shapes,
      '0',
      'ENDSEC',
      '0',
      'EOF',
      '',
    ].join('\n'),
  );
};

/** The shop with a table that takes a plate of any size. */
export const onLargeTable = (shop: Shop): Shop => ({
  ...shop,
  machines: shop.machines.map((m) => ({ ...m, travel: { x: 10_000, y: 10_000 } })),
});

const opening = (i: number, size: number, x: number, y: number): string => {
  if (i % 3 === 0) return ['0', 'CIRCLE', '8', '0', '10', x, '20', y, '40', size].join('\n');
  if (i % 3 === 1) return polyline([x - size, y - 3, 0], [x + size, y - 3, 1], [x + size, y + 3, 0], [x - size, y + 3, 1]);
  return polyline(...roundedSquare(x, y, size));
};

const roundedSquare = (x: number, y: number, size: number): readonly (readonly [number, number, number])[] => {
  const bulge = Math.tan(Math.PI / 8);
  const [low, high] = [size - 1, size];
  return [
    [x - low, y - high, 0],
    [x + low, y - high, bulge],
    [x + high, y - low, 0],
    [x + high, y + low, bulge],
    [x + low, y + high, 0],
    [x - low, y + high, bulge],
    [x - high, y + low, 0],
    [x - high, y - low, bulge],
  ];
};

const polyline = (...vertices: readonly (readonly [x: number, y: number, bulge: number])[]): string =>
  ['0', 'LWPOLYLINE', '8', '0', '90', vertices.length, '70', 1, ...vertices.flatMap(([x, y, b]) => ['10', x, '20', y, '42', b])].join('\n');
