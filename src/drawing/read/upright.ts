/** Edges along x and y: what borders, tables and views of a drawing are made of. */

import { areaOf, mergedBounds } from '../../geometry/area.ts';
import type { Chain } from '../../geometry/contour.ts';
import type { Bounds } from '../../geometry/measure.ts';
import { boundsOf } from '../../geometry/measure.ts';
import type { Loop } from '../drawing.ts';

export const boxOf = ({ contour: { segments } }: Pick<Loop, 'contour'>): Bounds => mergedBounds(segments.map(boundsOf));

/** Lies at one value of the one axis, between two of the other. */
export interface Edge {
  readonly along: 'x' | 'y';
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Its edges where it has no others, or undefined. */
export const uprightEdges = ({ segments }: Pick<Chain, 'segments'>): readonly Edge[] | undefined => {
  const edges: Edge[] = [];
  for (const { kind, from, to } of segments) {
    if (kind === 'line' && Math.abs(from.y - to.y) <= NEAR)
      edges.push({ along: 'x', at: from.y, from: Math.min(from.x, to.x), to: Math.max(from.x, to.x) });
    else if (kind === 'line' && Math.abs(from.x - to.x) <= NEAR)
      edges.push({ along: 'y', at: from.x, from: Math.min(from.y, to.y), to: Math.max(from.y, to.y) });
    else return undefined;
  }
  return edges;
};

export const isRectangle = (loop: Loop): boolean => {
  const { minX, minY, maxX, maxY } = boxOf(loop);
  const box = (maxX - minX) * (maxY - minY);
  return loop.contour.segments.every((s) => s.kind === 'line') && Math.abs(areaOf(loop.contour)) > (1 - 1e-6) * box;
};

/** Numbers of things that have a stretch of edge in common, two by two. */
export const sharing = (edgesOf: readonly (readonly Edge[])[]): readonly (readonly [number, number])[] => {
  const rows = new Map<string, { readonly edge: Edge; readonly of: number }[]>();
  edgesOf.forEach((edges, of) => {
    for (const edge of edges) {
      const key = `${edge.along} ${Math.round(edge.at / (10 * NEAR))}`;
      rows.set(key, [...(rows.get(key) ?? []), { edge, of }]);
    }
  });
  const pairs: [number, number][] = [];
  for (const row of rows.values()) {
    const sorted = row.toSorted((a, b) => a.edge.from - b.edge.from);
    let last = sorted[0];
    for (const next of sorted.slice(1)) {
      if (last !== undefined && next.of !== last.of && next.edge.from < last.edge.to - NEAR) pairs.push([last.of, next.of]);
      if (last === undefined || next.edge.to > last.edge.to) last = next;
    }
  }
  return pairs;
};

/** mm */
const NEAR = 1e-3;
