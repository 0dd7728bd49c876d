/** Contours as an SVG file of their true size: one path for each chain, arcs kept as arcs. Its zero is lost: SVG has a corner only. */
import { FULL_TURN } from '../../geometry/angle.ts';
import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import type { Chain } from '../../geometry/contour.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { rotation, transformPoint } from '../../geometry/transform.ts';
import { type Drawn, layerName, MILLIMETRES, numberText, type WriteUnit } from './drawn.ts';

/** SVG counts y downward: the drawing is turned over by a group, so that its numbers stay those of the work. */
export const writeSvg = (drawn: readonly Drawn[], unit: WriteUnit): string => {
  const scale = 1 / MILLIMETRES[unit];
  const box = drawn.length === 0 ? { minX: 0, minY: 0, maxX: 1, maxY: 1 } : mergedBounds(drawn.map((d) => boundsOfChain(d.chain)));
  const [x, width] = [box.minX * scale, Math.max(box.maxX - box.minX, 1e-6) * scale];
  const [top, height] = [-box.maxY * scale, Math.max(box.maxY - box.minY, 1e-6) * scale];
  const suffix = unit === 'mm' ? 'mm' : 'in';
  const layers = [...new Set(drawn.map(layerName))];
  const groups = layers.map((layer) => {
    const paths = drawn.filter((d) => layerName(d) === layer).map(({ chain }) => `    <path d="${dataOf(chain, scale)}"/>`);
    return `  <g id="${idOf(layer)}">\n${paths.join('\n')}\n  </g>`;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${numberText(width)}${suffix}" height="${numberText(height)}${suffix}" viewBox="${[x, top, width, height].map(numberText).join(' ')}">`,
    `<g transform="scale(1,-1)" fill="none" stroke="black" stroke-width="${numberText(Math.max(width, height) / 1000)}">`,
    ...groups,
    '</g>',
    '</svg>',
    '',
  ].join('\n');
};

/** An id has no blanks. */
const idOf = (layer: string): string => layer.replace(/ /g, '_');

const dataOf = ({ segments, closed }: Chain, scale: number): string => {
  const first = segments[0];
  if (first === undefined) return '';
  return `M${pair(first.from, scale)}${segments.map((s) => segmentData(s, scale)).join('')}${closed ? 'Z' : ''}`;
};

const pair = ({ x, y }: Point, scale: number): string => `${numberText(x * scale)} ${numberText(y * scale)}`;

/**
 * SVG gives an arc by its ends and its radius, from which the centre of half a circle comes out only to half of all digits:
 * longer arcs are written in parts of a third of a turn or less.
 */
const segmentData = (segment: Segment, scale: number): string => {
  if (segment.kind === 'line') return `L${pair(segment.to, scale)}`;
  const { from, to, centre, radius, sweep } = segment;
  const parts = Math.ceil(Math.abs(sweep) / (FULL_TURN / 3) - 1e-9);
  const r = numberText(radius * scale);
  return Array.from({ length: parts }, (_, i) => {
    const end = i + 1 === parts ? to : transformPoint(rotation((sweep * (i + 1)) / parts, centre), from);
    return `A${r} ${r} 0 0 ${sweep > 0 ? 1 : 0} ${pair(end, scale)}`;
  }).join('');
};
