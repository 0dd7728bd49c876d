/** Settles the places where polylines pass through each other: each goes on along its own pieces. */

import { itemAt } from '../../sequence/sequence.ts';
import type { DrawnPiece } from '../piece/piece.ts';
import type { Nodes } from './nodes.ts';

export interface Untangled {
  readonly nodeOf: Int32Array;
  readonly leaving: readonly (readonly number[])[];
  readonly branches: readonly { readonly ends: readonly number[]; readonly settled: boolean }[];
}

/**
 * Splits a node of four or more ends into one for each polyline that passes through it, as long as what remains there is
 * nothing or at least two ends. A single end that stops at a corner of a polyline is a true branch and stays one.
 */
export const untangle = (pieces: readonly DrawnPiece[], nodes: Nodes): Untangled => {
  const nodeOf = Int32Array.from(nodes.nodeOf);
  const leaving = nodes.nodes.map((node) => node.ends as readonly number[]);
  const branches: { ends: readonly number[]; settled: boolean }[] = [];
  const whole = leaving.length;
  for (let node = 0; node < whole; node += 1) {
    const ends = itemAt(leaving, node);
    if (ends.length < 3) continue;
    const { pairs, rest } = passing(pieces, ends);
    const splits = pairs.length > 0 && rest.length !== 1;
    branches.push({ ends, settled: splits && rest.length <= 2 });
    if (!splits) continue;
    leaving[node] = rest;
    for (const pair of pairs) {
      const fresh = leaving.push(pair) - 1;
      for (const end of pair) nodeOf[end] = fresh;
    }
  }
  return { nodeOf, leaving, branches };
};

/** Pairs of ends between two pieces of one entity that follow each other: the stop of one and the start of the next. */
const passing = (pieces: readonly DrawnPiece[], ends: readonly number[]): { pairs: number[][]; rest: number[] } => {
  const pairs: number[][] = [];
  const rest = new Set(ends);
  for (const end of ends) {
    const next = end + 1;
    if (end % 2 === 0 || !rest.has(end) || !rest.has(next)) continue;
    const [before, after] = [itemAt(pieces, end >> 1), itemAt(pieces, next >> 1)];
    // Two parts of one cut line were not drawn as joined there: whatever it was cut at has as good a claim.
    if (before.entity !== after.entity || before.source === after.source) continue;
    pairs.push([end, next]);
    rest.delete(end);
    rest.delete(next);
  }
  return { pairs, rest: [...rest] };
};
