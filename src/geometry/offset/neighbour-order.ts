/** An order of contours in which neighbours in the list are mostly neighbours in space, as the box tree wants it. */

import type { Chain } from '../contour.ts';
import type { Point } from '../segment.ts';
import type { NumberedChain } from './flat-source.ts';

/** Few chains need no order. */
const FEW = 16;

/** Steps across the sheet in each direction. */
const GRID = 1 << 12;

/** The chains with their numbers, by where they start along a curve that fills the plane quarter by quarter. */
export const neighbourOrder = (chains: readonly Chain[]): readonly NumberedChain[] => {
  const numbered = [...chains.entries()];
  if (chains.length <= FEW) return numbered;
  const low = { x: Infinity, y: Infinity };
  const high = { x: -Infinity, y: -Infinity };
  for (const { segments } of chains) {
    const p = segments[0].from;
    low.x = Math.min(low.x, p.x);
    low.y = Math.min(low.y, p.y);
    high.x = Math.max(high.x, p.x);
    high.y = Math.max(high.y, p.y);
  }
  const step = (GRID - 1) / Math.max(high.x - low.x, high.y - low.y, 1e-9);
  const keyOf = ({ x, y }: Point): number => spread((x - low.x) * step) + 2 * spread((y - low.y) * step);
  return numbered
    .map((entry) => ({ entry, key: keyOf(entry[1].segments[0].from) }))
    .sort((a, b) => a.key - b.key)
    .map(({ entry }) => entry);
};

/** The bits of a whole number drawn apart, so that those of a second one fit between them. */
const spread = (value: number): number => {
  let v = Math.floor(value);
  v = (v | (v << 8)) & 0x00ff00ff;
  v = (v | (v << 4)) & 0x0f0f0f0f;
  v = (v | (v << 2)) & 0x33333333;
  return (v | (v << 1)) & 0x55555555;
};
