/**
 * Follows joined pieces to closed loops and open chains. Where three or more ends meet: loose branches and bridges are set
 * aside first, then the rest is read as faces, the smallest closed loops that no piece runs through.
 */

import { itemAt } from '../../sequence/sequence.ts';
import type { DrawnPiece, Step } from '../piece/piece.ts';
import { bridgesOf } from './bridges.ts';
import type { Graph } from './graph.ts';
import type { Nodes } from './nodes.ts';
import { facesOf } from './plane-faces.ts';
import { untangle } from './untangle.ts';

export interface Traced {
  readonly loops: readonly (readonly Step[])[];
  readonly chains: readonly (readonly Step[])[];
  /** Half edges that leave each place where three or more ends meet, and whether the polylines themselves settled it. */
  readonly branches: readonly { readonly ends: readonly number[]; readonly settled: boolean }[];
}

export const trace = (pieces: readonly DrawnPiece[], nodes: Nodes): Traced => {
  const { nodeOf, leaving, branches } = untangle(pieces, nodes);
  const graph: Graph = { pieces, nodeOf, leaving };
  const loose = new Uint8Array(pieces.length);
  peel(graph, loose);
  if (branches.some((b) => !b.settled)) bridgesOf(graph, loose);
  const loops = facesOf(graph, loose);
  const used = new Uint8Array(pieces.length);
  for (const loop of loops) for (const half of loop) used[half >> 1] = 1;
  // What no loop took is still told, as an open chain: nothing of the drawing is ever lost in silence.
  for (let i = 0; i < pieces.length; i += 1) loose[i] = used[i] ? 0 : 1;
  return { loops: loops.map((halves) => stepsOf(pieces, halves)), chains: chainsOf(graph, loose), branches };
};

/** The half edge that runs the other way. */
const twin = (half: number): number => half ^ 1;

const stepsOf = (pieces: readonly DrawnPiece[], halves: readonly number[]): Step[] =>
  halves.map((half) => ({ piece: itemAt(pieces, half >> 1), forward: half % 2 === 0 }));

/** Marks as loose, from the free ends inwards, every piece that cannot be part of a loop. */
const peel = (graph: Graph, loose: Uint8Array): void => {
  const left = graph.leaving.map((ends) => ends.length);
  const ready = left.flatMap((n, node) => (n === 1 ? [node] : []));
  for (let node = ready.pop(); node !== undefined; node = ready.pop()) {
    const half = itemAt(graph.leaving, node).find((h) => !loose[h >> 1]);
    if (half === undefined) continue;
    loose[half >> 1] = 1;
    const other = itemAt(graph.nodeOf, twin(half));
    left[node] = itemAt(left, node) - 1;
    left[other] = itemAt(left, other) - 1;
    if (left[other] === 1) ready.push(other);
  }
};

/** The longest chains of loose pieces, from one place that is not just a join of two of them to the next. */
const chainsOf = (graph: Graph, loose: Uint8Array): Step[][] => {
  const done = new Uint8Array(graph.pieces.length);
  const passes = (node: number): boolean => {
    const ends = itemAt(graph.leaving, node);
    return ends.length === 2 && ends.every((h) => loose[h >> 1]);
  };
  const follow = (start: number): number[] => {
    const halves = [start];
    done[start >> 1] = 1;
    for (let half = start; ; ) {
      const node = itemAt(graph.nodeOf, twin(half));
      const onward = passes(node) ? itemAt(graph.leaving, node).find((h) => !done[h >> 1]) : undefined;
      if (onward === undefined) return halves;
      done[onward >> 1] = 1;
      halves.push(onward);
      half = onward;
    }
  };
  const chains: Step[][] = [];
  graph.leaving.forEach((ends, node) => {
    if (passes(node)) return;
    for (const half of ends) if (loose[half >> 1] && !done[half >> 1]) chains.push(stepsOf(graph.pieces, follow(half)));
  });
  // Rings of loose pieces that no face took, if any.
  graph.pieces.forEach((_, i) => {
    if (loose[i] && !done[i]) chains.push(stepsOf(graph.pieces, follow(2 * i)));
  });
  return chains;
};
