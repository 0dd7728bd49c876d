/** Finds what lies near a point among all segments of a picture, fast: boxes over boxes, built once for each picture. */
import Flatbush from 'flatbush';
import { nearestOn } from '../../geometry/measure.ts';
import type { ChainView, LayerView } from '../work/views.ts';
import { boxOf, countOf, remarkable, segmentAt } from './chain-segments.ts';
import type { Spot } from './view.ts';

export interface Indexed {
  readonly layers: readonly LayerView[];
  readonly boxes: Flatbush | undefined;
  /** Centres of arcs lie away from their boxes: a tree of their own. */
  readonly centres: Flatbush | undefined;
  readonly layerOf: Uint32Array;
  readonly chainOf: Uint32Array;
  readonly segmentOf: Uint32Array;
  readonly centreOf: Uint32Array;
}

export interface Near {
  readonly layer: LayerView;
  readonly chain: ChainView;
  readonly segment: number;
  readonly at: Spot;
  /** mm */
  readonly distance: number;
}

export type SnapKind = 'end' | 'middle' | 'centre' | 'quadrant' | 'on the line' | 'free';

export interface Snapped {
  readonly kind: SnapKind;
  readonly at: Spot;
}

export const indexOf = (layers: readonly LayerView[]): Indexed => {
  const count = layers.reduce((sum, l) => sum + l.chains.reduce((n, c) => n + countOf(c.segments), 0), 0);
  const [layerOf, chainOf, segmentOf] = [new Uint32Array(count), new Uint32Array(count), new Uint32Array(count)];
  const boxes = count === 0 ? undefined : new Flatbush(count);
  const arcs: number[] = [];
  let n = 0;
  layers.forEach((layer, l) => {
    layer.chains.forEach((chain, c) => {
      for (let s = 0; s < countOf(chain.segments); s += 1) {
        const { minX, minY, maxX, maxY } = boxOf(chain.segments, s);
        boxes?.add(minX, minY, maxX, maxY);
        layerOf[n] = l;
        chainOf[n] = c;
        segmentOf[n] = s;
        if (chain.segments[s * 8 + 6] > 0) arcs.push(n);
        n += 1;
      }
    });
  });
  boxes?.finish();
  const centreOf = Uint32Array.from(arcs);
  const index = { layers, boxes, layerOf, chainOf, segmentOf, centreOf };
  return { ...index, centres: centresOf(index) };
};

const centresOf = (index: Omit<Indexed, 'centres'>): Flatbush | undefined => {
  if (index.centreOf.length === 0) return undefined;
  const tree = new Flatbush(index.centreOf.length);
  for (const n of index.centreOf) {
    const { segments } = chainAt(index, n);
    const at = index.segmentOf[n] * 8;
    tree.add(segments[at + 4], segments[at + 5], segments[at + 4], segments[at + 5]);
  }
  tree.finish();
  return tree;
};

const layerAt = (index: Omit<Indexed, 'centres'>, n: number): LayerView => index.layers[index.layerOf[n]];
const chainAt = (index: Omit<Indexed, 'centres'>, n: number): ChainView => layerAt(index, n).chains[index.chainOf[n]];

/** Where thousands of segments lie under one finger, those whose boxes are nearest are enough. */
const MOST_NEAR = 500;

/** The segments of the layers that `shown` lets pass and that come within `reach` mm of a point, nearest first. */
export const near = (index: Indexed, p: Spot, reach: number, shown: (layer: LayerView) => boolean): readonly Near[] => {
  const found = index.boxes?.neighbors(p.x, p.y, MOST_NEAR, reach, (n) => shown(layerAt(index, n))) ?? [];
  const all: Near[] = [];
  for (const n of found) {
    const chain = chainAt(index, n);
    const { at, distance } = nearestOn(segmentAt(chain.segments, index.segmentOf[n]), p);
    if (distance <= reach) all.push({ layer: layerAt(index, n), chain, segment: index.segmentOf[n], at, distance });
  }
  return all.sort((a, b) => a.distance - b.distance);
};

/** Ends come before middles and these before a mere place on a line, when all are within reach. */
const ORDER: readonly SnapKind[] = ['end', 'centre', 'quadrant', 'middle', 'on the line'];

/** The remarkable place within `reach` mm of a point, else the nearest place on a line, else the point itself. */
export const snapped = (index: Indexed, p: Spot, reach: number, shown: (layer: LayerView) => boolean): Snapped => {
  const close = near(index, p, reach, shown).slice(0, 64);
  const places: Snapped[] = [
    ...close.flatMap((n) => remarkable(segmentAt(n.chain.segments, n.segment))),
    ...centresNear(index, p, reach, shown),
    ...close.slice(0, 1).map((n) => ({ kind: 'on the line' as const, at: n.at })),
  ];
  const within = places.filter(({ at }) => Math.hypot(at.x - p.x, at.y - p.y) <= reach);
  const strength = ({ kind, at }: Snapped): number => ORDER.indexOf(kind) * reach + Math.hypot(at.x - p.x, at.y - p.y);
  return within.reduce<Snapped>((best, s) => (best.kind === 'free' || strength(s) < strength(best) ? s : best), { kind: 'free', at: p });
};

const centresNear = (index: Indexed, p: Spot, reach: number, shown: (layer: LayerView) => boolean): readonly Snapped[] =>
  (index.centres?.search(p.x - reach, p.y - reach, p.x + reach, p.y + reach) ?? [])
    .map((k) => index.centreOf[k])
    .filter((n) => shown(layerAt(index, n)))
    .map((n) => {
      const at = index.segmentOf[n] * 8;
      const { segments } = chainAt(index, n);
      return { kind: 'centre' as const, at: { x: segments[at + 4], y: segments[at + 5] } };
    });
