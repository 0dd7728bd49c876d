/** Finds what lies near a point among all segments of a picture, fast: boxes over boxes, built once for each picture. */

import { nearestOn } from '../../geometry/measure.ts';
import { type BoxIndex, boxIndexOf } from '../../geometry/near/box-index.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import type { ChainView, LayerView } from '../work/views.ts';
import { boxOf, countOf, type Remarkable, remarkable, segmentAt } from './chain-segments.ts';

/** One segment of a chain of a layer. */
interface Entry {
  readonly layer: LayerView;
  readonly chain: ChainView;
  readonly number: number;
}

export interface Indexed {
  readonly boxes: BoxIndex<Entry>;
  /** Centres of arcs lie away from their boxes: a tree of their own. */
  readonly centres: BoxIndex<Entry & { readonly centre: Point }>;
}

export interface Near {
  readonly layer: LayerView;
  readonly chain: ChainView;
  readonly segment: number;
  readonly at: Point;
  /** mm */
  readonly distance: number;
}

export type SnapKind = Remarkable['kind'] | 'on the line' | 'free';

export interface Snapped {
  readonly kind: SnapKind;
  readonly at: Point;
}

export const indexOf = (layers: readonly LayerView[]): Indexed => {
  const entries = layers.flatMap((layer) =>
    layer.chains.flatMap((chain) => Array.from({ length: countOf(chain.segments) }, (_, number): Entry => ({ layer, chain, number }))),
  );
  const arcs = entries.flatMap((entry) => {
    const segment = segmentOf(entry);
    return segment.kind === 'arc' ? [{ ...entry, centre: segment.centre }] : [];
  });
  return {
    boxes: boxIndexOf(entries, ({ chain, number }) => boxOf(chain.segments, number)),
    centres: boxIndexOf(arcs, ({ centre: { x, y } }) => ({ minX: x, minY: y, maxX: x, maxY: y })),
  };
};

const segmentOf = ({ chain, number }: Entry): Segment => segmentAt(chain.segments, number);

/** Where thousands of segments lie under one finger, those whose boxes are nearest are enough. */
const MOST_NEAR = 500;

/** The segments of the layers that `shown` lets pass and that come within `reach` mm of a point, nearest first. */
export const near = (index: Indexed, p: Point, reach: number, shown: (layer: LayerView) => boolean): readonly Near[] => {
  const all: Near[] = [];
  for (const entry of index.boxes.nearest(p, MOST_NEAR, reach, ({ layer }) => shown(layer))) {
    const { at, distance } = nearestOn(segmentOf(entry), p);
    if (distance <= reach) all.push({ layer: entry.layer, chain: entry.chain, segment: entry.number, at, distance });
  }
  return all.sort((a, b) => a.distance - b.distance);
};

/** Ends come before midpoints and these before a mere place on a line, when all are within reach. */
const RANK: Readonly<Record<SnapKind, number>> = {
  end: 0,
  centre: 1,
  top: 2,
  bottom: 2,
  left: 2,
  right: 2,
  midpoint: 3,
  'on the line': 4,
  free: 5,
};

/** The remarkable place within `reach` mm of a point, else the nearest place on a line, else the point itself. */
export const snapped = (index: Indexed, p: Point, reach: number, shown: (layer: LayerView) => boolean): Snapped => {
  const close = near(index, p, reach, shown).slice(0, 64);
  const places: Snapped[] = [
    ...close.flatMap((n) => remarkable(segmentAt(n.chain.segments, n.segment))),
    ...centresNear(index, p, reach, shown),
    ...close.slice(0, 1).map((n) => ({ kind: 'on the line' as const, at: n.at })),
  ];
  const within = places.filter(({ at }) => Math.hypot(at.x - p.x, at.y - p.y) <= reach);
  const strength = ({ kind, at }: Snapped): number => RANK[kind] * reach + Math.hypot(at.x - p.x, at.y - p.y);
  return within.reduce<Snapped>((best, s) => (best.kind === 'free' || strength(s) < strength(best) ? s : best), { kind: 'free', at: p });
};

const centresNear = (index: Indexed, p: Point, reach: number, shown: (layer: LayerView) => boolean): readonly Snapped[] =>
  index.centres
    .search({ minX: p.x - reach, minY: p.y - reach, maxX: p.x + reach, maxY: p.y + reach }, ({ layer }) => shown(layer))
    .map(({ centre }) => ({ kind: 'centre', at: centre }));
