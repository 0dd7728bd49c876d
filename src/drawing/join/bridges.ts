/**
 * Finds the bridges of a graph of pieces: those that lead from one loop to another and lie on none. Nodes are numbers into long arrays:
 * `!` stands where one of those is read.
 */
import type { Graph } from './graph.ts';

/**
 * Marks every bridge among the pieces that are not loose yet. Walks the graph in depth and notes for each node the earliest
 * node that can be reached from below it without going back over the piece it was entered by (Tarjan's method, from memory).
 */
export const bridgesOf = (graph: Graph, loose: Uint8Array): void => {
  const met = new Int32Array(graph.leaving.length).fill(-1);
  const low = new Int32Array(graph.leaving.length);
  let entered = 0;
  const enter = (node: number): void => {
    met[node] = entered;
    low[node] = entered;
    entered += 1;
  };
  for (let root = 0; root < graph.leaving.length; root += 1) {
    if (met[root]! >= 0) continue;
    enter(root);
    const stack = [{ node: root, by: -1, turn: 0 }];
    while (stack.length > 0) {
      const top = stack.at(-1)!;
      const half = graph.leaving[top.node]![top.turn];
      top.turn += 1;
      if (half === undefined) {
        stack.pop();
        const below = stack.at(-1);
        if (!below) continue;
        low[below.node] = Math.min(low[below.node]!, low[top.node]!);
        if (low[top.node]! > met[below.node]!) loose[top.by] = 1;
        continue;
      }
      const piece = half >> 1;
      if (loose[piece] || piece === top.by) continue;
      const next = graph.nodeOf[half ^ 1]!;
      if (met[next]! >= 0) low[top.node] = Math.min(low[top.node]!, met[next]!);
      else {
        enter(next);
        stack.push({ node: next, by: piece, turn: 0 });
      }
    }
  }
};
