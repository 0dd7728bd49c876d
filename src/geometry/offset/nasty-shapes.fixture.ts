/** Named shapes that offsets are known to stumble over, with the distances that make them nasty; run reversed, mirrored, turned and from several starts. */
import type { Contour } from '../contour.ts';
import type { BulgedPoint } from '../example-shapes.fixture.ts';
import { disc, polygon, polyline, rectangle, roundedRectangle } from '../example-shapes.fixture.ts';
import { transformChain, translation } from '../transform.ts';
import { randomStar, scallops } from './big-shapes.fixture.ts';

export interface NastyShape {
  readonly name: string;
  readonly contour: Contour;
  /** mm; each is tried inwards and outwards. */
  readonly distances: readonly number[];
}

const bulged = (...corners: readonly (readonly [x: number, y: number, bulge: number])[]): Contour =>
  polyline(corners.map(([x, y, bulge]) => ({ x, y, bulge })));

/** Two squares of 6 mm with a neck between them. */
const dumbbell = (neck: number): Contour => {
  const h = neck / 2;
  return polygon([
    [0, -3],
    [6, -3],
    [6, -h],
    [10, -h],
    [10, -3],
    [16, -3],
    [16, 3],
    [10, 3],
    [10, h],
    [6, h],
    [6, 3],
    [0, 3],
  ]);
};

/** A square of 10 mm with an extra corner on its lower side that lies off by (dx, dy) from the one before. */
const jog = (dx: number, dy: number): Contour =>
  polygon([
    [0, 0],
    [5, 0],
    [5 + dx, dy],
    [10, 0],
    [10, 10],
    [0, 10],
  ]);

const around = (count: number, corner: (k: number) => readonly [radius: number, bulge: number]): Contour =>
  polyline(
    Array.from({ length: count }, (_, k): BulgedPoint => {
      const [radius, bulge] = corner(k);
      const angle = (2 * Math.PI * k) / count;
      return { x: radius * Math.cos(angle), y: radius * Math.sin(angle), bulge };
    }),
  );

/** Teeth of 2 mm and slots between them, 8 mm deep, on a back of 3 mm. */
const comb = (slot: number, teeth: number): Contour => {
  const corners: [number, number][] = [];
  for (let k = 0; k < teeth; k++) {
    const x = k * (2 + slot);
    corners.push([x, 0], [x + 2, 0]);
    if (k < teeth - 1) corners.push([x + 2, 8], [x + 2 + slot, 8]);
  }
  const end = teeth * 2 + (teeth - 1) * slot;
  return polygon([...corners, [end, 11], [0, 11]]);
};

/** A ring of 5 to 8 mm radius with a mouth: the same width all round. */
const openRing = (mouth: number): Contour => {
  const at = (r: number, angle: number, bulge: number): BulgedPoint => ({ x: r * Math.cos(angle), y: r * Math.sin(angle), bulge });
  const half = Math.tan((Math.PI - mouth) / 4);
  return polyline([
    at(8, mouth, half),
    at(8, Math.PI, half),
    at(8, -mouth, 0),
    at(5, -mouth, -half),
    at(5, Math.PI, -half),
    at(5, mouth, 0),
  ]);
};

/** A row of half circles that meet in cusps, on a straight back. */
const cusps = (count: number): Contour =>
  polyline([
    ...Array.from({ length: count }, (_, k): BulgedPoint => ({ x: 2 * k, y: 0, bulge: 1 })),
    { x: 2 * count, y: 0, bulge: 0 },
    { x: 2 * count, y: 4, bulge: 0 },
    { x: 0, y: 4, bulge: 0 },
  ]);

const sawtooth = (teeth: number): Contour =>
  polygon([
    ...Array.from({ length: teeth }, (_, k): [number, number][] => [
      [2 * k, 0],
      [2 * k + 1, 1.5],
    ]).flat(),
    [2 * teeth, 0],
    [2 * teeth, 6],
    [0, 6],
  ]);

