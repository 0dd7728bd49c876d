/** Of layers that were joined apart and cannot all be cut, those that are: the one with the largest loop, and what does not meet it. */

import type { Aside, Loop } from '../drawing.ts';
import type { Conflict } from '../join/conflicts.ts';
import type { JoinEvents } from '../join/join.ts';

export interface LayersTaken {
  /** All that are cut unless the job names others; none where nothing had to be chosen. */
  readonly taken: readonly string[];
  /** Those whose loops touch, cross or share an edge with loops that are cut. */
  readonly left: readonly string[];
}

/** @param loops by falling area. @param conflicts of them, by number */
export const layersTaken = (
  apart: JoinEvents['apart'],
  loops: readonly Pick<Loop, 'layer' | 'hidden' | 'aside'>[],
  conflicts: readonly Conflict[],
): LayersTaken => {
  const visible = loops.filter((loop) => !loop.hidden && loop.aside === undefined);
  const layers = [...new Set(visible.map((loop) => loop.layer))];
  const whole = layers.filter((layer) => apart.some((one) => one.whole.includes(layer)));
  const met = conflicts.map(({ first, second }) => [loops[first]?.layer, loops[second]?.layer]);
  const left: string[] = [];
  for (const layer of whole) {
    const larger = whole.slice(0, whole.indexOf(layer)).filter((other) => !left.includes(other));
    if (larger.some((other) => met.some((pair) => pair.includes(layer) && pair.includes(other)))) left.push(layer);
  }
  return { taken: left.length === 0 ? [] : layers.filter((layer) => !left.includes(layer)), left };
};

export const withLayersAside = (loops: readonly Loop[], { left }: LayersTaken): readonly Loop[] => {
  const asideOf = (loop: Loop): Aside | undefined => loop.aside ?? (!loop.hidden && left.includes(loop.layer) ? 'layer' : undefined);
  return left.length === 0 ? loops : loops.map((loop) => ({ ...loop, aside: asideOf(loop) }));
};
