/** A picture cut into bundles of segments that are drawn alike and lie together: drawn one by one, left out when out of sight. */
import { boundsOf, lengthOf } from '../../geometry/measure.ts';
import type { ChainView, LayerView } from '../work/views.ts';
import { boxAround, countOf, segmentAt } from './chain-segments.ts';
import type { ChainStretch } from './chain-strokes.ts';
import { type LineStyle, styleOf } from './layers.ts';
import type { Window } from './view.ts';

/** As many as are stroked in a few milliseconds by a slow machine. */
const PER_BUNDLE = 300;

export interface Bundle {
  readonly style: LineStyle;
  readonly stretches: readonly ChainStretch[];
  readonly box: Window;
  /** The longest segment, mm. */
  readonly longest: number;
}

export interface Layered {
  readonly layer: LayerView;
  readonly style: LineStyle;
  readonly bundles: readonly Bundle[];
  /** All its chains whole, where it is filled. */
  readonly filled: readonly ChainStretch[];
}

const made = new WeakMap<LayerView, Layered>();

/** Layers in the order in which they are painted; each is bundled once, whatever chapters show it. */
export const layered = (layers: readonly LayerView[]): readonly Layered[] =>
  layers.map((layer) => {
    const known = made.get(layer) ?? layeredOf(layer);
    made.set(layer, known);
    return known;
  });

const layeredOf = (layer: LayerView): Layered => {
  const style = styleOf(layer);
  const fills = style.fill !== undefined || style.hatched === true;
  return { layer, style, bundles: bundlesOf(layer.chains, style), filled: fills ? layer.chains.filter((c) => c.closed).map(whole) : [] };
};

export const whole = ({ segments, closed }: ChainView): ChainStretch => ({ numbers: segments, from: 0, to: countOf(segments), closed });

const bundlesOf = (chains: readonly ChainView[], style: LineStyle): readonly Bundle[] => {
  const bundles: Bundle[] = [];
  let open: ChainStretch[] = [];
  let held = 0;
  const shut = (): void => {
    if (open.length > 0) bundles.push(bundle(open, style));
    [open, held] = [[], 0];
  };
  for (const chain of chains) {
    const all = whole(chain);
    if (all.to <= PER_BUNDLE) {
      if (held + all.to > PER_BUNDLE) shut();
      if (all.to > 0) open.push(all);
      held += all.to;
      continue;
    }
    shut();
    for (let from = 0; from < all.to; from += PER_BUNDLE)
      bundles.push(bundle([{ numbers: chain.segments, from, to: Math.min(all.to, from + PER_BUNDLE), closed: false }], style));
  }
  shut();
  return bundles;
};

const bundle = (stretches: readonly ChainStretch[], style: LineStyle): Bundle => {
  let longest = 0;
  const boxes: Window[] = [];
  for (const { numbers, from, to } of stretches)
    for (let i = from; i < to; i += 1) {
      const segment = segmentAt(numbers, i);
      boxes.push(boundsOf(segment));
      longest = Math.max(longest, lengthOf(segment));
    }
  return { style, stretches, box: boxAround(boxes) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 }, longest };
};