export const NASTY_SHAPES: readonly NastyShape[] = [
  { name: 'neck that closes exactly', contour: dumbbell(1), distances: [0.5, 0.5 + 1e-7, 0.5 - 1e-7, 0.3, 3] },
  { name: 'neck a hair too narrow', contour: dumbbell(1 - 1e-7), distances: [0.5] },
  { name: 'neck a hair too wide', contour: dumbbell(1 + 1e-7), distances: [0.5] },
  { name: 'sliver of 1e-9', contour: rectangle(10, 1e-9), distances: [1, 1e-3] },
  { name: 'sliver of 1e-5', contour: rectangle(10, 1e-5), distances: [1, 1e-6] },
  { name: 'jog of 1e-3', contour: jog(1e-3, 1e-3), distances: [1, 0.1] },
  { name: 'jog of 1e-4', contour: jog(0, 1e-4), distances: [1, 0.1] },
  { name: 'jog of 1e-5', contour: jog(1e-5, -1e-5), distances: [1, 0.1] },
  { name: 'jog of 1e-6', contour: jog(1e-6, 1e-6), distances: [1, 0.1] },
  { name: 'jog of 1e-7', contour: jog(0, 1e-7), distances: [1, 0.1] },
  { name: 'jog of 1e-8', contour: jog(1e-8, -1e-8), distances: [1, 0.1] },
  {
    name: 'near-duplicate corners',
    contour: polygon([
      [0, 0],
      [1e-5, 0],
      [10, 0],
      [10, 1e-6],
      [10, 10],
      [10 - 1e-7, 10],
      [0, 10],
      [0, 10 - 1e-8],
    ]),
    distances: [1, 4.9],
  },
  { name: 'full circle', contour: disc(3, 4, 5), distances: [1, 5, 5 - 1e-9, 5 + 1e-9, 4.999999] },
  { name: 'circle of two halves', contour: bulged([0, 0, 1], [4, 0, 1]), distances: [1, 2, 0.1] },
  { name: 'circle of 400 tiny arcs', contour: around(400, () => [0.1, Math.tan(Math.PI / 800)]), distances: [0.05, 0.1, 0.0999] },
  { name: 'ring of 400 tiny arcs in and out', contour: around(400, (k) => [1, k % 2 ? 0.3 : -0.3]), distances: [0.002, 0.004, 0.01, 0.5] },
  { name: 'arc of more than half a turn', contour: bulged([0, 0, 0], [4, 0, 3], [4, 1, 0], [0, 1, 0]), distances: [0.3, 0.5, 1] },
  { name: 'arc of nearly a whole turn', contour: bulged([0, 0, 40], [0.1, 0, 0]), distances: [0.5, 0.01] },
  { name: 'rounded rectangle by half its width', contour: roundedRectangle(20, 10, 2), distances: [5, 5 - 1e-8, 2, 2 + 1e-9, 2 - 1e-9] },
  { name: 'slot by its own radius', contour: roundedRectangle(20, 4, 2), distances: [2, 1.9999, 2.0001] },
  { name: 'scallops', contour: scallops(60), distances: [0.2, 2, 4] },
  { name: 'half circles that meet in cusps', contour: cusps(6), distances: [0.25, 1, 1.5] },
  {
    name: 'spike outwards',
    contour: polygon([
      [0, 0],
      [10, 0],
      [10, 10],
      [5.001, 10],
      [5, 30],
      [4.999, 10],
      [0, 10],
    ]),
    distances: [0.0005, 0.2, 1],
  },
  {
    name: 'spike inwards',
    contour: polygon([
      [0, 0],
      [10, 0],
      [10, 10],
      [5.001, 10],
      [5, 3],
      [4.999, 10],
      [0, 10],
    ]),
    distances: [0.0005, 0.2, 2],
  },
  {
    name: 'spike of 1e-9',
    contour: polygon([
      [0, 0],
      [10, 0],
      [10, 10],
      [5 + 1e-9, 10],
      [5, 15],
      [5 - 1e-9, 10],
      [0, 10],
    ]),
    distances: [0.2, 1],
  },
  {
    name: 'acute triangle',
    contour: polygon([
      [0, 0],
      [100, 0],
      [100, 0.01],
    ]),
    distances: [0.001, 0.0049, 1],
  },
  {
    name: 'tangent arcs in an S',
    contour: bulged([0, 0, 1], [4, 0, -1], [8, 0, 0], [8, 3, 1], [4, 3, -1], [0, 3, 0]),
    distances: [0.5, 1, 1.5],
  },
  { name: 'lens of two arcs', contour: bulged([0, 0, 0.3], [10, 0, 0.3]), distances: [0.5, 1, 2.9] },
  { name: 'crescent', contour: bulged([0, 0, 1], [10, 0, -0.8]), distances: [0.1, 0.3, 1] },
  { name: 'drop that ends in a cusp', contour: bulged([0, 0, 1], [8, 0, 1], [4, 0, -1]), distances: [0.2, 1, 2] },
  { name: 'arcs that collapse', contour: roundedRectangle(10, 10, 0.3), distances: [0.3, 0.31, 0.5, 4.999] },
  { name: 'flower whose petals all collapse', contour: around(12, () => [5, 1]), distances: [1, 1.3, 1.4, 3] },
  {
    name: 'corners in a straight line',
    contour: polygon([
      [0, 0],
      [2, 0],
      [4, 0],
      [7, 0],
      [10, 0],
      [10, 5],
      [10, 10],
      [5, 10],
      [0, 10],
      [0, 1],
    ]),
    distances: [1, 5],
  },
  { name: 'comb whose slots close exactly', contour: comb(1, 6), distances: [0.5, 1, 0.25] },
  { name: 'open ring of even width', contour: openRing(0.2), distances: [1.5, 1.4999999, 0.7, 1] },
  {
    name: 'cross of four equal arms',
    contour: polygon([
      [3, 0],
      [6, 0],
      [6, 3],
      [9, 3],
      [9, 6],
      [6, 6],
      [6, 9],
      [3, 9],
      [3, 6],
      [0, 6],
      [0, 3],
      [3, 3],
    ]),
    distances: [1, 1.5, 2],
  },
  { name: 'hexagon by its inner radius', contour: around(6, () => [10, 0]), distances: [5 * Math.sqrt(3), 8, 8.66] },
  { name: 'sawtooth', contour: sawtooth(8), distances: [0.3, 1, 2.5] },
  { name: 'far from the origin', contour: transformChain(translation(1e5, -1e5), roundedRectangle(20, 10, 2)), distances: [1, 2, 5] },
  {
    name: 'neighbouring arcs of almost one circle',
    contour: bulged([0, 0, 0.1], [10, 0, 0.1000001], [20, 0.000001, 0], [20, 8, 0], [0, 8, 0]),
    distances: [0.5, 2],
  },
  { name: 'star of 10,000 corners', contour: randomStar(10_000), distances: [0.05] },
];
