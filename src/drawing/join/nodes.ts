/**
 * Finds out which ends of loose pieces meet: first those that coincide, then the nearest free ends within the join distance. A drawing
 * may have a hundred thousand, so ends are numbers into long arrays: `!` stands where one of those is read.
 */

import { nearPoints } from '../../geometry/near/near-points.ts';
import type { Point } from '../../geometry/segment.ts';
import { distanceBetween, midpoint } from '../../geometry/segment.ts';
import type { DrawnPiece } from '../piece/piece.ts';
import { fromOf, pieceLength, toOf } from '../piece/piece.ts';
import type { WorkLimit } from '../piece/work-limit.ts';
import { spend } from '../piece/work-limit.ts';

/** A place where ends meet. End 2i is where piece i starts, end 2i + 1 where it stops. */
export interface Node {
  readonly ends: readonly number[];
}

/** Two free ends that were joined over a distance of `size` mm. */
export interface Gap {
  readonly a: Point;
  readonly b: Point;
  readonly size: number;
}

export interface Nodes {
  readonly nodes: readonly Node[];
  /** Node of each end. */
  readonly nodeOf: Int32Array;
  readonly gaps: readonly Gap[];
}

export interface JoinOptions {
  /** mm: ends this near are the same but for rounding. */
  readonly coincident: number;
  /** mm: free ends up to this far apart are joined. */
  readonly join: number;
}

export const endPoint = (pieces: readonly DrawnPiece[], end: number): Point =>
  end % 2 === 0 ? fromOf(pieces[end >> 1]!) : toOf(pieces[end >> 1]!);

export const findNodes = (pieces: readonly DrawnPiece[], options: JoinOptions, work: WorkLimit): Nodes => {
  const points = Array.from({ length: pieces.length * 2 }, (_, end) => endPoint(pieces, end));
  const together = new Int32Array(points.length).map((_, i) => i);
  joinCoincident(points, together, options.coincident, work);
  const gaps = joinFree(pieces, points, together, options, work);
  return { ...numbered(together), gaps };
};

/** Unites all ends that lie within rounding of each other. Equal points are remembered once: a star of lines stays cheap. */
const joinCoincident = (points: readonly Point[], together: Int32Array, within: number, work: WorkLimit): void => {
  const near = nearPoints(points.length, within);
  points.forEach((at, end) => {
    let known = false;
    let steps = 1;
    near.visit(at, (other, distance) => {
      steps += 1;
      unite(together, end, other);
      if (distance === 0) known = true;
    });
    if (!known) near.add(end, at);
    spend(work, steps);
  });
};

interface Pair {
  readonly a: number;
  readonly b: number;
  readonly size: number;
}

/** The nearest pair of free ends first, each end once. A chain is not closed over a gap that is much of its own length. */
const joinFree = (
  pieces: readonly DrawnPiece[],
  points: readonly Point[],
  together: Int32Array,
  options: JoinOptions,
  work: WorkLimit,
): Gap[] => {
  const free = freeEnds(together);
  const chains = new Int32Array(pieces.length).map((_, i) => i);
  const lengths = new Float64Array(pieces.map(pieceLength));
  for (let end = 0; end < together.length; end += 1) uniteChains(chains, lengths, end >> 1, find(together, end) >> 1);
  const taken = new Uint8Array(points.length);
  const gaps: Gap[] = [];
  for (const { a, b, size } of pairsOf(free, points, options.join, work)) {
    if (taken[a] || taken[b]) continue;
    const chain = find(chains, a >> 1);
    if (chain === find(chains, b >> 1) && lengths[chain]! <= 4 * options.join) continue;
    taken[a] = 1;
    taken[b] = 1;
    unite(together, a, b);
    uniteChains(chains, lengths, a >> 1, b >> 1);
    gaps.push({ a: points[a]!, b: points[b]!, size });
  }
  return gaps;
};

const freeEnds = (together: Int32Array): number[] => {
  const sizes = new Int32Array(together.length);
  together.forEach((_, end) => {
    sizes[find(together, end)]! += 1;
  });
  const free: number[] = [];
  together.forEach((_, end) => {
    if (sizes[find(together, end)] === 1) free.push(end);
  });
  return free;
};

/** All pairs of free ends within reach, nearest first; where equally near, by place, so that the order of the file is no matter. */
const pairsOf = (free: readonly number[], points: readonly Point[], reach: number, work: WorkLimit): Pair[] => {
  if (!(reach > 0)) return [];
  const near = nearPoints(free.length, reach);
  const pairs: Pair[] = [];
  free.forEach((end, i) => {
    const at = points[end]!;
    near.visit(at, (j, size) => {
      spend(work, 1);
      pairs.push({ a: free[j]!, b: end, size });
    });
    near.add(i, at);
    spend(work, 1);
  });
  const middle = (p: Pair): Point => midpoint(points[p.a]!, points[p.b]!);
  return pairs.sort((p, q) => p.size - q.size || middle(p).x - middle(q).x || middle(p).y - middle(q).y);
};

const numbered = (together: Int32Array): { nodes: Node[]; nodeOf: Int32Array } => {
  const nodes: { ends: number[] }[] = [];
  const numbers = new Int32Array(together.length).fill(-1);
  const nodeOf = new Int32Array(together.length);
  together.forEach((_, end) => {
    const root = find(together, end);
    if (numbers[root]! < 0) numbers[root] = nodes.push({ ends: [] }) - 1;
    nodeOf[end] = numbers[root]!;
    nodes[numbers[root]!]!.ends.push(end);
  });
  return { nodes, nodeOf };
};

/** Greatest distance between two ends of a node, from the first of them. */
export const spreadOf = (node: Node, pieces: readonly DrawnPiece[]): number => {
  const first = endPoint(pieces, node.ends[0]!);
  return node.ends.reduce((most, end) => Math.max(most, distanceBetween(first, endPoint(pieces, end))), 0);
};

const find = (together: Int32Array, i: number): number => {
  let root = i;
  while (together[root] !== root) root = together[root]!;
  let walk = i;
  while (together[walk] !== root) {
    const up = together[walk]!;
    together[walk] = root;
    walk = up;
  }
  return root;
};

/** The smaller number stays the root. */
const unite = (together: Int32Array, i: number, j: number): void => {
  const a = find(together, i);
  const b = find(together, j);
  together[Math.max(a, b)] = Math.min(a, b);
};

const uniteChains = (chains: Int32Array, lengths: Float64Array, i: number, j: number): void => {
  const a = find(chains, i);
  const b = find(chains, j);
  if (a === b) return;
  unite(chains, a, b);
  lengths[Math.min(a, b)] = lengths[a]! + lengths[b]!;
};
