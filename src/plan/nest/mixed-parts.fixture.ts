/** The named test set 'mixed parts': fifteen parts of a job shop, of our own invention, 60 pieces in all. */
import type { Contour } from '../../geometry/contour.ts';
import { disc, polygon, polyline, rectangle, roundedRectangle, star } from '../../geometry/example-shapes.fixture.ts';
import type { Piece, Turns } from './question.ts';

interface Part {
  readonly id: string;
  readonly outline: Contour;
  readonly holes?: readonly Contour[];
  readonly quantity: number;
}

const wheel = star(
  Array.from({ length: 48 }, (_, i) => (i % 4 < 2 ? 28 : 22)),
  [0.05, 0],
);
const cam = polyline([
  { x: -18, y: 0, bulge: 1 },
  { x: 18, y: 0, bulge: 0.12 },
  { x: 8, y: 44, bulge: 0.9 },
  { x: -8, y: 44, bulge: 0.12 },
]);
const halfDisc = polyline([
  { x: -26, y: 0, bulge: 0 },
  { x: 26, y: 0, bulge: 1 },
]);
const pawl = polyline([
  { x: 0, y: 0, bulge: 0 },
  { x: 48, y: 0, bulge: 0.5 },
  { x: 52, y: 16, bulge: -0.2 },
  { x: 20, y: 20, bulge: 0.3 },
  { x: 0, y: 28, bulge: 0 },
]);

/** x and y of each corner in turn. */
const corners = (...xy: readonly number[]): Contour => polygon(xy.flatMap((x, i) => (i % 2 === 0 ? [[x, xy[i + 1]!] as const] : [])));

/** mm. Sizes are whole millimetres, so that anybody can draw them again. */
const PARTS: readonly Part[] = [
  { id: 'corner bracket', outline: corners(0, 0, 80, 0, 80, 20, 20, 20, 20, 64, 0, 64), quantity: 7 },
  { id: 'tee', outline: corners(0, 44, 26, 44, 26, 0, 46, 0, 46, 44, 72, 44, 72, 64, 0, 64), quantity: 3 },
  { id: 'toothed wheel', outline: wheel, holes: [disc(0, 0, 6)], quantity: 2 },
  { id: 'ring', outline: disc(0, 0, 32), holes: [disc(0, 0, 18)], quantity: 2 },
  { id: 'triangle', outline: corners(0, 0, 68, 0, 20, 52), quantity: 7 },
  { id: 'disc', outline: disc(0, 0, 16), quantity: 2 },
  { id: 'small disc', outline: disc(0, 0, 8), quantity: 3 },
  { id: 'slender bar', outline: rectangle(140, 12), quantity: 7 },
  { id: 'drilled plate', outline: roundedRectangle(56, 36, 8), holes: [disc(14, 18, 4), disc(42, 18, 4)], quantity: 6 },
  { id: 'channel', outline: corners(0, 0, 60, 0, 60, 48, 46, 48, 46, 14, 14, 14, 14, 48, 0, 48), quantity: 3 },
  { id: 'cam', outline: cam, quantity: 2 },
  { id: 'wedge', outline: corners(0, 0, 64, 0, 64, 16, 0, 32), quantity: 7 },
  { id: 'offset strap', outline: corners(0, 0, 44, 0, 44, 28, 72, 28, 72, 44, 28, 44, 28, 16, 0, 16), quantity: 5 },
  { id: 'half disc', outline: halfDisc, quantity: 2 },
  { id: 'pawl', outline: pawl, quantity: 2 },
];

export const mixedParts = (turns: Turns): readonly Piece[] => PARTS.map((part) => ({ ...part, turns, mirrored: false }));
