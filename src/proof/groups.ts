/**
 * What belongs together: cuts, wanted contours and holes whose boxes touch. Each group is proven by itself, so the work
 * grows with the number of openings and not with its square.
 */

import type { Bounds } from '../geometry/measure.ts';
import { boundsOf, lengthOf, pointAt } from '../geometry/measure.ts';
import type { Segment } from '../geometry/segment.ts';
import type { ProofQuestion } from './proof.ts';
import type { Cut } from './trace.ts';

export interface Group {
  /** Indices, each list in its order in the question or the program. */
  readonly cuts: readonly number[];
  readonly wanted: readonly number[];
  readonly holes: readonly number[];
  /** The group reaches the edge of the block. */
  readonly atEdge: boolean;
}

/** A cut this near to a wanted contour, mm, is looked at together with it. */
const REACH = 0.1;

/** An arc or long line is boxed in pieces; so many at most. */
const MOST_PIECES = 64;

type Question = Pick<ProofQuestion, 'wanted' | 'holes' | 'block'>;

export const groupsOf = (cuts: readonly Cut[], question: Question): readonly Group[] => {
  const { wanted, holes, block } = question;
  const firstWanted = cuts.length;
  const firstHole = firstWanted + wanted.length;
  const edge = firstHole + holes.length;
  const parent = Int32Array.from({ length: edge + 1 }, (_, i) => i);
  const boxes = boxList();
  const cell = cellSize(cuts, question);
  cuts.forEach((c, i) => {
    boxSegment(boxes, c.segment, i, c.radius, cell);
    if (i > 0 && cuts[i - 1]!.run === c.run) unite(parent, i - 1, i);
  });
  wanted.forEach((w, i) => {
    for (const s of w.contour.segments) boxSegment(boxes, s, firstWanted + i, REACH, cell);
  });
  holes.forEach((h, i) => {
    const r = h.diameter / 2;
    boxes.add(h.at.x - r, h.at.y - r, h.at.x + r, h.at.y + r, firstHole + i);
  });
  for (const s of block.segments) boxSegment(boxes, s, edge, 0, cell);
  uniteTouching(parent, boxes, cell);
  return collect(parent, { firstWanted, firstHole, edge });
};

const collect = (parent: Int32Array, at: { firstWanted: number; firstHole: number; edge: number }): readonly Group[] => {
  const groups = new Map<number, { cuts: number[]; wanted: number[]; holes: number[]; atEdge: boolean }>();
  for (let i = 0; i < parent.length; i += 1) {
    const root = find(parent, i);
    let group = groups.get(root);
    if (group === undefined) {
      group = { cuts: [], wanted: [], holes: [], atEdge: false };
      groups.set(root, group);
    }
    if (i < at.firstWanted) group.cuts.push(i);
    else if (i < at.firstHole) group.wanted.push(i - at.firstWanted);
    else if (i < at.edge) group.holes.push(i - at.firstHole);
    else group.atEdge = true;
  }
  return [...groups.values()].filter((g) => g.cuts.length > 0 || g.wanted.length > 0);
};

interface BoxList {
  readonly values: number[];
  readonly nodes: number[];
  readonly add: (minX: number, minY: number, maxX: number, maxY: number, node: number) => void;
}

const boxList = (): BoxList => {
  const values: number[] = [];
  const nodes: number[] = [];
  return {
    values,
    nodes,
    add: (minX, minY, maxX, maxY, node) => {
      values.push(minX, minY, maxX, maxY);
      nodes.push(node);
    },
  };
};

/** Boxes along a segment, none longer than a cell and no arc piece over 15 degrees, so that a ring's box is not its inside. */
const boxSegment = (boxes: BoxList, s: Segment, node: number, margin: number, cell: number): void => {
  const byTurn = s.kind === 'arc' && s.radius > margin ? Math.ceil(Math.abs(s.sweep) / (Math.PI / 12)) : 1;
  const pieces = Math.min(Math.max(1, byTurn, Math.ceil(lengthOf(s) / cell)), MOST_PIECES);
  if (pieces === 1) {
    const b = boundsOf(s);
    boxes.add(b.minX - margin, b.minY - margin, b.maxX + margin, b.maxY + margin, node);
    return;
  }
  const bulge = s.kind === 'arc' ? s.radius * (1 - Math.cos(s.sweep / pieces / 2)) : 0;
  const m = margin + bulge;
  let p = s.from;
  for (let i = 1; i <= pieces; i += 1) {
    const q = pointAt(s, i / pieces);
    boxes.add(Math.min(p.x, q.x) - m, Math.min(p.y, q.y) - m, Math.max(p.x, q.x) + m, Math.max(p.y, q.y) + m, node);
    p = q;
  }
};

/** About one segment per cell when they are spread evenly, and never smaller than a wire. */
const cellSize = (cuts: readonly Cut[], { wanted, block }: Question): number => {
  const all: Bounds[] = [...cuts.map((c) => boundsOf(c.segment)), ...block.segments.map(boundsOf)];
  for (const w of wanted) for (const s of w.contour.segments) all.push(boundsOf(s));
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const b of all) {
    minX = Math.min(minX, b.minX);
    minY = Math.min(minY, b.minY);
    maxX = Math.max(maxX, b.maxX);
    maxY = Math.max(maxY, b.maxY);
  }
  return Math.max(0.2, Math.sqrt(((maxX - minX) * (maxY - minY)) / all.length));
};

/** Puts every box into the cells it covers and unites what overlaps within a cell. */
const uniteTouching = (parent: Int32Array, boxes: BoxList, cell: number): void => {
  const { values, nodes } = boxes;
  const cells = new Map<string, number[]>();
  for (let i = 0; i < nodes.length; i += 1) {
    const [x0, y0, x1, y1] = [0, 1, 2, 3].map((k) => Math.floor(values[4 * i + k]! / cell)) as [number, number, number, number];
    for (let y = y0; y <= y1; y += 1)
      for (let x = x0; x <= x1; x += 1) {
        const key = `${x},${y}`;
        const held = cells.get(key);
        if (held === undefined) cells.set(key, [i]);
        else held.push(i);
      }
  }
  for (const held of cells.values())
    for (let a = 1; a < held.length; a += 1)
      for (let b = 0; b < a; b += 1) {
        const [i, j] = [held[a]!, held[b]!];
        if (nodes[i] !== nodes[j] && overlap(values, i, j)) unite(parent, nodes[i]!, nodes[j]!);
      }
};

const overlap = (v: readonly number[], i: number, j: number): boolean =>
  v[4 * i]! <= v[4 * j + 2]! && v[4 * j]! <= v[4 * i + 2]! && v[4 * i + 1]! <= v[4 * j + 3]! && v[4 * j + 1]! <= v[4 * i + 3]!;

const find = (parent: Int32Array, i: number): number => {
  let root = i;
  while (parent[root] !== root) root = parent[root]!;
  for (let n = i; n !== root; ) {
    const up = parent[n]!;
    parent[n] = root;
    n = up;
  }
  return root;
};

const unite = (parent: Int32Array, i: number, j: number): void => {
  const [a, b] = [find(parent, i), find(parent, j)];
  if (a !== b) parent[Math.max(a, b)] = Math.min(a, b);
};
