/** Joins the loose pieces of one visibility: finds where ends meet, moves them together, and follows them. */

import type { Point } from '../../geometry/segment.ts';
import { firstItem, itemAt } from '../../sequence/sequence.ts';
import type { FoundLoop } from '../piece/loop-found.ts';
import { foundLoop } from '../piece/loop-found.ts';
import type { DrawnPiece, Step } from '../piece/piece.ts';
import type { WorkLimit } from '../piece/work-limit.ts';
import { trace } from './follow-ends.ts';
import { mendEnds } from './join-ends.ts';
import type { Gap, JoinOptions, Nodes } from './nodes.ts';
import { endPoint, findNodes, spreadOf } from './nodes.ts';

/** How many places had ends that differ by rounding alone, and the worst of them in mm. */
export interface Rounded {
  readonly places: number;
  readonly worst: number;
  readonly at?: Point | undefined;
}

/** A place where three or more ends meet. */
export interface Branch {
  readonly at: Point;
  readonly ends: number;
  /** The polylines that pass there settle it. */
  readonly settled: boolean;
  /** Of what meets there. */
  readonly layers: readonly string[];
}

export interface JoinedLoose {
  readonly loops: readonly FoundLoop[];
  readonly chains: readonly (readonly Step[])[];
  readonly gaps: readonly Gap[];
  readonly rounded: Rounded;
  readonly branches: readonly Branch[];
}

export const joinLoose = (pieces: readonly DrawnPiece[], options: JoinOptions, work: WorkLimit): JoinedLoose => {
  const nodes = findNodes(pieces, options, work);
  const { repaired, joined } = withoutVanished(mendEnds(pieces, nodes), nodes);
  const traced = trace(repaired, joined);
  return {
    loops: traced.loops.map((steps) =>
      foundLoop(
        steps,
        steps.every((s) => s.piece.hidden),
      ),
    ),
    chains: traced.chains,
    gaps: nodes.gaps,
    rounded: roundedOf(pieces, nodes),
    branches: traced.branches.map(({ ends, settled }) => ({
      at: endPoint(repaired, firstItem(ends)),
      ends: ends.length,
      settled,
      layers: [...new Set(ends.map((end) => itemAt(repaired, end >> 1).layer))].sort(),
    })),
  };
};

/** A piece whose two ends came to lie in one point may have nothing left: it goes, with its ends. */
const withoutVanished = (repaired: readonly DrawnPiece[], nodes: Nodes): { repaired: readonly DrawnPiece[]; joined: Nodes } => {
  if (repaired.every((p) => p.segments.length > 0)) return { repaired, joined: nodes };
  const renumbered = new Map<number, number>();
  repaired.forEach((piece, i) => {
    if (piece.segments.length > 0) renumbered.set(i, renumbered.size);
  });
  const ends = (all: readonly number[]): number[] =>
    all.flatMap((end) => {
      const piece = renumbered.get(end >> 1);
      return piece === undefined ? [] : [2 * piece + (end % 2)];
    });
  const nodeOf = new Int32Array(2 * renumbered.size);
  const kept = nodes.nodes.map((node, n) => {
    const left = ends(node.ends);
    for (const end of left) nodeOf[end] = n;
    return { ends: left };
  });
  return { repaired: repaired.filter((p) => p.segments.length > 0), joined: { ...nodes, nodes: kept, nodeOf } };
};

/** mm: what the arithmetic of this program itself leaves is not told. */
const NOISE = 1e-9;

/** Places of joined ends that are not equal, without the gaps, which are told one by one. */
const roundedOf = (pieces: readonly DrawnPiece[], { nodes, gaps }: Nodes): Rounded => {
  const isGap = new Set(gaps.flatMap((g) => [g.a, g.b]));
  let rounded: Rounded = { places: 0, worst: 0 };
  for (const node of nodes) {
    if (node.ends.length < 2) continue;
    const spread = spreadOf(node, pieces);
    if (spread <= NOISE || node.ends.some((end) => isGap.has(endPoint(pieces, end)))) continue;
    const at = endPoint(pieces, firstItem(node.ends));
    rounded = spread > rounded.worst ? { places: rounded.places + 1, worst: spread, at } : { ...rounded, places: rounded.places + 1 };
  }
  return rounded;
};
