/** Contours as a DXF file: ASCII, of the year 2000, arcs kept as arcs. Read back they are the same contours. */

import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { bulgeOf } from '../../geometry/bulge.ts';
import type { Chain } from '../../geometry/contour.ts';
import { type Arc, isFullCircle, type Point, type Segment } from '../../geometry/segment.ts';
import { rotation, transformPoint } from '../../geometry/transform.ts';
import { type Drawn, layerName, MILLIMETRES, numberText, type WriteUnit } from './drawn.ts';
import { entityHead, FIRST_HANDLE, framed, plainText, type Tag } from './dxf-frame.ts';

/**
 * A full circle becomes a CIRCLE, a single line a LINE, a single arc an ARC, everything else a LWPOLYLINE, closed or open. An arc
 * that rises less than a few billionths of its chord is written as the line that readers would make of it. `marks` (mm) become
 * POINTs on the layer 0, as a shop marks its start holes.
 *
 * Throws on a number that is none, which is our own mistake.
 */
export const writeDxf = (drawn: readonly Drawn[], unit: WriteUnit, marks: readonly Point[] = []): string => {
  const layers = [...new Set(['0', ...drawn.map(layerName)])];
  const first = FIRST_HANDLE + layers.length;
  const scale = 1 / MILLIMETRES[unit];
  const entities = [
    ...drawn.flatMap((d, i) => entityOf(d.chain, scale, first + i, layerName(d))),
    ...marks.flatMap((m, i): Tag[] => [...entityHead('POINT', first + drawn.length + i, '0'), [100, 'AcDbPoint'], ...at(m, scale)]),
  ];
  const box = drawn.length === 0 ? { minX: 0, minY: 0, maxX: 0, maxY: 0 } : mergedBounds(drawn.map((d) => boundsOfChain(d.chain)));
  const frame = {
    layers,
    unitCode: unit === 'mm' ? 4 : 1,
    metric: unit === 'mm',
    low: [box.minX * scale, box.minY * scale],
    high: [box.maxX * scale, box.maxY * scale],
    nextHandle: first + drawn.length + marks.length,
  } as const;
  return framed(frame, entities).map(tagText).join('');
};

const tagText = ([code, value]: Tag): string =>
  `${String(code).padStart(3)}\n${typeof value === 'number' ? numberText(value) : plainText(value)}\n`;

const entityOf = (chain: Chain, scale: number, handle: number, layer: string): readonly Tag[] => {
  const only = chain.segments.length === 1 ? chain.segments[0] : undefined;
  if (only?.kind === 'arc' && isFullCircle(only))
    return [...entityHead('CIRCLE', handle, layer), [100, 'AcDbCircle'], ...at(only.centre, scale), [40, only.radius * scale]];
  if (only?.kind === 'line')
    return [...entityHead('LINE', handle, layer), [100, 'AcDbLine'], ...at(only.from, scale), ...at(only.to, scale, 1)];
  if (only?.kind === 'arc') return [...entityHead('ARC', handle, layer), ...arcTags(only, scale)];
  return [...entityHead('LWPOLYLINE', handle, layer), ...polylineTags(chain, scale)];
};

/** Group codes 10, 20, 30 for the first point of an entity, 11, 21, 31 for the second. */
const at = ({ x, y }: Point, scale: number, nth = 0): readonly Tag[] => [
  [10 + nth, x * scale],
  [20 + nth, y * scale],
  [30 + nth, 0],
];

/** An ARC always runs counter-clockwise: a clockwise one is written from its end. */
const arcTags = (arc: Arc, scale: number): readonly Tag[] => {
  const [start, end] = arc.sweep > 0 ? [arc.from, arc.to] : [arc.to, arc.from];
  return [
    [100, 'AcDbCircle'],
    ...at(arc.centre, scale),
    [40, arc.radius * scale],
    [100, 'AcDbArc'],
    [50, degreesAbout(arc.centre, start)],
    [51, degreesAbout(arc.centre, end)],
  ];
};

const degreesAbout = (centre: Point, p: Point): number => ((Math.atan2(p.y - centre.y, p.x - centre.x) * 180) / Math.PI + 360) % 360;

const polylineTags = (chain: Chain, scale: number): readonly Tag[] => {
  const segments = chain.segments.flatMap(halved);
  const last = segments.at(-1) as Segment;
  return [
    [100, 'AcDbPolyline'],
    [90, segments.length + (chain.closed ? 0 : 1)],
    [70, chain.closed ? 1 : 0],
    [43, 0],
    ...segments.flatMap((s): Tag[] => [
      [10, s.from.x * scale],
      [20, s.from.y * scale],
      ...(s.kind === 'line' ? [] : ([[42, bulgeOf(s)]] as const)),
    ]),
    ...(chain.closed
      ? []
      : ([
          [10, last.to.x * scale],
          [20, last.to.y * scale],
        ] as const)),
  ];
};

/** The ends of an arc that nearly closes are too near each other to say well where its centre lies: it is written as two. */
const NEARLY_ROUND = 1.5 * Math.PI;

const halved = (segment: Segment): readonly Segment[] => {
  if (segment.kind === 'line' || Math.abs(segment.sweep) <= NEARLY_ROUND) return [segment];
  const middle = transformPoint(rotation(segment.sweep / 2, segment.centre), segment.from);
  return [
    { ...segment, to: middle, sweep: segment.sweep / 2 },
    { ...segment, from: middle, sweep: segment.sweep / 2 },
  ];
};
