/**
 * The largest distance to the boundary inside a source, by bounds over squares: how an empty offset is checked. It runs over long arrays
 * of plain numbers: `!` stands where one of those is read.
 */
import FlatQueue from 'flatqueue';
import type { CurveTree } from './curve-tree.ts';
import type { Curves } from './curves.ts';
import { depthAt, depthsOf } from './depth.ts';

export interface Widest {
  /** mm: the largest distance found, and where. */
  readonly distance: number;
  readonly x: number;
  readonly y: number;
  /** mm: no place inside is farther from the boundary than this. */
  readonly atMost: number;
}

/** A square: middle, half its side, and how far from the boundary any place in it may be at most. */
interface Square {
  readonly x: number;
  readonly y: number;
  readonly half: number;
  readonly bound: number;
}

/** A long slot of even width needs ever more squares along its middle: then the bound stays a little above the value found. */
const ENOUGH_SQUARES = 12_000;

/**
 * Looks for the place farthest from the boundary, until it is proved that no place is farther than `enough` mm, or found
 * that one is (by more than `tolerance`), or the squares run out.
 */
export const widestOf = (source: Curves, tree: CurveTree, enough: number, tolerance: number): Widest => {
  const depths = depthsOf(source, tree);
  // It gives out the least first: the squares of greatest bound have the least priority.
  const queue = new FlatQueue<Square>();
  let best = { distance: -Infinity, x: 0, y: 0 };
  const open = (x: number, y: number, half: number): void => {
    const distance = depthAt(depths, x, y);
    if (distance > best.distance) best = { distance, x, y };
    const bound = distance + half * Math.SQRT2;
    if (bound > enough && bound > best.distance) queue.push({ x, y, half, bound }, -bound);
  };
  const root = tree.starts[tree.levels - 1]! * 4;
  const [x0, y0, x1, y1] = tree.boxes.subarray(root, root + 4) as unknown as [number, number, number, number];
  const half = Math.max(Math.min(x1 - x0, y1 - y0) / 2, Math.max(x1 - x0, y1 - y0) / 64);
  for (let x = x0 + half; x - half < x1; x += 2 * half) for (let y = y0 + half; y - half < y1; y += 2 * half) open(x, y, half);
  for (let n = 0; n < ENOUGH_SQUARES && best.distance <= enough + tolerance; n++) {
    const s = queue.pop();
    if (s === undefined) break;
    if (s.bound <= best.distance + tolerance) return { ...best, atMost: s.bound };
    const h = s.half / 2;
    for (const dx of [-h, h]) for (const dy of [-h, h]) open(s.x + dx, s.y + dy, h);
  }
  return { ...best, atMost: Math.max(best.distance, queue.peek()?.bound ?? enough) };
};
