/**
 * What belongs together: cuts, wanted contours and holes whose boxes touch. Each group is proven by itself, so the work
 * grows with the number of openings and not with its square. There are millions of boxes, so what they belong to is a number in a long
 * array: `!` stands where one of those is read.
 */
import Flatbush from 'flatbush';
import { boundsOf, lengthOf, pointAt } from '../../geometry/measure.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { ProofQuestion } from '../proof.ts';
import type { SweptCut } from './wire-doings.ts';

export interface Group {
  /** Indices, each list in its order in the question or the program. */
  readonly cuts: readonly number[];
  readonly wanted: readonly number[];
  readonly holes: readonly number[];
  /** Open lines. */
  readonly open: readonly number[];
  /** The group reaches the edge of the block. */
  readonly atEdge: boolean;
}

/** A cut this near to a wanted contour, mm, is looked at together with it. */
const REACH = 0.1;

/** A segment is boxed in pieces of this length, mm, or in so many at most: the box of a slanting line is not its way. */
const PIECE = 2;
const MOST_PIECES = 64;

type Question = Pick<ProofQuestion, 'wanted' | 'wantedOpen' | 'holes' | 'block'>;

export const groupsOf = (cuts: readonly SweptCut[], question: Question): readonly Group[] => {
  const { wanted, wantedOpen = [], holes, block } = question;
  const firstWanted = cuts.length;
  const firstHole = firstWanted + wanted.length;
  const firstOpen = firstHole + holes.length;
  const edge = firstOpen + wantedOpen.length;
  const parent = Int32Array.from({ length: edge + 1 }, (_, i) => i);
  const boxes = boxIndex(countBoxes(cuts, question));
  cuts.forEach((c, i) => {
    boxSegment(boxes, c.segment, i, c.radius);
    if (cuts[i - 1]?.run === c.run) unite(parent, i - 1, i);
  });
  wanted.forEach((w, i) => {
    for (const s of w.contour.segments) boxSegment(boxes, s, firstWanted + i, REACH);
  });
  holes.forEach((h, i) => {
    const r = h.diameter / 2;
    boxes.add(h.at.x - r, h.at.y - r, h.at.x + r, h.at.y + r, firstHole + i);
  });
  wantedOpen.forEach((o, i) => {
    for (const s of o.path.segments) boxSegment(boxes, s, firstOpen + i, REACH);
  });
  for (const s of block.segments) boxSegment(boxes, s, edge, 0);
  uniteTouching(parent, boxes);
  return collect(parent, { firstWanted, firstHole, firstOpen, edge });
};

const collect = (parent: Int32Array, at: { firstWanted: number; firstHole: number; firstOpen: number; edge: number }): readonly Group[] => {
  const groups = new Map<number, { cuts: number[]; wanted: number[]; holes: number[]; open: number[]; atEdge: boolean }>();
  for (let i = 0; i < parent.length; i += 1) {
    const root = find(parent, i);
    let group = groups.get(root);
    if (group === undefined) {
      group = { cuts: [], wanted: [], holes: [], open: [], atEdge: false };
      groups.set(root, group);
    }
    if (i < at.firstWanted) group.cuts.push(i);
    else if (i < at.firstHole) group.wanted.push(i - at.firstWanted);
    else if (i < at.firstOpen) group.holes.push(i - at.firstHole);
    else if (i < at.edge) group.open.push(i - at.firstOpen);
    else group.atEdge = true;
  }
  return [...groups.values()].filter((g) => g.cuts.length > 0 || g.wanted.length > 0 || g.open.length > 0);
};

/** Boxes and what they belong to, straight in the index: of a plate with thousands of openings there are millions. */
interface BoxIndex {
  readonly index: Flatbush;
  /** What each box belongs to, in the order of adding. */
  readonly nodes: Int32Array;
  readonly add: (minX: number, minY: number, maxX: number, maxY: number, node: number) => void;
}

const boxIndex = (count: number): BoxIndex => {
  const index = new Flatbush(count);
  const nodes = new Int32Array(count);
  return {
    index,
    nodes,
    add: (minX, minY, maxX, maxY, node) => {
      nodes[index.add(minX, minY, maxX, maxY)] = node;
    },
  };
};

const countBoxes = (cuts: readonly SweptCut[], { wanted, wantedOpen = [], holes, block }: Question): number => {
  let count = holes.length;
  for (const c of cuts) count += piecesOf(c.segment, c.radius);
  for (const w of wanted) for (const s of w.contour.segments) count += piecesOf(s, REACH);
  for (const o of wantedOpen) for (const s of o.path.segments) count += piecesOf(s, REACH);
  for (const s of block.segments) count += piecesOf(s, 0);
  return count;
};

/** No arc piece over 15 degrees, so that a ring's box is not its inside. */
const piecesOf = (s: Segment, margin: number): number => {
  const byTurn = s.kind === 'arc' && s.radius > margin ? Math.ceil(Math.abs(s.sweep) / (Math.PI / 12)) : 1;
  return Math.min(Math.max(1, byTurn, Math.ceil(lengthOf(s) / PIECE)), MOST_PIECES);
};

/** Boxes along a segment. */
const boxSegment = (boxes: BoxIndex, s: Segment, node: number, margin: number): void => {
  const pieces = piecesOf(s, margin);
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

const uniteTouching = (parent: Int32Array, { index, nodes }: BoxIndex): void => {
  index.finish();
  let asking = 0;
  // Found boxes are joined on the spot and none is kept: lists of them would be thrown away a million times.
  const join = (j: number): boolean => {
    if (j < asking && nodes[j] !== nodes[asking]) unite(parent, nodes[asking]!, nodes[j]!);
    return false;
  };
  // The index shows every box with its corners, so nobody has to remember them a second time.
  index.search(-Infinity, -Infinity, Infinity, Infinity, (i, minX, minY, maxX, maxY) => {
    asking = i;
    index.search(minX, minY, maxX, maxY, join);
    return false;
  });
};

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
