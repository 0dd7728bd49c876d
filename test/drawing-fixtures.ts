/** Small good drawings of our own that between them hold everything the readers read; tests damage and vary them. */
import { asciiDxf, binaryDxf, block, dxfTags, entity, layer, lightPolyline, lineTags, type Tag } from './dxf-writer.ts';
import { there } from './there.ts';

export interface DrawingFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A plate: outline with round corners, holes, a slot on its own layer, a hidden layer, a text, a start hole. */
export const plateTags = (version = 'AC1015'): readonly Tag[] =>
  dxfTags({
    version,
    units: 4,
    layers: [layer('0'), layer('holes'), layer('construction', { colour: -3 }), layer('frozen', { flags: 1 })],
    blocks: [
      block('hole', [entity('CIRCLE', { 8: '0', 10: 1, 20: 1, 40: 1.5 })], [1, 1]),
      block('pair', [entity('INSERT', { 2: 'hole', 8: '0', 10: -5, 20: 0 }), entity('INSERT', { 2: 'hole', 8: '0', 10: 5, 20: 0 })]),
    ],
    entities: [
      polyline(
        [
          [2, 0],
          [38, 0, Math.SQRT2 - 1],
          [40, 2],
          [40, 30],
          [0, 30],
          [0, 2, Math.SQRT2 - 1],
        ],
        { 8: '0', 70: 1 },
      ),
      entity('INSERT', { 2: 'pair', 8: 'holes', 10: 20, 20: 22, 50: 30 }),
      entity('INSERT', { 2: 'hole', 8: 'holes', 10: 6, 20: 6, 41: -1, 70: 3, 44: 8 }),
      entity('ARC', { 8: 'slot', 10: 15, 20: 14, 40: 1, 50: 90, 51: 270 }),
      entity('ARC', { 8: 'slot', 10: 25, 20: 14, 40: 1, 50: 270, 51: 90 }),
      lineTags(15, 13, 25, 13, 'slot'),
      lineTags(25, 15, 15, 15, 'slot'),
      lineTags(-5, 15, 45, 15, 'construction'),
      entity('TEXT', { 8: '0', 10: 3, 20: 25, 40: 2, 1: 'plate' }),
      entity('POINT', { 8: 'holes', 10: 20, 20: 14 }),
    ],
  });

/** What came with later versions. */
export const curvesTags = (version = 'AC1021'): readonly Tag[] =>
  dxfTags({
    version,
    units: 1,
    entities: [
      lightPolyline([
        [0, 0],
        [4, 0, 1],
        [4, 2],
        [0, 2],
      ]),
      entity('ELLIPSE', { 10: 2, 20: 6, 11: 2, 21: 0.5, 40: 0.5, 41: 0, 42: 2 * Math.PI }),
      entity('SPLINE', { 70: 4, 71: 2, 72: 7, 73: 4, 74: 0 }, [
        ...[0, 0, 0, 1, 2, 2, 2].map((t): Tag => [40, t]),
        ...[1, 0.7, 2, 1].map((w): Tag => [41, w]),
        ...[
          [0, 10],
          [1, 12],
          [3, 12],
          [4, 10],
        ].flatMap(([x, y]): Tag[] => [
          [10, there(x)],
          [20, there(y)],
          [30, 0],
        ]),
      ]),
      entity('SPLINE', { 70: 0, 71: 3, 72: 0, 73: 0, 74: 3 }, [
        [11, 4],
        [21, 10],
        [31, 0],
        [11, 2],
        [21, 9],
        [31, 0],
        [11, 0],
        [21, 10],
        [31, 0],
      ]),
      entity('CIRCLE', { 10: -8, 20: 1, 40: 0.5, 210: 0, 220: 0, 230: -1 }),
    ],
  });

/** POLYLINE with its vertices and end mark; vertices as [x, y, bulge]. */
export const polyline = (
  vertices: readonly (readonly [number, number, number?])[],
  head: Readonly<Record<number, string | number>> = { 70: 0 },
): readonly Tag[] => [
  ...entity('POLYLINE', { 66: 1, 10: 0, 20: 0, ...head }),
  ...vertices.flatMap(([x, y, bulge = 0]) => entity('VERTEX', { 8: head[8] ?? '0', 10: x, 20: y, 42: bulge })),
  [0, 'SEQEND'],
];

export const svgFixture = `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="60mm" height="40mm" viewBox="0 0 60 40">
  <defs><circle id="hole" r="2"/><symbol id="slot" viewBox="0 0 10 4"><rect width="10" height="4" rx="2"/></symbol></defs>
  <g id="outline" transform="translate(5 5)">
    <path d="M0 0h50v30h-50z m10 10a5 3 0 1 0 10 0a5 3 0 1 0-10 0z"/>
    <use xlink:href="#hole" x="40" y="8"/>
    <use href="#hole" transform="rotate(30 25 15) translate(30,20)"/>
  </g>
  <g id="curves" transform="matrix(1 0.1 0 1.2 0 0)">
    <path d="M30 20c2-4 6-4 8 0s6 4 8 0q-8 12-16 0t0 0z"/>
    <ellipse cx="20" cy="25" rx="4" ry="2.5"/><polygon points="10,25 14,25 12,29"/><line x1="1" y1="1" x2="4" y2="1"/>
  </g>
  <use href="#slot" x="8" y="30" width="10" height="4"/>
  <rect x="30" y="28" width="9" height="5" rx="1" ry="2" style="display:none"/><text x="1" y="2">plate</text>
</svg>
`;

export const drawingFixtures = (): readonly DrawingFile[] => [
  { name: 'plate.dxf', bytes: asciiDxf(plateTags()) },
  { name: 'plate-r12.dxf', bytes: asciiDxf(plateTags('AC1009'), { lineEnd: '\r\n', padded: true }) },
  { name: 'plate-binary-r12.dxf', bytes: binaryDxf(plateTags('AC1009'), { shortCodes: true }) },
  { name: 'curves.dxf', bytes: asciiDxf(curvesTags()) },
  { name: 'curves-binary.dxf', bytes: binaryDxf(curvesTags()) },
  { name: 'shapes.svg', bytes: new TextEncoder().encode(svgFixture) },
];
