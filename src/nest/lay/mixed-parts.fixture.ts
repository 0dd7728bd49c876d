/** The named test set 'mixed sixteen': sixteen parts of a job shop, of our own invention, 60 pieces in all, and their plate. */
import { there } from '../../../test/there.ts';
import type { Contour } from '../../geometry/contour.ts';
import { disc, polygon, polyline, rectangle, roundedRectangle, star } from '../../geometry/example-shapes.fixture.ts';
import type { NestPiece, NestQuestion, Turns } from '../nest-question.ts';

interface Part {
  readonly id: string;
  readonly outline: Contour;
  readonly holes?: readonly Contour[];
  readonly quantity: number;
}

const wheel = star(
  Array.from({ length: 48 }, (_, i) => (i % 4 < 2 ? 42 : 33)),
  [0.05, 0],
);
const cam = polyline([
  { x: -27, y: 0, bulge: 1 },
  { x: 27, y: 0, bulge: 0.12 },
  { x: 12, y: 66, bulge: 0.9 },
  { x: -12, y: 66, bulge: 0.12 },
]);
const halfDisc = polyline([
  { x: -39, y: 0, bulge: 0 },
  { x: 39, y: 0, bulge: 1 },
]);
const pawl = polyline([
  { x: 0, y: 0, bulge: 0 },
  { x: 72, y: 0, bulge: 0.5 },
  { x: 78, y: 24, bulge: -0.2 },
  { x: 30, y: 30, bulge: 0.3 },
  { x: 0, y: 42, bulge: 0 },
]);

/** x and y of each corner in turn. */
const corners = (...xy: readonly number[]): Contour => polygon(xy.flatMap((x, i) => (i % 2 === 0 ? [[x, there(xy[i + 1])] as const] : [])));

/** mm. Sizes are whole millimetres, so that anybody can draw them again. */
const PARTS: readonly Part[] = [
  { id: 'corner bracket', outline: corners(0, 0, 120, 0, 120, 30, 30, 30, 30, 96, 0, 96), quantity: 4 },
  { id: 'tee', outline: corners(0, 66, 39, 66, 39, 0, 69, 0, 69, 66, 108, 66, 108, 96, 0, 96), quantity: 1 },
  { id: 'toothed wheel', outline: wheel, holes: [disc(0, 0, 9)], quantity: 2 },
  { id: 'ring', outline: disc(0, 0, 48), holes: [disc(0, 0, 12)], quantity: 1 },
  { id: 'triangle', outline: corners(0, 0, 102, 0, 30, 78), quantity: 6 },
  { id: 'disc', outline: disc(0, 0, 24), quantity: 3 },
  { id: 'small disc', outline: disc(0, 0, 12), quantity: 8 },
  { id: 'slender bar', outline: rectangle(210, 18), quantity: 6 },
  { id: 'drilled plate', outline: roundedRectangle(84, 54, 12), holes: [disc(21, 27, 6), disc(63, 27, 6)], quantity: 6 },
  { id: 'channel', outline: corners(0, 0, 90, 0, 90, 51, 69, 51, 69, 21, 21, 21, 21, 51, 0, 51), quantity: 2 },
  { id: 'cam', outline: cam, quantity: 2 },
  { id: 'wedge', outline: corners(0, 0, 96, 0, 96, 24, 0, 48), quantity: 6 },
  { id: 'offset strap', outline: corners(0, 0, 66, 0, 66, 42, 108, 42, 108, 66, 42, 66, 42, 24, 0, 24), quantity: 3 },
  { id: 'half disc', outline: halfDisc, quantity: 2 },
  { id: 'feather key', outline: roundedRectangle(36, 12, 6), quantity: 6 },
  { id: 'pawl', outline: pawl, quantity: 2 },
];

export const mixedParts = (turns: Turns): readonly NestPiece[] => PARTS.map((part) => ({ ...part, turns, mirrored: false }));

/** The set as it is asked in tests and bench: a plate of 520 × 464 mm, a web of 1 mm and a border of 2 mm, turned by quarters. */
export const MIXED_SIXTEEN: NestQuestion = {
  plate: rectangle(520, 464),
  border: 2,
  forbidden: [],
  pieces: mixedParts('quarter turns'),
  web: 1,
  manner: 'free',
};
