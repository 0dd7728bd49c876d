/** The first stages that all offsets share: soundness, layout, and the search for places where the source meets itself. */
import { isFilled } from '../../sequence/sequence.ts';
import type { CurveTree } from '../flat/curve-tree.ts';
import { curveTreeOf } from '../flat/curve-tree.ts';
import { widestOf } from '../flat/widest.ts';
import type { Point } from '../segment.ts';
import type { Layout, NumberedChain } from './flat-source.ts';
import { layOut } from './flat-source.ts';
import type { OffsetOptions, SelfCrossing, Unsound } from './offset-outcome.ts';
import type { Bridging } from './parallels.ts';
import { selfMeetings } from './self-meetings.ts';
import { unsound } from './usable.ts';

export interface Prepared {
  readonly kind: 'prepared';
  readonly layout: Layout;
  /** Over the sources. */
  readonly tree: CurveTree;
}

/** Lays chains out for an offset to the left, or the right, of all of them; refuses what breaks a promise or meets itself. */
export const prepare = (chains: readonly NumberedChain[], side: 'left' | 'right'): Prepared | SelfCrossing | Unsound => {
  const prepared = prepareTrusted(chains, side);
  if (prepared.kind === 'unsound') return prepared;
  const places = selfMeetings(prepared.layout, prepared.tree);
  return isFilled(places) ? { kind: 'self-crossing', places } : prepared;
};

/** The same for chains that came out of an offset and do not meet themselves. */
export const prepareTrusted = (chains: readonly NumberedChain[], side: 'left' | 'right'): Prepared | Unsound => {
  const layout = layOut(chains, side === 'right');
  if (layout.kind === 'unsound') return layout;
  return { kind: 'prepared', layout, tree: curveTreeOf(layout.curves, layout.sources, 0) };
};

export const bridgingOf = (options: OffsetOptions): Bridging => ({ join: options.join ?? 'arc', reach: options.reach ?? 2 });

/** mm: offsets smaller than this are none. It is a tenth of the accuracy promised. */
export const NO_DISTANCE = 1e-7;

export const noDistance = (distance: number): Unsound => unsound('distance is not a number', { x: 0, y: 0 }, distance);

export const contradiction = (at: Point, distance: number): Unsound => unsound('result contradicts itself', at, distance);

/** mm: how far the widest place may exceed the distance of an empty offset: the accuracy promised. */
const PROMISED = 1e-6;

/** An empty result is believed only when no place inside the source is found that is farther in than the distance. */
export const vanishedOr = ({ layout, tree }: Prepared, distance: number) => {
  const widest = widestOf(layout.curves, tree, distance, PROMISED);
  const at = { x: widest.x + layout.shift.x, y: widest.y + layout.shift.y };
  if (widest.distance > distance + PROMISED) return contradiction(at, distance);
  return { kind: 'vanished', widest: Math.max(0, widest.distance), at, atMost: widest.atMost } as const;
};

/** Laid-out places as points of the source. */
export const pointsOf = ({ shift }: Layout, places: readonly Point[]): readonly Point[] =>
  places.map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y }));
