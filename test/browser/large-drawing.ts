/** A drawing with as many segments as are asked for: a plate of wavy openings, each a polyline of a thousand lines. */
import { asciiDxf, type Tag } from '../dxf-writer.ts';
import type { Dropped } from './hands.ts';

const CORNERS = 1000;
/** mm */
const APART = 40;

export const largeDrawing = (segments: number): Dropped => {
  const openings = Math.ceil(segments / CORNERS);
  const across = Math.ceil(Math.sqrt(openings));
  const loops = Array.from({ length: openings }, (_, i) => wavy((i % across) * APART, Math.floor(i / across) * APART));
  const tags: readonly Tag[] = [
    [9, '$INSUNITS'],
    [70, 4],
  ];
  return {
    name: 'large.dxf',
    bytes: asciiDxf([
      [0, 'SECTION'],
      [2, 'HEADER'],
      ...tags,
      [0, 'ENDSEC'],
      [0, 'SECTION'],
      [2, 'ENTITIES'],
      ...loops.flat(),
      [0, 'ENDSEC'],
      [0, 'EOF'],
    ]),
  };
};

const wavy = (x: number, y: number): readonly Tag[] => [
  [0, 'LWPOLYLINE'],
  [8, '0'],
  [90, CORNERS],
  [70, 1],
  ...Array.from({ length: CORNERS }, (_, i): readonly Tag[] => {
    const turn = (2 * Math.PI * i) / CORNERS;
    const radius = 12 + 1.5 * Math.sin(9 * turn);
    return [
      [10, Number((x + radius * Math.cos(turn)).toFixed(4))],
      [20, Number((y + radius * Math.sin(turn)).toFixed(4))],
    ];
  }).flat(),
];
