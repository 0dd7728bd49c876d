/** The largest distance to the boundary inside a source, by bounds over squares: how an empty offset is checked. */
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
  const queue: Square[] = [];
  let best = { distance: -Infinity, x: 0, y: 0 };
  const open = (x: number, y: number, half: number): void => {
    const distance = depthAt(depths, x, y);
    if (distance > best.distance) best = { distance, x, y };
    const bound = distance + half * Math.SQRT2;
    if (bound > enough && bound > best.distance) push(queue, { x, y, half, bound });
  };
  const root = tree.starts[tree.levels - 1]! * 4;
  const [x0, y0, x1, y1] = tree.boxes.subarray(root, root + 4) as unknown as [number, number, number, number];
  const half = Math.max(Math.min(x1 - x0, y1 - y0) / 2, Math.max(x1 - x0, y1 - y0) / 64);
  for (let x = x0 + half; x - half < x1; x += 2 * half) for (let y = y0 + half; y - half < y1; y += 2 * half) open(x, y, half);
  for (let n = 0; n < ENOUGH_SQUARES && queue.length > 0 && best.distance <= enough + tolerance; n++) {
    const s = pop(queue);
    if (s.bound <= best.distance + tolerance) return { ...best, atMost: s.bound };
    const h = s.half / 2;
    for (const dx of [-h, h]) for (const dy of [-h, h]) open(s.x + dx, s.y + dy, h);
  }
  const left = queue.length > 0 ? queue[0]!.bound : -Infinity;
  return { ...best, atMost: Math.max(best.distance, left, queue.length === 0 ? enough : left) };
};

/** A heap with the largest bound on top. */
const push = (heap: Square[], square: Square): void => {
  let k = heap.push(square) - 1;
  while (k > 0) {
    const parent = (k - 1) >> 1;
    if (heap[parent]!.bound >= square.bound) break;
    heap[k] = heap[parent]!;
    k = parent;
  }
  heap[k] = square;
};

const pop = (heap: Square[]): Square => {
  const top = heap[0]!;
  const last = heap.pop()!;
  if (heap.length === 0) return top;
  let k = 0;
  for (;;) {
    let child = 2 * k + 1;
    if (child >= heap.length) break;
    if (child + 1 < heap.length && heap[child + 1]!.bound > heap[child]!.bound) child++;
    if (heap[child]!.bound <= last.bound) break;
    heap[k] = heap[child]!;
    k = child;
  }
  heap[k] = last;
  return top;
};
