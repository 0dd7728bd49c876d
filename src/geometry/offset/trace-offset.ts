/** One offset of a laid-out source, from raw curves to closed loops, tried again a hair off where the distance is a special one. */

import { groundOf } from '../flat/burial.ts';
import { crossingsOf, orderOf } from '../flat/curve-crossings.ts';
import type { CurveTree } from '../flat/curve-tree.ts';
import { curveTreeOf } from '../flat/curve-tree.ts';
import type { Curves } from '../flat/curves.ts';
import type { Point } from '../segment.ts';
import type { Layout } from './flat-source.ts';
import { joinLoose } from './join-loose-ends.ts';
import type { Loop } from './loops.ts';
import { loopsOf } from './loops.ts';
import { SLIVER_WIDTH } from './offset-outcome.ts';
import { closesUp, piecesOf, touchesItself } from './parallel-pieces.ts';
import type { Bridging } from './parallels.ts';
import { parallelsOf } from './parallels.ts';

export interface Traced {
  readonly kind: 'traced';
  readonly curves: Curves;
  readonly loops: readonly Loop[];
  readonly slivers: number;
  /** mm: the distance that was used, a hair off the one asked for where that is a special one. */
  readonly distance: number;
  /** Corners that were to be extended and were rounded instead. */
  readonly rounded: readonly Point[];
}

/** No attempt gave loops without contradiction. */
export interface Untraceable {
  readonly kind: 'untraceable';
}

/**
 * mm: changes of the distance tried in turn. At special distances, where a neck closes exactly or an arc shrinks to
 * nothing, curves touch and order along them is undecided; a hair further on they cross or part. More first: a neck then
 * parts and a corner of just the offset's radius becomes sharp. All stay well within the micrometre's thousandth promised.
 */
const CHANGES = [0, 1e-8, -1e-8, 3.1e-8, -3.1e-8, 7.3e-8, -7.3e-8, 1.7e-7, -1.7e-7] as const;

/** Whether loops contradict what is known of the result, for example a hole where there can be none. */
export type Contradiction = (loops: readonly Loop[]) => boolean;

/** Offsets the source to its left by a distance of more than 0. */
export const trace = (
  layout: Layout,
  tree: CurveTree,
  distance: number,
  bridging: Bridging,
  contradicts: Contradiction,
): Traced | Untraceable => {
  for (const mending of [false, true]) {
    let touching: Traced | undefined;
    for (const change of CHANGES) {
      if (distance + change <= 0) continue;
      const attempt = attemptAt(layout, tree, distance + change, bridging, mending);
      if (!attempt || contradicts(attempt.traced.loops)) continue;
      if (!attempt.touches) return attempt.traced;
      touching ??= attempt.traced;
    }
    if (touching) return touching;
  }
  return { kind: 'untraceable' };
};

/** mm: rounding of places on a sheet of this size, with a hundredfold reserve, and far less than the smallest change above. */
const marginFor = (layout: Layout): number => Math.max(1e-9, layout.size * 4e-13, layout.widestRadius * 1e-15);

const attemptAt = (
  layout: Layout,
  tree: CurveTree,
  distance: number,
  bridging: Bridging,
  mending: boolean,
): { traced: Traced; touches: boolean } | undefined => {
  const { curves, kites, rounded } = parallelsOf(layout, distance, bridging);
  const crossings = crossingsOf(curves, curveTreeOf(curves, curves.count, 0));
  const order = orderOf(crossings, curves.count);
  const ground = groundOf(layout.curves, tree, distance, marginFor(layout), kites);
  const pieces = piecesOf(curves, crossings, order, ground);
  if (!closesUp(pieces) && !(mending && joinLoose(curves, crossings, order, ground, pieces))) return undefined;
  const all = loopsOf(curves, crossings, order, pieces);
  const loops = all.filter((loop) => 2 * Math.abs(loop.area) >= SLIVER_WIDTH * loop.length);
  const traced: Traced = { kind: 'traced', curves, loops, slivers: all.length - loops.length, distance, rounded };
  return { traced, touches: touchesItself(pieces, crossings, order) };
};
