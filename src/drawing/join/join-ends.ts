/** Moves the ends that meet into one and the same point, so that a joined chain is joined exactly. */

import { intersect } from '../../geometry/intersect.ts';
import type { Line, Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween, line, midpoint, samePoint } from '../../geometry/segment.ts';
import { firstItem, itemAt, lastItem } from '../../sequence/sequence.ts';
import { pieceBetween } from '../piece/part-of-piece.ts';
import type { DrawnPiece } from '../piece/piece.ts';
import type { Node, Nodes } from './nodes.ts';
import { endPoint } from './nodes.ts';

/** The pieces with their ends on the nodes; those already there are handed back as they are. */
export const mendEnds = (pieces: readonly DrawnPiece[], { nodes, nodeOf }: Nodes): readonly DrawnPiece[] => {
  const places = nodes.map((node) => placeOf(node, pieces));
  return pieces.map((piece, i) => pieceBetween(piece, itemAt(places, itemAt(nodeOf, 2 * i)), itemAt(places, itemAt(nodeOf, 2 * i + 1))));
};

/**
 * Where the ends of a node are put. Two lines meet where they cross, when that is near, so that neither turns. A line gives
 * way to a curve, since turning a line a little harms it less than bending an arc. All else meets halfway.
 */
const placeOf = (node: Node, pieces: readonly DrawnPiece[]): Point => {
  const points = node.ends.map((end) => endPoint(pieces, end));
  const first = firstItem(points);
  if (points.every((p) => samePoint(p, first))) return first;
  const curved = node.ends.filter((end) => endSegment(pieces, end).kind === 'arc');
  const [onlyCurve, ...moreCurves] = curved;
  if (onlyCurve !== undefined && moreCurves.length === 0) return endPoint(pieces, onlyCurve);
  // A curve that meets itself keeps its start: halfway would lie off its circle.
  const [oneEnd, otherEnd, ...moreEnds] = node.ends;
  const isPair = oneEnd !== undefined && otherEnd !== undefined && moreEnds.length === 0;
  if (isPair && oneEnd >> 1 === otherEnd >> 1) return first;
  if (isPair && curved.length === 0) return cornerOf(pieces, oneEnd, otherEnd);
  return middleOf(curved.length > 0 ? curved.map((end) => endPoint(pieces, end)) : points);
};

const endSegment = (pieces: readonly DrawnPiece[], end: number): Segment => {
  const { segments } = itemAt(pieces, end >> 1);
  return end % 2 === 0 ? firstItem(segments) : lastItem(segments);
};

/** Where two lines would cross if both were a little longer, or halfway when that is not near. */
const cornerOf = (pieces: readonly DrawnPiece[], oneEnd: number, otherEnd: number): Point => {
  const [p, q] = [endPoint(pieces, oneEnd), endPoint(pieces, otherEnd)];
  const gap = distanceBetween(p, q);
  const a = lengthened(pieces, oneEnd, 2 * gap);
  const b = lengthened(pieces, otherEnd, 2 * gap);
  const meeting = intersect(a, b, 0).find((c) => c.kind === 'crossing');
  return meeting && meeting.kind === 'crossing' ? meeting.at : midpoint(p, q);
};

/** The last stretch of a line around its end: so far into the line, and as far beyond. */
const lengthened = (pieces: readonly DrawnPiece[], end: number, by: number): Line => {
  const segment = endSegment(pieces, end);
  const [far, near] = end % 2 === 0 ? [segment.to, segment.from] : [segment.from, segment.to];
  const long = distanceBetween(far, near);
  const x = ((near.x - far.x) / long) * by;
  const y = ((near.y - far.y) / long) * by;
  return line({ x: near.x - x, y: near.y - y }, { x: near.x + x, y: near.y + y });
};

/** Sorted before they are summed: the sum of the same numbers in another order may differ in its last digit. */
const middleOf = (points: readonly Point[]): Point => {
  const sorted = [...points].sort((p, q) => p.x - q.x || p.y - q.y);
  const sum = sorted.reduce((s, p) => ({ x: s.x + p.x, y: s.y + p.y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
};
